using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Fixed pounds for every pound of test below the goal, over four years; removal up to a limit; nothing above
/// it.</summary>
internal sealed class IllinoisSystem(SystemRecord record) : BuildUpSystem(record)
{
    private static readonly Constant Years = NutrientConstants.All.Find("IL-years");
    private static readonly Constant WheatMaintenance = NutrientConstants.All.Find("IL-wheat-maintenance");
    private static readonly Levels PhosphateOnLow = new("IL-P-goal-low", "IL-P-limit-low", "IL-P-factor");
    private static readonly Levels PhosphateOnMedium = new("IL-P-goal-medium", "IL-P-limit-medium", "IL-P-factor");
    private static readonly Levels PhosphateOnHigh = new("IL-P-goal-high", "IL-P-limit-high", "IL-P-factor");
    private static readonly Levels PotashOnLow = new("IL-K-goal-low", "IL-K-limit-low", "IL-K-factor");
    private static readonly Levels PotashOnHigh = new("IL-K-goal-high", "IL-K-limit-high", "IL-K-factor");

    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading)
    {
        bool isPotash = reading.Nutrient == PlantNutrient.Potash;
        if ((isPotash ? Potash(question.Soil) : Phosphate(question.Soil)) is not { } levels)
        {
            return isPotash
                ? AskFor(reading.Nutrient, question, _ =>
                    "its potassium goal asks whether the soil counts as low or high in exchange capacity"
                )
                : AskFor(reading.Nutrient, question, _ =>
                    "its phosphorus goal asks for the phosphorus-supplying power of the soil (low, medium or high)"
                );
        }

        if (Replacement.For(Id, question.Crop, reading.Nutrient) is not { } replacement)
        {
            return RefuseForRemoval(question, reading.Nutrient);
        }

        var kernel = Kernel(question.Crop, isPotash, levels, replacement);
        var other = kernel.BuildUp(reading.Value, 0) > 0 ? levels.Factor : levels.Limit;
        return new Need(
            question,
            reading,
            levels,
            kernel.Rate(reading.Value, 0),
            Statuses.WeakestOf(levels.Goal.Status, other.Status, replacement.Status)
        );
    }

    internal override T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user)
    {
        bool isPotash = reading.Nutrient == PlantNutrient.Potash;
        var levels = (isPotash ? Potash(question.Soil) : Phosphate(question.Soil))!;
        var replacement = Replacement.For(Id, question.Crop, reading.Nutrient)!.Value;
        return user.Use(Kernel(question.Crop, isPotash, levels, replacement));
    }

    private static IllinoisNeedKernel Kernel(CropUse crop, bool isPotash, Levels levels, Replacement replacement) =>
        new()
        {
            Goal = levels.Goal,
            Limit = levels.Limit,
            Factor = levels.Factor,
            Years = Years,
            Removed = replacement.Pounds,
            TimesRemoval = !isPotash && crop.Row is (CropRow.Wheat or CropRow.Oat) ? WheatMaintenance : 1,
        };

    private static Levels? Phosphate(PlotSoil soil) =>
        soil.PhosphorusSupply switch
        {
            SoilSupply.Low => PhosphateOnLow,
            SoilSupply.Medium => PhosphateOnMedium,
            SoilSupply.High => PhosphateOnHigh,
            _ => null,
        };

    /// <summary>No goal is printed between low and high.</summary>
    private static Levels? Potash(PlotSoil soil) =>
        soil.ExchangeCapacityGroup switch
        {
            SoilSupply.Low => PotashOnLow,
            SoilSupply.High => PotashOnHigh,
            _ => null,
        };

    private sealed record Levels(Constant Goal, Constant Limit, Constant Factor)
    {
        internal Levels(string goal, string limit, string factor)
            : this(NutrientConstants.All.Find(goal), NutrientConstants.All.Find(limit), NutrientConstants.All.Find(factor)) { }
    }

    private sealed class Need(
        SystemRequest question,
        DomainReading reading,
        Levels levels,
        double poundsPerAcre,
        DataStatus status
    ) : BuildUpNeed(question, reading, poundsPerAcre, status)
    {
        private protected override IBuildUpKernel Kernel => OfCrop;

        private IllinoisNeedKernel OfCrop => IllinoisSystem.Kernel(Question.Crop, IsPotash, levels, Removal);

        public override string Why =>
            Raising > 0
                ? $"{Reading.Subject} is below the goal of {Reading.Limit(levels.Goal)}, so a quarter of the build-up is due "
                    + $"this year; {Removal.PutBack}."
            : Reading.Value > levels.Limit
                ? $"{Reading.Subject} is above the limit of {Reading.Limit(levels.Limit)}, so none is needed."
            : $"{Reading.Subject} lies between the goal of {Reading.Limit(levels.Goal)} and the limit of "
                + $"{Reading.Limit(levels.Limit)}; {Removal.PutBack}.";

        public override NutrientRating? Rating =>
            Question.System.RatingOn(
                Reading,
                LimitScale.Of(
                    IsPotash ? $"{Question.System.Id}-K" : $"{Question.System.Id}-P",
                    Reading,
                    Question.Crop.Row,
                    $"goal {Amounts.Print(levels.Goal, 4)}, limit {Amounts.Print(levels.Limit, 4)} lb/ac",
                    new(
                        [.. levels.Goal.Origin.Sources, .. levels.Limit.Origin.Sources],
                        "",
                        Statuses.WeakestOf(levels.Goal.Status, levels.Limit.Status)
                    ),
                    [("build-up", levels.Goal, false), ("maintenance", levels.Limit, true)],
                    "none"
                )
            );

        private protected override ImmutableArray<Source> SourcesOfParts =>
            [
                .. levels.Factor.Origin.Sources,
                .. levels.Goal.Origin.Sources,
                .. (Removal.Origin ?? levels.Goal.Origin).Sources,
            ];

        private protected override IEnumerable<WorkedLine> LinesOfParts() => [BuildUpLine(), .. ReplacementLines(Sum)];

        private WorkedLine BuildUpLine() =>
            NutrientFormulas
                .All[IsPotash ? "illinois-potash-build-up" : "illinois-phosphate-build-up"]
                .Line(
                    NutrientFormulas.PerAcre(Raising),
                    ("nutrient", NutrientInWords),
                    ("goal", NutrientFormulas.Number(levels.Goal)),
                    ("test", NutrientFormulas.Number(Reading.Value)),
                    ("pounds a pound of test", NutrientFormulas.Number(levels.Factor)),
                    ("years", NutrientFormulas.Number(Years))
                );

        private WorkedLine Sum() =>
            NutrientFormulas
                .All["illinois-replacement"]
                .Line(
                    NutrientFormulas.PerAcre(Replacing),
                    ("nutrient", NutrientInWords),
                    ("test", NutrientFormulas.Number(Reading.Value)),
                    ("limit", NutrientFormulas.Number(levels.Limit)),
                    ("carried off", NutrientFormulas.Number(Removal.Pounds)),
                    ("times removal", NutrientFormulas.Number(OfCrop.TimesRemoval))
                );
    }
}
