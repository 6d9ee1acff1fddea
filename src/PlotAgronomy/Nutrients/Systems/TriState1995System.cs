using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Bray P-1 and ammonium acetate. Build-up below the critical level, removal up to maintenance, then a taper to
/// none.</summary>
internal sealed class TriState1995System(SystemRecord record) : BuildUpSystem(record)
{
    private static readonly Constant CornCritical = NutrientConstants.All.Find("TS-1995-P-critical-corn");
    private static readonly Constant WheatCritical = NutrientConstants.All.Find("TS-1995-P-critical-wheat");
    private static readonly Constant PhosphateFactor = NutrientConstants.All.Find("TS-1995-P-factor");
    private static readonly Constant PhosphateMaintenance = NutrientConstants.All.Find("TS-1995-P-maintenance-width");
    private static readonly Constant PhosphateDrawdown = NutrientConstants.All.Find("TS-1995-P-drawdown-end");
    private static readonly Constant LevelBase = NutrientConstants.All.Find("TS-1995-K-critical-base");
    private static readonly Constant LevelPerCec = NutrientConstants.All.Find("TS-1995-K-critical-per-cec");
    private static readonly Constant FactorBase = NutrientConstants.All.Find("TS-1995-K-factor-base");
    private static readonly Constant FactorPerCec = NutrientConstants.All.Find("TS-1995-K-factor-per-cec");
    private static readonly Constant PotashMaintenance = NutrientConstants.All.Find("TS-1995-K-maintenance-width");
    private static readonly Constant PotashDrawdown = NutrientConstants.All.Find("TS-1995-K-drawdown-end");
    private static readonly Constant PotashExtra = NutrientConstants.All.Find("TS-1995-K-extra");
    private static readonly Constant AlfalfaCap = NutrientConstants.All.Find("TS-1995-K-alfalfa-cap");
    private static readonly Constant PrintedStep = NutrientConstants.All.Find("TS-1995-printed-step");

