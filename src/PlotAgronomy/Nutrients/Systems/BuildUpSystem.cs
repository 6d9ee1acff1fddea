using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What the build-up systems share: raise below a level, put back what leaves, stop above a limit.</summary>
internal abstract class BuildUpSystem(SystemRecord record) : RecommendationSystem(record)
{
    /// <summary>Assembles the answer from its two parts.</summary>
    private protected SystemAnswer Need(SystemQuestion question, DomainReading reading, Parts parts)
    {
        double rate = parts.BuildUp + parts.Replaced;
        double capped = Math.Min(rate, parts.Cap ?? double.PositiveInfinity);
        var findings = parts.Findings.ToBuilder();
        if (!question.Crop.IsCarriedOff)
        {
            findings.Add(FindingCatalog.Create("nutrient-nothing-carried-off", ("system", Name)));
        }

        if (capped < rate)
        {
            findings.Add(
                FindingCatalog.Create(
                    "nutrient-yearly-cap",
                    ("system", Name),
                    ("nutrient", SoilWords.For(reading.Nutrient)),
                    ("rate", Amounts.Print(rate, 1)),
                    ("cap", Amounts.Print(capped, 4))
                )
            );
        }

        var exact = ApplicationRate.FromPoundsPerAcre(capped);
        string cappedAt = capped < rate ? string.Create(CultureInfo.InvariantCulture, $", capped at {capped:0.#}") : "";
        return new NutrientNeed
        {
            Nutrient = reading.Nutrient,
            Rate = exact,
            PublishedLow = exact,
            PublishedHigh = exact,
            AsPrinted = parts.PrintedStep is { } step
                ? ApplicationRate.FromPoundsPerAcre(SystemMath.ToNearest(capped, step))
                : null,
            BuildUp = ApplicationRate.FromPoundsPerAcre(parts.BuildUp),
            Replacement = ApplicationRate.FromPoundsPerAcre(parts.Replaced),
            Rating = parts.Rating,
            Why = parts.Why,
            Status = parts.Status,
            SourceIds = [.. parts.SourceIds.SelectMany(s => s.Split(';')).Distinct(StringComparer.Ordinal)],
            Findings = findings.ToImmutable(),
            Work = () =>
                [
                    new(
                        $"{SoilWords.For(reading.Nutrient)} build-up",
                        parts.BuildUpFormula,
                        string.Create(CultureInfo.InvariantCulture, $"{parts.BuildUpNumbers} = {parts.BuildUp:0.0} lb/ac"),
                        parts.SourceIds[0]
                    ),
                    new(
                        $"{SoilWords.For(reading.Nutrient)} replacement",
                        parts.ReplacementFormula,
                        string.Create(CultureInfo.InvariantCulture, $"{parts.ReplacementNumbers} = {parts.Replaced:0.0} lb/ac"),
                        parts.SourceIds[^1]
                    ),
                    new(
                        SoilWords.For(reading.Nutrient),
                        "build-up + replacement",
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"{parts.BuildUp:0.0} + {parts.Replaced:0.0}{cappedAt} = {capped:0.0} lb/ac"
                        )
                    ),
                ],
        };
    }

    private protected SystemAnswer RefuseForRemoval(SystemQuestion question, PlantNutrient nutrient) =>
        Refuse(
            nutrient,
            question,
            "nutrient-fact-missing",
            $"the crop is carried off, and this system prints no removal for {CropRows.WordsFor(question.Crop.Row)}: state the "
                + "pounds that leave"
        );

    /// <summary>The parts of a build-up answer and how each came about.</summary>
    internal sealed record Parts(double BuildUp, double Replaced, string Why, DataStatus Status, ImmutableArray<string> SourceIds)
    {
        internal string BuildUpFormula { get; init; } = "";

        internal string BuildUpNumbers { get; init; } = "";

        internal string ReplacementFormula { get; init; } = "yield x removal per unit";

        internal string ReplacementNumbers { get; init; } = "";

        internal ImmutableArray<Finding> Findings { get; init; } = [];

        internal double? Cap { get; init; }

        internal double? PrintedStep { get; init; }

        internal NutrientRating? Rating { get; init; }
    }
}
