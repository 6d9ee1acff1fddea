using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The answer of a system that gives one figure and no parts.</summary>
internal static class SufficiencyNeed
{
    /// <summary>The line of a test at or beyond the end of a table or equation.</summary>
    internal static WorkedLine BeyondTheEnd(DomainReading reading, double end, string? sourceId, DataStatus status) =>
        NutrientFormulas
            .All["none-beyond-the-end"]
            .Line(
                $"{NutrientFormulas.Number(reading.Value)} against {NutrientFormulas.Number(end)}: 0 lb/ac",
                ("nutrient", SoilWords.For(reading.Nutrient))
            )
            .From(sourceId, status);

    internal static NutrientNeed Of(
        DomainReading reading,
        double pounds,
        NutrientRating? rating,
        string why,
        DataStatus status,
        ImmutableArray<string> sourceIds,
        Func<WorkedLine> line,
        params ImmutableArray<Finding> findings
    )
    {
        var rate = ApplicationRate.FromPoundsPerAcre(pounds);
        return new NutrientNeed
        {
            Nutrient = reading.Nutrient,
            Rate = rate,
            PublishedLow = rate,
            PublishedHigh = rate,
            Rating = rating,
            Why = why,
            Status = status,
            SourceIds = sourceIds,
            Findings = findings,
            Work = () => [line()],
        };
    }
}
