namespace PlotAgronomy.Liming;

/// <summary>Where a method stops on its way to one target, as a check of doubles; what is not known is NaN.</summary>
internal readonly struct LimeStops
{
    private readonly bool isItsSoil;
    private readonly double target;
    private readonly double nearEnough;
    private readonly bool isTargetOffered;
    private readonly bool needsWaterPh;
    private readonly double rateless;
    private readonly double lowest;
    private readonly double highest;
    private readonly LimeStop aboveHighest;

    internal LimeStops(LimeMethod method, SoilClass soilClass, double targetPh)
    {
        isItsSoil = method.Soils.Contains(soilClass);
        target = targetPh;
        nearEnough = method.NoLimeWithinPh is { } margin ? margin - Tolerance.Dust : double.NegativeInfinity;
        isTargetOffered = method.Formula.Offers(targetPh);
        needsWaterPh = method.Formula.NeedsWaterPh;
        rateless = method.OnlyBelowWaterPh ?? double.PositiveInfinity;
        lowest = Tolerance.LowEdge(method.LowestReading);
        highest = Tolerance.HighEdge(method.HighestReading);
        aboveHighest = method.NoLimeAboveHighest ? LimeStop.AboveTable : LimeStop.ReadingOutside;
    }

    /// <summary>What needs no reading: the soil is none of the method's, or at its target, or near enough.</summary>
    internal LimeStop WithoutReading(double waterPh) =>
        !isItsSoil ? LimeStop.Soil
        : waterPh >= target ? LimeStop.AtTarget
        : target - waterPh < nearEnough ? LimeStop.WithinMargin
        : LimeStop.None;

    /// <param name="waterPh">Water pH.</param>
    /// <param name="reading">Reading in the method's terms.</param>
    /// <param name="holds">Whether the formula holds; not looked at where something it needs is missing.</param>
    internal LimeStop WithReading(double waterPh, double reading, bool holds) =>
        !isTargetOffered ? LimeStop.Target
        : needsWaterPh && double.IsNaN(waterPh) ? LimeStop.WaterPhMissing
        : waterPh >= rateless ? LimeStop.WaterPhTooHigh
        : double.IsNaN(reading) ? LimeStop.ReadingMissing
        : !holds ? LimeStop.Formula
        : reading < lowest ? LimeStop.ReadingOutside
        : reading > highest ? aboveHighest
        : LimeStop.None;
}
