using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Build-up by the square-root law over four or eight years, plus removal stated by the caller where the crop is carried
/// off.</summary>
internal sealed class MissouriSystem(SystemRecord record) : BuildUpSystem(record)
{
    private static readonly double LongYears = NutrientConstants.All["MO-years-long"];
    private static readonly double ShortYears = NutrientConstants.All["MO-P-years-short"];
    private static readonly Constant PhosphateTarget = NutrientConstants.All.Find("MO-P-target");
    private static readonly Constant PhosphateFactor = NutrientConstants.All.Find("MO-P-factor");
    private static readonly Constant RowCropBase = NutrientConstants.All.Find("MO-K-target-base-row");
    private static readonly Constant PastureBase = NutrientConstants.All.Find("MO-K-target-base-pasture");
    private static readonly Constant TargetPerCec = NutrientConstants.All.Find("MO-K-target-per-cec");
    private static readonly Constant PotashFactor = NutrientConstants.All.Find("MO-K-factor");

    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading)
    {
        bool isPotash = reading.Nutrient == PlantNutrient.Potash;
        if (isPotash && question.CecPer100Grams is null)
        {
            return AskFor(reading.Nutrient, question, _ => "its potassium target is computed from the cation exchange capacity");
        }

        double years = YearsOf(question.Crop, isPotash);
        if (years != LongYears && years != ShortYears)
        {
            return OtherYears(question, reading.Nutrient, years);
        }

        if (Replacement.For(Id, question.Crop, reading.Nutrient) is not { } replacement)
        {
            return RefuseForRemoval(question, reading.Nutrient);
        }

        var targetBase = TargetBaseOf(question.Crop.Row, isPotash);
        var factor = FactorOf(isPotash);
        var kernel = Kernel(question.Crop, isPotash, years, replacement);
        double cec = question.CecPer100Grams ?? 0;
        return new Need(
            question,
            reading,
            kernel.Rate(reading.Value, cec),
            Statuses.WeakestOf(
                targetBase.Status,
                kernel.Builds(reading.Value, cec) ? factor.Status : DataStatus.Read,
                replacement.Status
            )
        );
    }

    internal override T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user)
    {
        bool isPotash = reading.Nutrient == PlantNutrient.Potash;
        var replacement = Replacement.For(Id, question.Crop, reading.Nutrient)!.Value;
        return user.Use(Kernel(question.Crop, isPotash, YearsOf(question.Crop, isPotash), replacement));
    }

    private static double YearsOf(CropUse crop, bool isPotash) => isPotash ? LongYears : crop.BuildUpYears ?? LongYears;

    private static Constant TargetBaseOf(CropRow crop, bool isPotash) =>
        !isPotash ? PhosphateTarget
        : crop == CropRow.GrassPasture ? PastureBase
        : RowCropBase;

    private static Constant FactorOf(bool isPotash) => isPotash ? PotashFactor : PhosphateFactor;

    private static MissouriNeedKernel Kernel(CropUse crop, bool isPotash, double years, Replacement replacement) =>
        new()
        {
            TargetBase = TargetBaseOf(crop.Row, isPotash),
            TargetPerCapacity = isPotash ? TargetPerCec : 0,
            Factor = FactorOf(isPotash),
            Years = years,
            Removed = replacement.Pounds,
            Replaces = replacement.IsCarriedOff,
        };

    private UnansweredNutrient OtherYears(SystemRequest question, PlantNutrient nutrient, double years) =>
        AskFor(nutrient, question, _ =>
            $"it builds up over {Amounts.Print(ShortYears, 4)} or {Amounts.Print(LongYears, 4)} years, not "
            + Amounts.Print(years, 4)
        );

    private sealed class Need(SystemRequest question, DomainReading reading, double poundsPerAcre, DataStatus status)
        : BuildUpNeed(question, reading, poundsPerAcre, status)
    {
        private protected override IBuildUpKernel Kernel => OfCrop;

        private MissouriNeedKernel OfCrop => MissouriSystem.Kernel(Question.Crop, IsPotash, Years, Removal);

        private Constant TargetBase => TargetBaseOf(Question.Crop.Row, IsPotash);

        private Constant Factor => FactorOf(IsPotash);

        private double Target => OfCrop.Target(Capacity);

        private double Years => YearsOf(Question.Crop, IsPotash);

        public override string Why
        {
            get
            {
                string part = Years == LongYears ? "an eighth" : "a quarter";
                return Builds
                    ? $"{Reading.Subject} is below the target of {Reading.Limit(Target)}, so {part} of the build-up is due this "
                        + $"year; {Removal.PutBack}."
                    : $"{Reading.Subject} is at or above the target of {Reading.Limit(Target)}, so no build-up is due; "
                        + $"{Removal.PutBack}.";
            }
        }

        public override NutrientRating? Rating =>
            Question.System.RatingOn(
                Reading,
                LimitScale.Of(
                    $"{Question.System.Id}-{Reading.Nutrient}",
                    Reading,
                    Question.Crop.Row,
                    $"target {Amounts.Print(Target, 4)} lb/ac",
                    TargetBase.Origin,
                    [("below target", Target, false)],
                    "at or above target"
                )
            );

        private protected override ImmutableArray<Source> SourcesOfParts =>
            [.. Factor.Origin.Sources, .. TargetBase.Origin.Sources, .. (Removal.Origin ?? Factor.Origin).Sources];

        private protected override ImmutableArray<Finding> FindingsOfParts =>
            Noticed(NeedRemarks.NoUpperLimit)
                ?
                [
                    FindingCatalog.Create(
                        NutrientCodes.NoUpperLimit,
                        ("system", Question.System.Name),
                        ("nutrient", NutrientInWords)
                    ),
                ]
                : [];

        private bool Builds => OfCrop.Builds(Reading.Value, Capacity);

        private protected override IEnumerable<WorkedLine> LinesOfParts() =>
            IsPotash
                ? [TargetLine(), .. BuildUpLines(), Removal.Line(NutrientInWords)]
                : [.. BuildUpLines(), Removal.Line(NutrientInWords)];

        private WorkedLine TargetLine() =>
            NutrientFormulas
                .All["missouri-potash-target"]
                .Line(
                    SoilWords.Amount(Target, Reading.Unit),
                    ("nutrient", NutrientInWords),
                    ("base", NutrientFormulas.Number(TargetBase)),
                    ("pounds a meq", NutrientFormulas.Number(TargetPerCec)),
                    ("CEC", NutrientFormulas.Number(Capacity))
                );

        private ImmutableArray<WorkedLine> BuildUpLines() =>
            [
                NutrientFormulas
                    .All["missouri-build-up"]
                    .Line(
                        NutrientFormulas.PerAcre(Raising),
                        ("nutrient", NutrientInWords),
                        ("factor", NutrientFormulas.Number(Factor)),
                        ("target", NutrientFormulas.Number(Target)),
                        ("test", NutrientFormulas.Number(Reading.Value)),
                        ("years", NutrientFormulas.Number(Years))
                    ),
            ];
    }
}
