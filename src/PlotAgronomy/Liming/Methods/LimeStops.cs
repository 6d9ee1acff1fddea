using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Where a method stops on its way to one target, as a check of doubles; what is not known is NaN.</summary>
/// <remarks>Many soils are checked at once, without a branch, in the same order as one.</remarks>
internal readonly struct LimeStops
{
    private static readonly ulong[] Itself = Array.ConvertAll(Enum.GetValues<LimeStop>(), stop => (ulong)stop);

    private readonly bool isItsSoil;
    private readonly bool isTargetOffered;
    private readonly bool needsWaterPh;
    private readonly LimeStop aboveHighest;
    private readonly double target;
    private readonly double nearEnough;
    private readonly double rateless;
    private readonly double lowestPh;
    private readonly double lowestWithoutPh;
    private readonly double lowest;
    private readonly double highest;

    internal LimeStops(LimeMethod method, SoilClass soilClass, double targetPh)
    {
        isItsSoil = method.Soils.Contains(soilClass);
        isTargetOffered = method.Formula.Offers(targetPh);
        needsWaterPh = method.Formula.NeedsWaterPh;
        aboveHighest = method.NoLimeAboveHighest ? LimeStop.AboveTable : LimeStop.ReadingOutside;
        target = targetPh;
        nearEnough = method.NoLimeWithinPh is { } margin ? margin - Tolerance.Dust : double.NegativeInfinity;
        rateless = method.OnlyBelowWaterPh ?? double.PositiveInfinity;
        (lowestPh, lowestWithoutPh) = method.Formula.Domain(targetPh);
        lowest = Tolerance.LowEdge(method.LowestReading);
        highest = Tolerance.HighEdge(method.HighestReading);
    }

    /// <summary>Where one soil stops.</summary>
    internal LimeStop Of(double waterPh, double reading) =>
        (LimeStop)Of(OneLane.Of(waterPh), OneLane.Of(reading), Itself).Bits;

    /// <summary>What soils come to: for each the bits that stand for its stop.</summary>
    /// <param name="waterPh">Water pH.</param>
    /// <param name="reading">Reading in the method's terms.</param>
    /// <param name="bits">Bits for each stop, in their order.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T Of<T>(T waterPh, T reading, ulong[] bits)
        where T : unmanaged, ILanes<T>
    {
        // The last check first: each one overrules those that come after it.
        var withoutPh = T.IsUnknown(waterPh);
        var found = At<T>(LimeStop.None, bits);
        found = T.When(reading > T.Of(highest), At<T>(aboveHighest, bits), found);
        found = T.When(reading < T.Of(lowest), At<T>(LimeStop.ReadingOutside, bits), found);
        var isOutsideFormula = (waterPh < T.Of(lowestPh)) | (withoutPh & (reading < T.Of(lowestWithoutPh)));
        found = T.When(isOutsideFormula, At<T>(LimeStop.Formula, bits), found);
        found = T.When(T.IsUnknown(reading), At<T>(LimeStop.ReadingMissing, bits), found);
        found = T.When(waterPh >= T.Of(rateless), At<T>(LimeStop.WaterPhTooHigh, bits), found);
        found = needsWaterPh ? T.When(withoutPh, At<T>(LimeStop.WaterPhMissing, bits), found) : found;
        found = isTargetOffered ? found : At<T>(LimeStop.Target, bits);
        found = T.When(T.Of(target) - waterPh < T.Of(nearEnough), At<T>(LimeStop.WithinMargin, bits), found);
        found = T.When(waterPh >= T.Of(target), At<T>(LimeStop.AtTarget, bits), found);
        return isItsSoil ? found : At<T>(LimeStop.Soil, bits);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T At<T>(LimeStop stop, ulong[] bits)
        where T : unmanaged, ILanes<T> => T.OfBits(bits[(int)stop]);
}
