using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What is known when a scale has to be picked: report, crop and setting.</summary>
internal sealed record ScaleFacts(PlotSoil Soil, CropRow? Crop)
{
    /// <summary>The exchange capacity that parts the two potassium levels of Tri-State 2020.</summary>
    private static readonly double CecLimit = NutrientConstants.All["TS-2020-K-cec-limit"];

    private enum Fit
    {
        TestMissing,
        CropUnnamed,
        OtherCrop,
        FactMissing,
        OtherSoil,
        Fits,
    }

    /// <summary>The first scale that fits; null when none does.</summary>
    internal RatingScale? Fitting(ImmutableArray<RatingScale> scales)
    {
        foreach (var scale in scales)
        {
            if (FitOf(scale) == Fit.Fits)
            {
                return scale;
            }
        }

        return null;
    }

    /// <summary>The first scale that fits, with the reading and its class; null when none does, or above the last
    /// class.</summary>
    internal (RatingScale Scale, RatingClass Class, SoilReading Reading, double Value)? Rate(ImmutableArray<RatingScale> scales)
    {
        if (Fitting(scales) is not { } scale)
        {
            return null;
        }

        var (reading, value) = Value(scale)!.Value;
        return scale.ClassOf(value) is { } rated ? (scale, rated, reading, value) : null;
    }

    /// <summary>Why there is no rating: the last thing that stood in the way.</summary>
    internal string WhyUnrated(ImmutableArray<RatingScale> scales)
    {
        var tests = scales.Select(s => $"{SoilWords.Or(s.Extractants)} in {s.UnitInWords}").Distinct();
        string reason = $"it was made for {string.Join(" or ", tests)}";
        foreach (var scale in scales)
        {
            switch (FitOf(scale))
            {
                case Fit.CropUnnamed:
                    reason = "its limits differ by crop, and no crop row was named";
                    break;
                case Fit.OtherCrop when !scales.Any(s => s.Crops.Contains(Crop!.Value)):
                    reason = $"it has no limits for {CropRows.WordsFor(Crop!.Value)}";
                    break;
                case Fit.FactMissing:
                    reason = Question(scale.Condition);
                    break;
                case Fit.Fits:
                    double value = Value(scale)!.Value.Value;
                    string where = value < 0 ? "below 0, where the first class begins" : "above the last class printed";
                    return $"{Amounts.Print(value, 4)} {scale.UnitInWords} lies {where}";
                default:
                    break;
            }
        }

        return reason;
    }

    private Fit FitOf(RatingScale scale) =>
        Value(scale) is null ? Fit.TestMissing
        : scale.Crops.Length > 0 && Crop is null ? Fit.CropUnnamed
        : scale.Crops.Length > 0 && !scale.Crops.Contains(Crop!.Value) ? Fit.OtherCrop
        : Holds(scale.Condition) switch
        {
            null => Fit.FactMissing,
            true => Fit.Fits,
            false => Fit.OtherSoil,
        };

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
            ScaleCondition.CoastalPlain => Soil.Region is { } region ? region == SoilRegion.CoastalPlain : null,
            ScaleCondition.Piedmont => Soil.Region is { } region ? region == SoilRegion.Piedmont : null,
            ScaleCondition.FieldMoist => Report.SampleMoisture is { } state ? state == SampleMoisture.FieldMoist : null,
            ScaleCondition.Dried => Report.SampleMoisture is { } state ? state == SampleMoisture.Dried : null,
            ScaleCondition.CecUpToLimit => Cec is { } cec ? cec <= CecLimit : null,
            ScaleCondition.CecAboveLimit => Cec is { } cec ? cec > CecLimit : null,
            ScaleCondition.Loamy => IsSandyOrOrganic is { } sandy ? !sandy : null,
            ScaleCondition.Sandy => IsSandyOrOrganic,
            _ => true,
        };

    private SoilReport Report => Soil.Report;

    private double? Cec => Soil.CapacityPer100Grams;

    private bool? IsSandyOrOrganic =>
        Soil.SoilClass is SoilClass.Organic ? true
        : Soil.Texture is { } texture ? texture is SoilTexture.Sand or SoilTexture.LoamySand
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
