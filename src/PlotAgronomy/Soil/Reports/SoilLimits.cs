using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>The limits of what a soil can be, checked once at the edge.</summary>
internal static class SoilLimits
{
    /// <summary>Most a soil can hold, in meq/100 g.</summary>
    internal static double HighestExchangeCapacity { get; } = SoilConstants.All["largest-exchange-capacity"];

    internal static Density WeightPerVolume(Density density, string name)
    {
        double gramsPerCubicCentimeter = density.GramsPerCubicCentimeter;
        Guard.AboveUpTo(gramsPerCubicCentimeter, 0, SoilConstants.All["densest-soil"], "g/cm3", name);
        return density;
    }

    internal static CationCharge ExchangeCapacity(CationCharge capacity, string name)
    {
        Guard.Between(capacity.Milliequivalents, 0, HighestExchangeCapacity, "meq", name);
        return capacity;
    }
}
