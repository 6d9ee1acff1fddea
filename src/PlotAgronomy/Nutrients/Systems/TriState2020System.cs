using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Mehlich-3. Below the critical level build-up plus removal, up to the limit removal, from the limit on none.</summary>
internal sealed class TriState2020System(SystemRecord record) : BuildUpSystem(record)
{
    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading)
    {
        double? cec = question.CecPer100Grams;
        bool isPotash = reading.Nutrient == PlantNutrient.Potash;
        if (isPotash && cec is null)
        {
            return Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.FactMissing,
                "its potassium levels ask for the cation exchange capacity"
            );
        }

        if (Replacement.For(Id, question.Crop, reading.Nutrient) is not { } replacement)
        {
            return RefuseForRemoval(question, reading.Nutrient);
        }

        var scale = RatingTables.Find(
            isPotash
                ? cec <= NutrientConstants.All.Find("TS-2020-K-cec-limit")
                    ? "TS-2020-K-sand"
                    : "TS-2020-K-loam"
                : question.Crop.Row is CropRow.Corn or CropRow.Soybean
                    ? "TS-2020-P-corn"
                    : "TS-2020-P-wheat"
        );
        double criticalLevel = scale.Classes[0].PrintedHigh!.Value;
        double limit = scale.Classes[1].PrintedHigh!.Value;
        var factorBase = NutrientConstants.All.Find("TS-2020-K-factor-base");
        var factorPerCec = NutrientConstants.All.Find("TS-2020-K-factor-per-cec");
        var phosphateFactor = NutrientConstants.All.Find("TS-2020-P-factor");
        double extra = isPotash && replacement.IsCarriedOff ? NutrientConstants.All["TS-2020-K-extra"] : 0;

        double buildUp = isPotash
            ? SystemMath.TriStatePotashBuildUp(reading.Value, criticalLevel, factorBase, factorPerCec, cec!.Value)
            : SystemMath.LinearBuildUp(reading.Value, criticalLevel, phosphateFactor);
        double replaced = SystemMath.TriState2020Replacement(reading.Value, limit, replacement.Pounds, extra);
        var rating = reading.RatingOn(scale, Id)!;
        bool builds = buildUp > 0;
        bool replaces = replacement.IsCarriedOff && reading.Value < limit;
        var status = Statuses.WeakestOf(
            rating.Status,
            builds && !isPotash ? phosphateFactor.Status : DataStatus.Read,
            replaces ? replacement.Status : DataStatus.Read
        );

        string nutrient = SoilWords.For(reading.Nutrient);
        return Need(
            question,
            reading,
            new Parts(
                buildUp,
                replaced,
                WhyOf(reading, criticalLevel, limit, replacement),
                status,
                [
                    .. scale.SourceIds,
                    isPotash ? factorPerCec.SourceId : phosphateFactor.SourceId,
                    .. replaces ? new[] { replacement.SourceId! } : [],
                ]
            )
            {
                Rating = rating,
                Lines = () => [BuildUpLine(), .. ReplacementLines(replacement, nutrient, ReplacementLine)],
            }
        );

        WorkedLine BuildUpLine() =>
            NutrientFormulas
                .All[isPotash ? "tri-state-2020-potash-build-up" : "tri-state-2020-phosphate-build-up"]
                .Line(
                    NutrientFormulas.PerAcre(buildUp),
                    ("nutrient", nutrient),
                    ("critical level", NutrientFormulas.Number(criticalLevel)),
                    ("test", NutrientFormulas.Number(reading.Value)),
                    ("pounds a ppm", NutrientFormulas.Number(phosphateFactor)),
                    ("base", NutrientFormulas.Number(factorBase)),
                    ("pounds a meq", NutrientFormulas.Number(factorPerCec)),
                    ("CEC", NutrientFormulas.Number(cec ?? 0))
                );

        WorkedLine ReplacementLine() =>
            NutrientFormulas
                .All[isPotash ? "tri-state-2020-potash-replacement" : "tri-state-2020-phosphate-replacement"]
                .Line(
                    NutrientFormulas.PerAcre(replaced),
                    ("nutrient", nutrient),
                    ("test", NutrientFormulas.Number(reading.Value)),
                    ("limit", NutrientFormulas.Number(limit)),
                    ("carried off", NutrientFormulas.Number(replacement.Pounds)),
                    ("extra", NutrientFormulas.Number(extra))
                );
    }

    private static string WhyOf(DomainReading reading, double criticalLevel, double limit, Replacement replacement)
    {
        return reading.Value < criticalLevel
                ? $"{reading.Subject} is below the critical level of {reading.Limit(criticalLevel)}, so a quarter of the "
                    + $"build-up is due this year; {replacement.PutBack}."
            : reading.Value < limit
                ? $"{reading.Subject} lies between the critical level of {reading.Limit(criticalLevel)} and the limit of "
                    + $"{reading.Limit(limit)}; {replacement.PutBack}."
            : $"{reading.Subject} is at or above the limit of {reading.Limit(limit)}, so none is needed.";
    }
}
