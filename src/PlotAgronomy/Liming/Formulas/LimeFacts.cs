using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>What lime methods read out of a soil.</summary>
internal static class LimeFacts
{
    extension(CropKind kind)
    {
        /// <summary>The lowest pH the kind stands on this soil; null when none is known. The kinds' figures are of mineral soil;
        /// on
        /// organic soil, which holds less aluminum, a lower pH does (common practice).</summary>
        internal double? LowestPhOn(PlotSoil soil) =>
            kind.Ph is not { } range
                ? null
                : range.MinimumPh
                    - soil.Class switch
                    {
                        SoilClass.Organic => LimingConstants.All["organic-limit-lower"],
                        SoilClass.MineralOrganic => LimingConstants.All["mineral-organic-limit-lower"],
                        _ => 0,
                    };

        /// <summary>Whether the soil of today is too sour for the kind.</summary>
        internal bool IsTooSourOn(PlotSoil soil) =>
            kind.LowestPhOn(soil) is { } lowest && soil.PhInWater is { } ph && Tolerance.IsBelow(ph, lowest);
    }

    extension(PlotSoil soil)
    {
        internal double? PhInWater => soil.WaterPh?.Value;

        /// <summary>The class stated; else organic above 20 % organic matter (LIME-S1), else mineral.</summary>
        internal SoilClass Class =>
            soil.SoilClass
            ?? (soil.Report.OrganicMatter?.Percent > SoilConstants.All["organic-from"] ? SoilClass.Organic : SoilClass.Mineral);

        internal double? AcidityPer100Grams =>
            soil.Report.ExchangeableAcidity switch
            {
                { Basis: CationChargeBasis.Per100Grams } acidity => acidity.Milliequivalents,
                { } acidity when soil.WeightPerVolume is { } weight => acidity.ByWeight(weight).Milliequivalents,
                _ => null,
            };

        internal double? AcidityPer100CubicCentimeters =>
            soil.Report.ExchangeableAcidity is { Basis: CationChargeBasis.Per100CubicCentimeters } acidity
                ? acidity.Milliequivalents
                : null;

        /// <summary>Low CEC; without a CEC on the report, sand and loamy sand (common practice).</summary>
        internal bool IsWeaklyBuffered =>
            soil.Capacity is { } capacity
                ? capacity < LimingConstants.All["weak-cec-limit"]
                : soil.Texture is SoilTexture.Sand or SoilTexture.LoamySand;

        /// <summary>By weight; a CEC by volume without its weight is taken as it stands, a scoop weighing about 1 g/cm3 (common
        /// practice).</summary>
        internal double? Capacity => soil.CapacityPer100Grams ?? soil.ExchangeCapacity?.Milliequivalents;

        internal double? AluminumPpm =>
            soil.Report.Find(SoilAnalyte.Aluminum) is { Unit: SoilTestUnit.PartsPerMillion } reading
                ? reading.PrintedValue
                : null;
    }
}
