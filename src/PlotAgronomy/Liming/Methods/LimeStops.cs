using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace PlotAgronomy.Liming;

/// <summary>Where a method stops on its way to one target, as a check of doubles; what is not known is NaN.</summary>
/// <remarks>Four soils are checked at once, without a branch; one soil is checked as four alike. So there is one order of the
/// checks.</remarks>
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
        (LimeStop)Of(Vector256.Create(waterPh), Vector256.Create(reading), Itself).ToScalar();

    /// <summary>What four soils come to: for each the number that stands for its stop.</summary>
    /// <param name="waterPh">Water pH.</param>
    /// <param name="reading">Reading in the method's terms.</param>
    /// <param name="numbers">A number for each stop, in their order.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector256<ulong> Of(Vector256<double> waterPh, Vector256<double> reading, ReadOnlySpan<ulong> numbers)
    {
        // The last check first: each one overrules those that come after it.
        var withoutPh = ~Vector256.Equals(waterPh, waterPh);
        var found = Vector256.Create(numbers[(int)LimeStop.None]);
        found = When(Vector256.GreaterThan(reading, Vector256.Create(highest)), numbers[(int)aboveHighest], found);
        found = When(Vector256.LessThan(reading, Vector256.Create(lowest)), numbers[(int)LimeStop.ReadingOutside], found);
        found = When(OutsideFormula(waterPh, reading, withoutPh), numbers[(int)LimeStop.Formula], found);
        found = When(~Vector256.Equals(reading, reading), numbers[(int)LimeStop.ReadingMissing], found);
        found = When(
            Vector256.GreaterThanOrEqual(waterPh, Vector256.Create(rateless)),
            numbers[(int)LimeStop.WaterPhTooHigh],
            found
        );
        found = needsWaterPh ? When(withoutPh, numbers[(int)LimeStop.WaterPhMissing], found) : found;
        found = isTargetOffered ? found : Vector256.Create(numbers[(int)LimeStop.Target]);
        var aim = Vector256.Create(target);
        found = When(
            Vector256.LessThan(aim - waterPh, Vector256.Create(nearEnough)),
            numbers[(int)LimeStop.WithinMargin],
            found
        );
        found = When(Vector256.GreaterThanOrEqual(waterPh, aim), numbers[(int)LimeStop.AtTarget], found);
        return isItsSoil ? found : Vector256.Create(numbers[(int)LimeStop.Soil]);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> OutsideFormula(
        Vector256<double> waterPh,
        Vector256<double> reading,
        Vector256<double> withoutPh
    ) =>
        Vector256.LessThan(waterPh, Vector256.Create(lowestPh))
        | (withoutPh & Vector256.LessThan(reading, Vector256.Create(lowestWithoutPh)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<ulong> When(Vector256<double> mask, ulong number, Vector256<ulong> otherwise) =>
        Vector256.ConditionalSelect(mask.AsUInt64(), Vector256.Create(number), otherwise);
}
