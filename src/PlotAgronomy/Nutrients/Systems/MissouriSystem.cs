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
            return AskFor(reading.Nutrient, question, () => "its potassium target is computed from the cation exchange capacity");
        }

        double years = isPotash ? LongYears : question.Crop.BuildUpYears ?? LongYears;
        if (years != LongYears && years != ShortYears)
        {
            return OtherYears(question, reading.Nutrient, years);
        }

        if (Replacement.For(Id, question.Crop, reading.Nutrient) is not { } replacement)
        {
            return RefuseForRemoval(question, reading.Nutrient);
        }

        var targetBase =
            !isPotash ? PhosphateTarget
            : question.Crop.Row == CropRow.GrassPasture ? PastureBase
            : RowCropBase;
        double cec = question.CecPer100Grams ?? 0;
        double target = isPotash ? SystemMath.ByExchangeCapacity(targetBase, TargetPerCec, cec) : targetBase;
        var factor = isPotash ? PotashFactor : PhosphateFactor;
        var grounds = new Grounds(this, question, reading, replacement, targetBase, factor, target, years)
        {
            BuildUp = SystemMath.SquareRootBuildUp(reading.Value, target, factor, years),
            Replaced = replacement.Pounds,
        };
        return Need(
            grounds,
            Statuses.WeakestOf(targetBase.Status, reading.Value < target ? factor.Status : DataStatus.Read, replacement.Status)
        );
    }

    private UnansweredNutrient OtherYears(SystemRequest question, PlantNutrient nutrient, double years) =>
        AskFor(nutrient, question, () =>
            $"it builds up over {Amounts.Print(ShortYears, 4)} or {Amounts.Print(LongYears, 4)} years, not "
            + Amounts.Print(years, 4)
        );

    private sealed class Grounds(
        RecommendationSystem system,
        SystemRequest question,
        DomainReading reading,
        Replacement replacement,
        Constant targetBase,
        Constant factor,
        double target,
        double years
    ) : BuildUpGrounds(system, question, reading, replacement)
    {
        internal override string Why
        {
            get
            {
                string part = years == LongYears ? "an eighth" : "a quarter";
                return Builds
                    ? $"{Reading.Subject} is below the target of {Reading.Limit(target)}, so {part} of the build-up is due this "
                        + $"year; {Replacement.PutBack}."
                    : $"{Reading.Subject} is at or above the target of {Reading.Limit(target)}, so no build-up is due; "
                        + $"{Replacement.PutBack}.";
            }
        }

        internal override NutrientRating? Rating =>
            System.RatingOn(
                Reading,
                LimitScale.Of(
                    $"{System.Id}-{Reading.Nutrient}",
                    Reading,
                    Question.Crop.Row,
                    $"target {Amounts.Print(target, 4)} lb/ac",
                    targetBase.Origin,
                    [("below target", target, false)],
                    "at or above target"
                )
            );

        private protected override ImmutableArray<Source> SourcesOfParts =>
            [.. factor.Origin.Sources, .. targetBase.Origin.Sources, .. (Replacement.Origin ?? factor.Origin).Sources];

        private protected override ImmutableArray<Finding> FindingsOfParts =>
            !Builds && Replacement.IsCarriedOff
                ? [FindingCatalog.Create(NutrientCodes.NoUpperLimit, ("system", System.Name), ("nutrient", NutrientInWords))]
                : [];

        private bool Builds => Reading.Value < target;

        private protected override IEnumerable<WorkedLine> LinesOfParts() =>
            IsPotash
                ? [TargetLine(), .. BuildUpLines(), Replacement.Line(NutrientInWords)]
                : [.. BuildUpLines(), Replacement.Line(NutrientInWords)];

        private WorkedLine TargetLine() =>
            NutrientFormulas
                .All["missouri-potash-target"]
                .Line(
                    SoilWords.Amount(target, Reading.Unit),
                    ("nutrient", NutrientInWords),
                    ("base", NutrientFormulas.Number(targetBase)),
                    ("pounds a meq", NutrientFormulas.Number(TargetPerCec)),
                    ("CEC", NutrientFormulas.Number(Question.CecPer100Grams ?? 0))
                );

        private ImmutableArray<WorkedLine> BuildUpLines() =>
            [
                NutrientFormulas
                    .All["missouri-build-up"]
                    .Line(
                        NutrientFormulas.PerAcre(BuildUp),
                        ("nutrient", NutrientInWords),
                        ("factor", NutrientFormulas.Number(factor)),
                        ("target", NutrientFormulas.Number(target)),
                        ("test", NutrientFormulas.Number(Reading.Value)),
                        ("years", NutrientFormulas.Number(years))
                    ),
            ];
    }
}
