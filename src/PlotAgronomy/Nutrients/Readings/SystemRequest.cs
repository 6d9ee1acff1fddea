using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What a system is asked: report, crop and what else is known.</summary>
internal sealed record SystemRequest(SoilReport Report, CropUse Crop, PlotSetting Setting)
{
    /// <summary>Exchange capacity in meq/100 g: the setting's, else the one the report prints; null when neither is by
    /// weight.</summary>
    internal double? CecPer100Grams =>
        (Setting.ExchangeCapacity ?? Report.PrintedExchangeCapacity) switch
        {
            { Basis: CationChargeBasis.Per100Grams } charge => charge.Milliequivalents,
            { } charge when Report.WeightPerVolume is { } density => charge.ByWeight(density).Milliequivalents,
            _ => null,
        };

    internal SoilClass? SoilClass => Setting.SoilClass ?? Report.SoilClass;
}
