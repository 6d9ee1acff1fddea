using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Build-up by the square-root law over four or eight years, plus removal stated by the caller where the crop is carried
/// off.</summary>
internal sealed class MissouriSystem(SystemRecord record) : BuildUpSystem(record)
{
    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading)
    {
        bool isPotash = reading.Nutrient == PlantNutrient.Potash;
        if (isPotash && question.CecPer100Grams is null)
        {
            return Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.FactMissing,
                "its potassium target is computed from the cation exchange capacity"
            );
        }

        double longYears = NutrientConstants.All["MO-years-long"];
        double years = isPotash ? longYears : question.Setting.BuildUpYears ?? longYears;
        if (years != longYears && years != NutrientConstants.All["MO-P-years-short"])
        {
            return Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.FactMissing,
                $"it builds up over 4 or 8 years, not {Amounts.Print(years, 4)}"
            );
        }

        if (Replacement.For(Id, question.Crop, reading.Nutrient) is not { } replacement)
        {
            return RefuseForRemoval(question, reading.Nutrient);
        }

        bool isPasture = question.Crop.Row == CropRow.GrassPasture;
        var targetBase = NutrientConstants.All.Find(
            isPotash
                ? isPasture
                    ? "MO-K-target-base-pasture"
                    : "MO-K-target-base-row"
                : "MO-P-target"
        );
        var targetPerCec = NutrientConstants.All.Find("MO-K-target-per-cec");
        double cec = question.CecPer100Grams ?? 0;
        double target = isPotash ? SystemMath.ByExchangeCapacity(targetBase, targetPerCec, cec) : targetBase;
        var factor = NutrientConstants.All.Find(isPotash ? "MO-K-factor" : "MO-P-factor");
        double buildUp = SystemMath.SquareRootBuildUp(reading.Value, target, factor, years);
        bool builds = reading.Value < target;
        var scale = LimitScale.Of(
            $"MO-{reading.Nutrient}",
            reading,
            question.Crop.Row,
            $"target {Amounts.Print(target, 4)} lb/ac",
            targetBase.Status,
            targetBase.SourceId,
            [("below target", target, false)],
            "at or above target"
        );

        string nutrient = SoilWords.For(reading.Nutrient);
        string part = years == longYears ? "an eighth" : "a quarter";
        return Need(
            question,
            reading,
            new Parts(
                buildUp,
                replacement.Pounds,
                builds
                    ? $"{reading.Subject} is below the target of {reading.Limit(target)}, so {part} of the build-up is due this "
                        + $"year; {replacement.PutBack}."
                    : $"{reading.Subject} is at or above the target of {reading.Limit(target)}, so no build-up is due; "
                        + $"{replacement.PutBack}.",
                Statuses.WeakestOf(targetBase.Status, builds ? factor.Status : DataStatus.Read, replacement.Status),
                [.. factor.SourceId.Split(';'), .. targetBase.SourceId.Split(';'), replacement.SourceId ?? factor.SourceId]
            )
            {
                Rating = reading.RatingOn(scale, Id),
                Lines = () =>
                    isPotash
                        ? [TargetLine(), BuildUpLine(), replacement.Line(nutrient)]
                        : [BuildUpLine(), replacement.Line(nutrient)],
                Findings =
                    !builds && replacement.IsCarriedOff
                        ?
                        [
                            FindingCatalog.Create(
                                NutrientCodes.NoUpperLimit,
                                ("system", Name),
                                ("nutrient", SoilWords.For(reading.Nutrient))
                            ),
                        ]
                        : [],
            }
        );

        WorkedLine TargetLine() =>
            NutrientFormulas
                .All["missouri-potash-target"]
                .Line(
                    SoilWords.Amount(target, reading.Unit),
                    ("nutrient", nutrient),
                    ("base", NutrientFormulas.Number(targetBase)),
                    ("pounds a meq", NutrientFormulas.Number(targetPerCec)),
                    ("CEC", NutrientFormulas.Number(cec))
                );

        WorkedLine BuildUpLine() =>
            NutrientFormulas
                .All["missouri-build-up"]
                .Line(
                    NutrientFormulas.PerAcre(buildUp),
                    ("nutrient", nutrient),
                    ("factor", NutrientFormulas.Number(factor)),
                    ("target", NutrientFormulas.Number(target)),
                    ("test", NutrientFormulas.Number(reading.Value)),
                    ("years", NutrientFormulas.Number(years))
                );
    }
}
