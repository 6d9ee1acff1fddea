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
        double capped = SystemMath.YearlyRate(parts.BuildUp, parts.Replaced, parts.Cap ?? double.PositiveInfinity);
        var findings = parts.Findings.ToBuilder();
        if (!question.Crop.IsCarriedOff)
        {
            findings.Add(FindingCatalog.Create(NutrientCodes.NothingCarriedOff, ("system", Name)));
        }

        if (capped < rate)
        {
            findings.Add(
                FindingCatalog.Create(
                    NutrientCodes.YearlyCap,
                    ("system", Name),
                    ("nutrient", SoilWords.For(reading.Nutrient)),
                    ("rate", Amounts.Print(rate, 1)),
                    ("cap", Amounts.Print(capped, 4))
                )
            );
        }

        var exact = ApplicationRate.FromPoundsPerAcre(capped);
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
            Work = () => [.. parts.Lines(), Total(SoilWords.For(reading.Nutrient), parts, capped)],
        };
    }

    private protected SystemAnswer RefuseForRemoval(SystemQuestion question, PlantNutrient nutrient) =>
        Refuse(
            nutrient,
            question,
            NutrientCodes.FactMissing,
            $"the crop is carried off, and this system prints no removal for {CropRows.WordsFor(question.Crop.Row)}: state the "
                + "pounds that leave"
        );

    /// <summary>The line of what goes back: the system's own sum, or that nothing left.</summary>
    private protected static WorkedLine[] ReplacementLines(Replacement replacement, string nutrient, Func<WorkedLine> sum) =>
        replacement.IsCarriedOff ? [replacement.Line(nutrient), sum()] : [replacement.Line(nutrient)];

    private static WorkedLine Total(string nutrient, Parts parts, double rate) =>
        NutrientFormulas
            .All[rate < parts.BuildUp + parts.Replaced ? "tri-state-1995-yearly-cap" : "build-up-and-replacement"]
            .Line(
                NutrientFormulas.PerAcre(rate),
                ("nutrient", nutrient),
                ("yearly cap", NutrientFormulas.Number(parts.Cap ?? rate)),
                ("build-up", Tenths(parts.BuildUp)),
                ("replacement", Tenths(parts.Replaced))
            );

    private static string Tenths(double pounds) => pounds.ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>The parts of a build-up answer and how each came about.</summary>
    internal sealed record Parts(double BuildUp, double Replaced, string Why, DataStatus Status, ImmutableArray<string> SourceIds)
    {
        /// <summary>The lines of the two parts, made only when asked for.</summary>
        internal required Func<IEnumerable<WorkedLine>> Lines { get; init; }

        internal ImmutableArray<Finding> Findings { get; init; } = [];

        internal double? Cap { get; init; }

        internal double? PrintedStep { get; init; }

        internal NutrientRating? Rating { get; init; }
    }
}
