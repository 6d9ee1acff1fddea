using System.Globalization;

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
                "nutrient-fact-missing",
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
        double factor = isPotash ? factorBase + (factorPerCec * cec!.Value) : phosphateFactor;
        double extra = isPotash && replacement.IsCarriedOff ? NutrientConstants.All["TS-2020-K-extra"] : 0;

        double buildUp = SystemMath.LinearBuildUp(reading.Value, criticalLevel, factor);
        double replaced = reading.Value >= limit ? 0 : replacement.Pounds + extra;
        var rating = reading.RatingOn(scale, Id)!;
        bool builds = buildUp > 0;
        bool replaces = replacement.IsCarriedOff && reading.Value < limit;
        var status = Statuses.WeakestOf(
            rating.Status,
            builds && !isPotash ? phosphateFactor.Status : DataStatus.Read,
            replaces ? replacement.Status : DataStatus.Read
        );

        string plusExtra = isPotash ? $" + {Amounts.Print(extra, 4)}" : "";
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
                BuildUpFormula = isPotash ? "(critical level - test) x (1 + 0.05 x CEC)" : "(critical level - test) x 5",
                BuildUpNumbers = builds
                    ? string.Create(CultureInfo.InvariantCulture, $"({criticalLevel} - {reading.Value:0.###}) x {factor:0.####}")
                    : string.Create(CultureInfo.InvariantCulture, $"{reading.Value:0.###} is not below {criticalLevel}"),
                ReplacementFormula = isPotash ? "yield x removal + 20, below the limit" : "yield x removal, below the limit",
                ReplacementNumbers =
                    reading.Value >= limit ? $"at or above {Amounts.Print(limit, 4)}"
                    : replacement.IsCarriedOff ? $"{replacement.Words}{plusExtra}"
                    : replacement.Words,
            }
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
