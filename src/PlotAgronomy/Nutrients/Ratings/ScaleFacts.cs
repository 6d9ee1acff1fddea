using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What is known when a scale has to be picked: report, crop and setting.</summary>
internal sealed record ScaleFacts(SoilReport Report, CropRow? Crop, PlotSetting Setting)
{
    internal (NutrientRating? Rating, string Reason) Rate(string systemId, ImmutableArray<RatingScale> scales)
    {
        var tests = scales.Select(s => $"{SoilWords.Or(s.Extractants)} in {s.UnitInWords}").Distinct();
        string reason = $"it was made for {string.Join(" or ", tests)}";
        foreach (var scale in scales)
        {
            if (Value(scale) is not { } found)
            {
                continue;
            }

            if (scale.Crops.Length > 0 && Crop is null)
            {
                reason = "its limits differ by crop, and no crop row was named";
            }
            else if (scale.Crops.Length > 0 && !scale.Crops.Contains(Crop!.Value))
            {
                reason = scales.Any(s => s.Crops.Contains(Crop!.Value))
                    ? reason
                    : $"it has no limits for {CropRows.WordsFor(Crop!.Value)}";
            }
            else if (Holds(scale.Condition) is not { } holds)
            {
                reason = Question(scale.Condition);
            }
            else if (holds)
            {
                return scale.ClassOf(found.Value) is { } rated
                    ? (
                        new NutrientRating
                        {
                            SystemId = systemId,
                            Scale = scale,
                            Class = rated,
                            Reading = found.Reading,
                            ComparedValue = found.Value,
                        },
                        ""
                    )
                    : (null, $"{Amounts.Print(found.Value, 4)} {scale.UnitInWords} lies above the last class printed");
            }
        }

        return (null, reason);
    }

    private (SoilReading Reading, double Value)? Value(RatingScale scale)
    {
        if (scale.Unit is { } unit)
        {
            return ReportReadings.Find(Report, scale.Analyte, scale.Extractants, unit);
        }

        return
            ReportReadings.Find(Report, scale.Analyte, scale.Extractants, SoilTestUnit.PartsPerMillion) is { } manganese
            && Report.WaterPh is { } ph
            ? (manganese.Reading, ManganeseAvailability.NewJersey(manganese.Value, ph).Index)
            : null;
    }

    private bool? Holds(ScaleCondition condition) =>
        condition switch
        {
            ScaleCondition.CoastalPlain => Setting.Region is { } region ? region == SoilRegion.CoastalPlain : null,
            ScaleCondition.Piedmont => Setting.Region is { } region ? region == SoilRegion.Piedmont : null,
            ScaleCondition.FieldMoist => Setting.SampleMoisture is { } state ? state == SampleMoisture.FieldMoist : null,
            ScaleCondition.Dried => Setting.SampleMoisture is { } state ? state == SampleMoisture.Dried : null,
            ScaleCondition.CecUpToLimit => Cec is { } cec ? cec <= NutrientConstants.All["TS-2020-K-cec-limit"] : null,
            ScaleCondition.CecAboveLimit => Cec is { } cec ? cec > NutrientConstants.All["TS-2020-K-cec-limit"] : null,
            ScaleCondition.Loamy => IsSandyOrOrganic is { } sandy ? !sandy : null,
            ScaleCondition.Sandy => IsSandyOrOrganic,
            _ => true,
        };

    private double? Cec => new SystemQuestion(Report, CropUse.Browsed(CropRow.Forage), Setting).CecPer100Grams;

    private bool? IsSandyOrOrganic =>
        (Setting.SoilClass ?? Report.SoilClass) is SoilClass.Organic ? true
        : Report.Texture is { } texture ? texture is SoilTexture.Sand or SoilTexture.LoamySand
        : null;

    private static string Question(ScaleCondition condition) =>
        condition switch
        {
            ScaleCondition.CoastalPlain or ScaleCondition.Piedmont => "its limits differ by region, and none was named",
            ScaleCondition.FieldMoist or ScaleCondition.Dried => "its limits differ for field-moist and dried samples",
            ScaleCondition.CecUpToLimit or ScaleCondition.CecAboveLimit =>
                "its limits differ by exchange capacity, which is not known",
            _ => "its limits differ by texture, which is not known",
        };
}
