using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Bray P-1 and ammonium acetate. Build-up plus removal below the critical level, removal above it, then a taper to
/// none.</summary>
internal sealed class TriState1995System(SystemRecord record) : BuildUpSystem(record)
{
    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading)
    {
        if (reading.Nutrient == PlantNutrient.Potash)
        {
            if (question.CecPer100Grams is null)
            {
                return Refuse(
                    reading.Nutrient,
                    question,
                    NutrientCodes.FactMissing,
                    "its potassium level is computed from the cation exchange capacity"
                );
            }

            if (question.SoilClass is SoilClass.Organic)
            {
                return Refuse(
                    reading.Nutrient,
                    question,
                    NutrientCodes.FactMissing,
                    "its potassium level for organic soil is not in this library"
                );
            }
        }

        if (Replacement.For(Id, question.Crop, reading.Nutrient) is not { } replacement)
        {
            return RefuseForRemoval(question, reading.Nutrient);
        }

        bool isPotash = reading.Nutrient == PlantNutrient.Potash;
        var levels = isPotash ? PotashLevels(question, reading) : PhosphateLevels(question);
        double buildUp = levels.BuildUp(reading.Value);
        double share = SystemMath.TaperShare(reading.Value, levels.TaperStart, levels.TaperEnd);
        double extra = isPotash && replacement.IsCarriedOff ? NutrientConstants.All["TS-1995-K-extra"] : 0;
        double replaced = SystemMath.TriState1995Replacement(replacement.Pounds, extra, share);
        var rating = reading.RatingOn(levels.Scale, Id)!;
        var equations = NutrientFormulas.All["tri-state-1995-share-due"].Origin!.SourceIds;
        return Need(
            question,
            reading,
            new Parts(
                buildUp,
                replaced,
                WhyOf(reading, levels, share, replacement),
                Statuses.WeakestOf(levels.Status, rating.Status, replacement.Status),
                [.. levels.Scale.SourceIds, .. equations, .. replacement.SourceId is { } source ? [source] : equations]
            )
            {
                Rating = rating,
                Lines = () =>
                    [
                        .. levels.Lines(reading, buildUp),
                        .. ReplacementLines(reading, levels, replacement, extra, share, replaced),
                    ],
                Cap = isPotash && question.Crop.Row == CropRow.Alfalfa ? NutrientConstants.All["TS-1995-K-alfalfa-cap"] : null,
                PrintedStep = NutrientConstants.All["TS-1995-printed-step"],
            }
        );
    }

    private static IEnumerable<WorkedLine> ReplacementLines(
        DomainReading reading,
        Levels levels,
        Replacement replacement,
        double extra,
        double share,
        double replaced
    )
    {
        string nutrient = SoilWords.For(reading.Nutrient);
        if (share is > 0 and < 1)
        {
            yield return NutrientFormulas
                .All["tri-state-1995-share-due"]
                .Line(
                    NutrientFormulas.Number(share),
                    ("nutrient", nutrient),
                    ("start of taper", NutrientFormulas.Number(levels.TaperStart)),
                    ("end of taper", NutrientFormulas.Number(levels.TaperEnd)),
                    ("test", NutrientFormulas.Number(reading.Value))
                );
        }

        string id =
            reading.Nutrient == PlantNutrient.Potash
                ? "tri-state-1995-potash-replacement"
                : "tri-state-1995-phosphate-replacement";
        foreach (var line in ReplacementLines(replacement, nutrient, Sum))
        {
            yield return line;
        }

        WorkedLine Sum() =>
            NutrientFormulas
                .All[id]
                .Line(
                    NutrientFormulas.PerAcre(replaced),
                    ("nutrient", nutrient),
                    ("carried off", NutrientFormulas.Number(replacement.Pounds)),
                    ("extra", NutrientFormulas.Number(extra)),
                    ("share still due", NutrientFormulas.Number(share))
                );
    }

    private static Levels PhosphateLevels(SystemQuestion question)
    {
        bool isRowCrop = question.Crop.Row is CropRow.Corn or CropRow.Soybean;
        var critical = NutrientConstants.All.Find(isRowCrop ? "TS-1995-P-critical-corn" : "TS-1995-P-critical-wheat");
        var factor = NutrientConstants.All.Find("TS-1995-P-factor");
        return new Levels(
            critical,
            critical + NutrientConstants.All["TS-1995-P-maintenance-width"],
            critical + NutrientConstants.All["TS-1995-P-drawdown-end"],
            Statuses.WeakestOf(critical.Status, factor.Status),
            RatingTables.Find(isRowCrop ? "TS-1995-P-corn" : "TS-1995-P-wheat"),
            test => SystemMath.LinearBuildUp(test, critical, factor),
            (reading, buildUp) =>
                [
                    NutrientFormulas
                        .All["tri-state-1995-phosphate-build-up"]
                        .Line(
                            NutrientFormulas.PerAcre(buildUp),
                            ("nutrient", SoilWords.For(reading.Nutrient)),
                            ("critical level", NutrientFormulas.Number(critical)),
                            ("test", NutrientFormulas.Number(reading.Value)),
                            ("pounds a ppm", NutrientFormulas.Number(factor))
                        ),
                ]
        );
    }

    private static Levels PotashLevels(SystemQuestion question, DomainReading reading)
    {
        double cec = question.CecPer100Grams!.Value;
        var levelBase = NutrientConstants.All.Find("TS-1995-K-critical-base");
        var levelPerCec = NutrientConstants.All.Find("TS-1995-K-critical-per-cec");
        var factorBase = NutrientConstants.All.Find("TS-1995-K-factor-base");
        var factorPerCec = NutrientConstants.All.Find("TS-1995-K-factor-per-cec");
        double critical = SystemMath.ByExchangeCapacity(levelBase, levelPerCec, cec);
        double taperStart = critical + NutrientConstants.All["TS-1995-K-maintenance-width"];
        double taperEnd = critical + NutrientConstants.All["TS-1995-K-drawdown-end"];
        var status = Statuses.WeakestOf(levelBase.Status, levelPerCec.Status, factorBase.Status, factorPerCec.Status);
        var scale = LimitScale.Of(
            "TS-1995-K",
            reading,
            question.Crop.Row,
            $"CEC {Amounts.Print(cec, 4)} meq/100 g",
            status,
            levelBase.SourceId,
            [("build-up", critical, false), ("maintenance", taperStart, true), ("drawdown", taperEnd, false)],
            "none"
        );
        return new Levels(
            critical,
            taperStart,
            taperEnd,
            status,
            scale,
            test => SystemMath.TriStatePotashBuildUp(test, critical, factorBase, factorPerCec, cec),
            (asked, buildUp) =>
                [
                    NutrientFormulas
                        .All["tri-state-1995-potash-level"]
                        .Line(
                            SoilWords.Amount(critical, asked.Unit),
                            ("nutrient", SoilWords.For(asked.Nutrient)),
                            ("base", NutrientFormulas.Number(levelBase)),
                            ("ppm a meq", NutrientFormulas.Number(levelPerCec)),
                            ("CEC", NutrientFormulas.Number(cec))
                        ),
                    NutrientFormulas
                        .All["tri-state-1995-potash-build-up"]
                        .Line(
                            NutrientFormulas.PerAcre(buildUp),
                            ("nutrient", SoilWords.For(asked.Nutrient)),
                            ("critical level", NutrientFormulas.Number(critical)),
                            ("test", NutrientFormulas.Number(asked.Value)),
                            ("base", NutrientFormulas.Number(factorBase)),
                            ("pounds a meq", NutrientFormulas.Number(factorPerCec)),
                            ("CEC", NutrientFormulas.Number(cec))
                        ),
                ]
        );
    }

    private static string WhyOf(DomainReading reading, Levels levels, double share, Replacement replacement)
    {
        return reading.Value < levels.Critical
                ? $"{reading.Subject} is below the critical level of {reading.Limit(levels.Critical)}, so a quarter of the "
                    + $"build-up is due this year; {replacement.PutBack}."
            : share >= 1
                ? $"{reading.Subject} lies between the critical level of {reading.Limit(levels.Critical)} and "
                    + $"{reading.Limit(levels.TaperStart)}; {replacement.PutBack}."
            : share > 0
                ? $"{reading.Subject} lies in the taper from {reading.Limit(levels.TaperStart)} to "
                    + $"{reading.Limit(levels.TaperEnd)}, where {Amounts.Print(share * 100, 1)} % of removal is still due; "
                    + $"{replacement.PutBack}."
            : $"{reading.Subject} is at or above {reading.Limit(levels.TaperEnd)}, so none is needed.";
    }

    private sealed record Levels(
        double Critical,
        double TaperStart,
        double TaperEnd,
        DataStatus Status,
        RatingScale Scale,
        Func<double, double> BuildUp,
        Func<DomainReading, double, WorkedLine[]> Lines
    );
}