    private static readonly DataStatus PotashStatus = Statuses.WeakestOf(
        LevelBase.Status,
        LevelPerCec.Status,
        FactorBase.Status,
        FactorPerCec.Status
    );

    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading)
    {
        bool isPotash = reading.Nutrient == PlantNutrient.Potash;
        if (isPotash && question.CecPer100Grams is null)
        {
            return AskFor(reading.Nutrient, question, _ => "its potassium level is computed from the cation exchange capacity");
        }

        if (isPotash && question.SoilClass is SoilClass.Organic)
        {
            return AskFor(reading.Nutrient, question, _ => "its potassium level for organic soil is not in this library");
        }

        if (Replacement.For(Id, question.Crop, reading.Nutrient) is not { } replacement)
        {
            return RefuseForRemoval(question, reading.Nutrient);
        }

        var printed = isPotash ? null : question.System.PrintedScale(reading, question.Crop.Row);
        double rate = printed is null
            ? PotashKernel(question.Crop, replacement).Rate(reading.Value, question.CecPer100Grams!.Value)
            : PhosphateKernel(CriticalOf(printed), replacement).Rate(reading.Value, 0);
        var status = Statuses.WeakestOf(StatusOf(reading, printed), replacement.Status);
        return new Need(question, reading, printed, rate, status);
    }

    private static DataStatus StatusOf(DomainReading reading, RatingScale? printed)
    {
        if (printed is null)
        {
            return PotashStatus;
        }

        var critical = CriticalOf(printed);
        return Statuses.WeakestOf(critical.Status, PhosphateFactor.Status, printed.StatusOf(printed.ClassOf(reading.Value)!));
    }

    internal override T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user)
    {
        var replacement = Replacement.For(Id, question.Crop, reading.Nutrient)!.Value;
        return reading.Nutrient == PlantNutrient.Potash
            ? user.Use(PotashKernel(question.Crop, replacement))
            : user.Use(PhosphateKernel(CriticalOf(question.System.PrintedScale(reading, question.Crop.Row)), replacement));
    }

    private static Constant CriticalOf(RatingScale printed) =>
        printed.Crops.Contains(CropRow.Corn) ? CornCritical : WheatCritical;

    private static TriState1995PhosphateKernel PhosphateKernel(double critical, Replacement replacement) =>
        new()
        {
            Critical = critical,
            TaperStart = critical + PhosphateMaintenance,
            TaperEnd = critical + PhosphateDrawdown,
            Factor = PhosphateFactor,
            Removed = replacement.Pounds,
        };

    private static TriState1995PotashKernel PotashKernel(CropUse crop, Replacement replacement) =>
        new()
        {
            LevelBase = LevelBase,
            LevelPerCapacity = LevelPerCec,
            MaintenanceWidth = PotashMaintenance,
            DrawdownEnd = PotashDrawdown,
            FactorBase = FactorBase,
            FactorPerCapacity = FactorPerCec,
            Removed = replacement.Pounds,
            Extra = replacement.IsCarriedOff ? PotashExtra : 0,
            Cap = crop.Row == CropRow.Alfalfa ? AlfalfaCap : double.PositiveInfinity,
        };

    /// <summary>The levels of the test: those of phosphorus are printed, those of potassium go by the exchange
    /// capacity.</summary>
    private readonly record struct Levels(double Critical, double TaperStart, double TaperEnd, double ShareDue);

    private sealed class Need(
        SystemRequest question,
        DomainReading reading,
        RatingScale? printed,
        double poundsPerAcre,
        DataStatus status
    ) : BuildUpNeed(question, reading, poundsPerAcre, status)
    {
        private protected override double? PrintedStep => TriState1995System.PrintedStep;

        private protected override IBuildUpKernel Kernel => printed is null ? Potash : Phosphate;

        private TriState1995PhosphateKernel Phosphate => PhosphateKernel(CriticalOf(printed!), Removal);

        private TriState1995PotashKernel Potash => PotashKernel(Question.Crop, Removal);

        private Levels OfTest =>
            printed is null
                ? new(
                    Potash.Critical(Capacity),
                    Potash.TaperStart(Capacity),
                    Potash.TaperEnd(Capacity),
                    Potash.ShareDue(Reading.Value, Capacity)
                )
                : new(
                    Phosphate.Critical,
                    Phosphate.TaperStart,
                    Phosphate.TaperEnd,
                    Phosphate.ShareDue(Reading.Value)
                );

        private double Extra => printed is null ? Potash.Extra : 0;

        public override string Why =>
            Reading.Value < OfTest.Critical
                ? $"{Reading.Subject} is below the critical level of {Reading.Limit(OfTest.Critical)}, so a quarter of the "
                    + $"build-up is due this year; {Removal.PutBack}."
            : OfTest.ShareDue >= 1
                ? $"{Reading.Subject} lies between the critical level of {Reading.Limit(OfTest.Critical)} and "
                    + $"{Reading.Limit(OfTest.TaperStart)}; {Removal.PutBack}."
            : OfTest.ShareDue > 0
                ? $"{Reading.Subject} lies in the taper from {Reading.Limit(OfTest.TaperStart)} to "
                    + $"{Reading.Limit(OfTest.TaperEnd)}, "
                    + $"where {Amounts.Print(OfTest.ShareDue * 100, 1)} % of removal is still due; "
                    + $"{Removal.PutBack}."
            : $"{Reading.Subject} is at or above {Reading.Limit(OfTest.TaperEnd)}, so none is needed.";

        public override NutrientRating? Rating => Question.System.RatingOn(Reading, Scale);

        private protected override ImmutableArray<Source> SourcesOfParts
        {
            get
            {
                var equations = NutrientFormulas.All["tri-state-1995-share-due"].Origin!.Sources;
                return [.. Scale.Sources, .. equations, .. Removal.Origin?.Sources ?? equations];
            }
        }

        private RatingScale Scale =>
            printed
            ?? LimitScale.Of(
                $"{Question.System.Id}-K",
                Reading,
                Question.Crop.Row,
                $"CEC {Amounts.Print(Capacity, 4)} meq/100 g",
                LevelBase.Origin.KnownAs(PotashStatus),
                [
                    ("build-up", OfTest.Critical, false),
                    ("maintenance", OfTest.TaperStart, true),
                    ("drawdown", OfTest.TaperEnd, false),
                ],
                "none"
            );

        private protected override IEnumerable<WorkedLine> LinesOfParts() =>
            [
                .. IsPotash ? PotashLines() : PhosphateLines(),
                .. OfTest.ShareDue is > 0 and < 1 ? ShareLines() : [],
                .. ReplacementLines(Sum),
            ];

        private ImmutableArray<WorkedLine> PhosphateLines() =>
            [
                NutrientFormulas
                    .All["tri-state-1995-phosphate-build-up"]
                    .Line(
                        NutrientFormulas.PerAcre(Raising),
                        ("nutrient", NutrientInWords),
                        ("critical level", NutrientFormulas.Number(OfTest.Critical)),
                        ("test", NutrientFormulas.Number(Reading.Value)),
                        ("pounds a ppm", NutrientFormulas.Number(PhosphateFactor))
                    ),
            ];

        private ImmutableArray<WorkedLine> PotashLines() =>
            [
                NutrientFormulas
                    .All["tri-state-1995-potash-level"]
                    .Line(
                        SoilWords.Amount(OfTest.Critical, Reading.Unit),
                        ("nutrient", NutrientInWords),
                        ("base", NutrientFormulas.Number(LevelBase)),
                        ("ppm a meq", NutrientFormulas.Number(LevelPerCec)),
                        ("CEC", NutrientFormulas.Number(Capacity))
                    ),
                NutrientFormulas
                    .All["tri-state-1995-potash-build-up"]
                    .Line(
                        NutrientFormulas.PerAcre(Raising),
                        ("nutrient", NutrientInWords),
                        ("critical level", NutrientFormulas.Number(OfTest.Critical)),
                        ("test", NutrientFormulas.Number(Reading.Value)),
                        ("base", NutrientFormulas.Number(FactorBase)),
                        ("pounds a meq", NutrientFormulas.Number(FactorPerCec)),
                        ("CEC", NutrientFormulas.Number(Capacity))
                    ),
            ];

        private ImmutableArray<WorkedLine> ShareLines() =>
            [
                NutrientFormulas
                    .All["tri-state-1995-share-due"]
                    .Line(
                        NutrientFormulas.Number(OfTest.ShareDue),
                        ("nutrient", NutrientInWords),
                        ("start of taper", NutrientFormulas.Number(OfTest.TaperStart)),
                        ("end of taper", NutrientFormulas.Number(OfTest.TaperEnd)),
                        ("test", NutrientFormulas.Number(Reading.Value))
                    ),
            ];

        private WorkedLine Sum() =>
            NutrientFormulas
                .All[IsPotash ? "tri-state-1995-potash-replacement" : "tri-state-1995-phosphate-replacement"]
                .Line(
                    NutrientFormulas.PerAcre(Replacing),
                    ("nutrient", NutrientInWords),
                    ("carried off", NutrientFormulas.Number(Removal.Pounds)),
                    ("extra", NutrientFormulas.Number(Extra)),
                    ("share still due", NutrientFormulas.Number(OfTest.ShareDue))
                );
    }
}
