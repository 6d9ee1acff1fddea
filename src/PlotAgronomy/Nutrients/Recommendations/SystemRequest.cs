namespace PlotAgronomy.Nutrients;

/// <summary>What a system is asked: the soil and the crop; with what the table says of the system.</summary>
internal sealed record SystemRequest(SystemRecord System, PlotSoil Soil, CropUse Crop)
{
    private static readonly double OrganicFrom = NutrientConstants.All["organic-soil-from"];

    internal SoilReport Report => Soil.Report;

    /// <summary>Exchange capacity in meq/100 g; null when it is not known by weight.</summary>
    internal double? CecPer100Grams => Soil.CapacityPer100Grams;

    internal SoilClass? SoilClass => Soil.SoilClass ?? (IsOrganic(Soil) ? PlotAgronomy.SoilClass.Organic : null);

    /// <summary>Muck or peat: so called, or by its organic matter where nobody names the class.</summary>
    internal static bool IsOrganic(PlotSoil soil) =>
        soil.SoilClass is { } known
            ? known == PlotAgronomy.SoilClass.Organic
            : soil.Report.OrganicMatter?.Percent > OrganicFrom;
}
