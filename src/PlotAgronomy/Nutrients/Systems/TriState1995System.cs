using System.Globalization;
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
                    "nutrient-fact-missing",
                    "its potassium level is computed from the cation exchange capacity"
                );
            }

            if (question.SoilClass is SoilClass.Organic)
            {
                return Refuse(
                    reading.Nutrient,
                    question,
                    "nutrient-fact-missing",
                    "its potassium level for organic soil is not in this library"
                );
            }
        }

        if (Replacement.For(Id, question.Crop, reading.Nutrient) is not { } replacement)
        {
            return RefuseForRemoval(question, reading.Nutrient);
        }

        var levels = reading.Nutrient == PlantNutrient.Potash ? PotashLevels(question, reading) : PhosphateLevels(question);
        double buildUp = SystemMath.LinearBuildUp(reading.Value, levels.Critical, levels.Factor);
        double share = SystemMath.TaperShare(reading.Value, levels.TaperStart, levels.TaperEnd);
        double extra =
            reading.Nutrient == PlantNutrient.Potash && replacement.IsCarriedOff ? NutrientConstants.All["TS-1995-K-extra"] : 0;
        double replaced = (replacement.Pounds + extra) * share;
        string taper = share is > 0 and < 1 ? $" x {Amounts.Print(share, 4)}" : "";
        var rating = reading.RatingOn(levels.Scale, Id)!;
        return Need(
            question,
            reading,
            new Parts(
                buildUp,
                replaced,
                WhyOf(reading, levels, share, replacement),
                Statuses.WeakestOf(levels.Status, rating.Status, replacement.Status),
                [.. levels.Scale.SourceIds, "SOIL-TS1", replacement.SourceId ?? "SOIL-TS1"]
            )
            {
                Rating = rating,
                BuildUpFormula =
                    reading.Nutrient == PlantNutrient.Potash
                        ? "(critical level - test) x (1 + 0.05 x CEC)"
                        : "(critical level - test) x 5",
                BuildUpNumbers = string.Create(
                    CultureInfo.InvariantCulture,
                    $"({levels.Critical:0.###} - {reading.Value:0.###}, not below 0) x {levels.Factor:0.####}"
                ),
                ReplacementFormula = extra > 0 ? "(yield x removal + 20) x share still due" : "yield x removal x share still due",
                ReplacementNumbers =
                    extra > 0 ? $"({replacement.Words} + {Amounts.Print(extra, 4)}){taper}" : $"{replacement.Words}{taper}",
                Cap =
                    reading.Nutrient == PlantNutrient.Potash && question.Crop.Row == CropRow.Alfalfa
                        ? NutrientConstants.All["TS-1995-K-alfalfa-cap"]
                        : null,
                PrintedStep = NutrientConstants.All["TS-1995-printed-step"],
            }
        );
    }

    private static Levels PhosphateLevels(SystemQuestion question)
    {
        bool isRowCrop = question.Crop.Row is CropRow.Corn or CropRow.Soybean;
        var critical = NutrientConstants.All.Find(isRowCrop ? "TS-1995-P-critical-corn" : "TS-1995-P-critical-wheat");
        var factor = NutrientConstants.All.Find("TS-1995-P-factor");
        var scale = RatingTables.Find(isRowCrop ? "TS-1995-P-corn" : "TS-1995-P-wheat");
        return new Levels(
            critical,
            critical + NutrientConstants.All["TS-1995-P-maintenance-width"],
            critical + NutrientConstants.All["TS-1995-P-drawdown-end"],
            factor,
            Statuses.WeakestOf(critical.Status, factor.Status),
            scale
        );
    }

    private static Levels PotashLevels(SystemQuestion question, DomainReading reading)
    {
        double cec = question.CecPer100Grams!.Value;
        double critical =
            NutrientConstants.All["TS-1995-K-critical-base"] + (NutrientConstants.All["TS-1995-K-critical-per-cec"] * cec);
        double taperStart = critical + NutrientConstants.All["TS-1995-K-maintenance-width"];
        double taperEnd = critical + NutrientConstants.All["TS-1995-K-drawdown-end"];
        double factor =
            NutrientConstants.All["TS-1995-K-factor-base"] + (NutrientConstants.All["TS-1995-K-factor-per-cec"] * cec);
        var scale = LimitScale.Of(
            "TS-1995-K",
            reading,
            question.Crop.Row,
            $"CEC {Amounts.Print(cec, 4)} meq/100 g",
            DataStatus.Memory,
            "SOIL-TS1",
            [("build-up", critical, false), ("maintenance", taperStart, true), ("drawdown", taperEnd, false)],
            "none"
        );
        return new Levels(critical, taperStart, taperEnd, factor, DataStatus.Memory, scale);
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
        double Factor,
        DataStatus Status,
        RatingScale Scale
    );
}
