using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Mehlich-3. Below the critical level build-up plus removal, up to the limit removal, from the limit on none.</summary>
internal sealed class TriState2020System(SystemRecord record) : BuildUpSystem(record)
{
    private static readonly Constant PhosphateFactor = NutrientConstants.All.Find("TS-2020-P-factor");
    private static readonly Constant FactorBase = NutrientConstants.All.Find("TS-2020-K-factor-base");
    private static readonly Constant FactorPerCec = NutrientConstants.All.Find("TS-2020-K-factor-per-cec");
    private static readonly double CecLimit = NutrientConstants.All["TS-2020-K-cec-limit"];
    private static readonly Constant PotashExtra = NutrientConstants.All.Find("TS-2020-K-extra");

    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading)
    {
        bool isPotash = reading.Nutrient == PlantNutrient.Potash;
        if (isPotash && question.CecPer100Grams is null)
        {
            return AskFor(reading.Nutrient, question, _ => "its potassium levels ask for the cation exchange capacity");
        }

        if (Replacement.For(Id, question.Crop, reading.Nutrient) is not { } replacement)
        {
            return RefuseForRemoval(question, reading.Nutrient);
        }

        double rate = isPotash
            ? PotashKernel(question, reading, replacement).Rate(reading.Value, question.CecPer100Grams!.Value)
            : PhosphateKernel(question, reading, replacement).Rate(reading.Value, 0);
        return new Need(question, reading, rate, StatusOf(question, reading, replacement));
    }

    private static DataStatus StatusOf(SystemRequest question, DomainReading reading, Replacement replacement)
    {
        var scale = ScaleFor(question, reading);
        var (critical, limit) = LevelsOf(scale);
        bool builds = reading.Value < critical;
        bool replaces = replacement.IsCarriedOff && reading.Value < limit;
        return Statuses.WeakestOf(
            scale.StatusOf(scale.ClassOf(reading.Value)!),
            builds && reading.Nutrient != PlantNutrient.Potash ? PhosphateFactor.Status : DataStatus.Read,
            replaces ? replacement.Status : DataStatus.Read,
            replaces && IsTapered(question, reading) ? AlfalfaTaper.Origin!.Status : DataStatus.Read
        );
    }

    private static RatingScale ScaleFor(SystemRequest question, DomainReading reading) =>
        question.System.PrintedScale(
            reading,
            question.Crop.Row,
            reading.Nutrient != PlantNutrient.Potash ? ScaleCondition.None
                : question.CecPer100Grams <= CecLimit ? ScaleCondition.CecUpToLimit
                : ScaleCondition.CecAboveLimit
        );

    internal override T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user)
    {
        var replacement = Replacement.For(Id, question.Crop, reading.Nutrient)!.Value;
        return reading.Nutrient == PlantNutrient.Potash
            ? user.Use(PotashKernel(question, reading, replacement))
            : user.Use(PhosphateKernel(question, reading, replacement));
    }

    private static TriState2020PhosphateKernel PhosphateKernel(
        SystemRequest question,
        DomainReading reading,
        Replacement replacement
    )
    {
        var (critical, limit) = LevelsOf(question.System.PrintedScale(reading, question.Crop.Row));
        return new()
        {
            Critical = critical,
            Limit = limit,
            Factor = PhosphateFactor,
            Removed = replacement.Pounds,
        };
    }

    private static TriState2020PotashKernel PotashKernel(
        SystemRequest question,
        DomainReading reading,
        Replacement replacement
    ) =>
        new()
        {
            CapacityLimit = CecLimit,
            OnSand = LevelsOf(question.System.PrintedScale(reading, question.Crop.Row, ScaleCondition.CecUpToLimit)),
            OnLoam = LevelsOf(question.System.PrintedScale(reading, question.Crop.Row, ScaleCondition.CecAboveLimit)),
            FactorBase = FactorBase,
            FactorPerCapacity = FactorPerCec,
            Removed = replacement.Pounds,
            Extra = ExtraWith(reading, replacement),
            IsTapered = IsTapered(question, reading),
        };

    private static (double Critical, double Limit) LevelsOf(RatingScale scale) =>
        (scale.Classes[0].PrintedHigh!.Value, scale.Classes[1].PrintedHigh!.Value);

    private static double ExtraWith(DomainReading reading, Replacement replacement) =>
        reading.Nutrient == PlantNutrient.Potash && replacement.IsCarriedOff ? PotashExtra : 0;

    /// <summary>Alfalfa takes up more potash than it needs, so above the critical level less than its removal is put
    /// back.</summary>
    private static bool IsTapered(SystemRequest question, DomainReading reading) =>
        reading.Nutrient == PlantNutrient.Potash && question.Crop.Row == CropRow.Alfalfa;

    private static Formula AlfalfaTaper => NutrientFormulas.All["tri-state-2020-alfalfa-replacement"];

    private sealed class Need(SystemRequest question, DomainReading reading, double poundsPerAcre, DataStatus status)
        : BuildUpNeed(question, reading, poundsPerAcre, status)
    {
        private protected override IBuildUpKernel Kernel =>
            IsPotash
                ? PotashKernel(Question, Reading, Removal)
                : PhosphateKernel(Question, Reading, Removal);

        private RatingScale Scale => ScaleFor(Question, Reading);

        private double Extra => ExtraWith(Reading, Removal);

        private bool Replaces => Removal.IsCarriedOff && Reading.Value < Limit;

        public override string Why =>
            Reading.Value < CriticalLevel
                ? $"{Reading.Subject} is below the critical level of {Reading.Limit(CriticalLevel)}, so a quarter of the "
                    + $"build-up is due this year; {Removal.PutBack}."
            : Reading.Value < Limit
                ? $"{Reading.Subject} lies between the critical level of {Reading.Limit(CriticalLevel)} and the limit of "
                    + $"{Reading.Limit(Limit)}; {Removal.PutBack}{Tapered}."
            : $"{Reading.Subject} is at or above the limit of {Reading.Limit(Limit)}, so none is needed.";

        public override NutrientRating? Rating => Question.System.RatingOn(Reading, Scale);

        private protected override ImmutableArray<Source> SourcesOfParts =>
            [
                .. Scale.Sources,
                .. (IsPotash ? FactorPerCec : PhosphateFactor).Origin.Sources,
                .. Replaces ? Removal.Origin!.Sources : [],
            ];

        private string Tapered =>
            Replaces && IsTapered(Question, Reading)
                ? ", but less of it the nearer the limit, for alfalfa takes up more than it needs"
                : "";

        private double CriticalLevel => LevelsOf(Scale).Critical;

        private double Limit => LevelsOf(Scale).Limit;

        private protected override IEnumerable<WorkedLine> LinesOfParts() => [BuildUpLine(), .. ReplacementLines(Sum)];

        private WorkedLine BuildUpLine() =>
            NutrientFormulas
                .All[IsPotash ? "tri-state-2020-potash-build-up" : "tri-state-2020-phosphate-build-up"]
                .Line(
                    NutrientFormulas.PerAcre(Raising),
                    ("nutrient", NutrientInWords),
                    ("critical level", NutrientFormulas.Number(CriticalLevel)),
                    ("test", NutrientFormulas.Number(Reading.Value)),
                    ("pounds a ppm", NutrientFormulas.Number(PhosphateFactor)),
                    ("base", NutrientFormulas.Number(FactorBase)),
                    ("pounds a meq", NutrientFormulas.Number(FactorPerCec)),
                    ("CEC", NutrientFormulas.Number(Question.CecPer100Grams ?? 0))
                );

        private WorkedLine Sum() => IsTapered(Question, Reading) ? TaperLine() : ReplacementLine();

        private WorkedLine TaperLine() =>
            AlfalfaTaper.Line(
                NutrientFormulas.PerAcre(Replacing),
                ("nutrient", NutrientInWords),
                ("test", NutrientFormulas.Number(Reading.Value)),
                ("limit", NutrientFormulas.Number(Limit)),
                ("critical level", NutrientFormulas.Number(CriticalLevel)),
                ("carried off", NutrientFormulas.Number(Removal.Pounds)),
                ("extra", NutrientFormulas.Number(Extra))
            );

        private WorkedLine ReplacementLine() =>
            NutrientFormulas
                .All[IsPotash ? "tri-state-2020-potash-replacement" : "tri-state-2020-phosphate-replacement"]
                .Line(
                    NutrientFormulas.PerAcre(Replacing),
                    ("nutrient", NutrientInWords),
                    ("test", NutrientFormulas.Number(Reading.Value)),
                    ("limit", NutrientFormulas.Number(Limit)),
                    ("carried off", NutrientFormulas.Number(Removal.Pounds)),
                    ("extra", NutrientFormulas.Number(Extra))
                );
    }
}
