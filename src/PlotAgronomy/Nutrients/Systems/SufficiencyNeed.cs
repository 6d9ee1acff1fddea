using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The answer of a system that gives one figure and no parts.</summary>
internal static class SufficiencyNeed
{
    internal static NutrientNeed Of(
        DomainReading reading,
        double pounds,
        NutrientRating? rating,
        string why,
        DataStatus status,
        ImmutableArray<string> sourceIds,
        string formula,
        string numbers,
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
            Work = () =>
                [new(SoilWords.For(reading.Nutrient), formula, $"{numbers} = {Amounts.Print(pounds, 1)} lb/ac", sourceIds[0])],
        };
    }
}
