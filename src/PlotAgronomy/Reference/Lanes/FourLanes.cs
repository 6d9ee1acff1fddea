using System.Runtime.Intrinsics;

namespace PlotAgronomy.Reference;

/// <summary>Four numbers.</summary>
internal readonly struct FourLanes(Vector256<double> numbers) : ILanes<FourLanes>
{
    private readonly Vector256<double> numbers = numbers;

    private FourLanes(Vector256<ulong> bits)
        : this(bits.AsDouble()) { }

    public static int Count => Vector256<double>.Count;

    private Vector256<ulong> Bits => numbers.AsUInt64();

    public static FourLanes Of(double value) => new(Vector256.Create(value));

    public static FourLanes OfBits(ulong bits) => new(Vector256.Create(bits));

    public static FourLanes operator +(FourLanes left, FourLanes right) => new(left.numbers + right.numbers);

    public static FourLanes operator -(FourLanes left, FourLanes right) => new(left.numbers - right.numbers);

    public static FourLanes operator *(FourLanes left, FourLanes right) => new(left.numbers * right.numbers);

    public static FourLanes operator /(FourLanes left, FourLanes right) => new(left.numbers / right.numbers);

    public static FourLanes operator <(FourLanes left, FourLanes right) =>
        new(Vector256.LessThan(left.numbers, right.numbers));

    public static FourLanes operator >(FourLanes left, FourLanes right) =>
        new(Vector256.GreaterThan(left.numbers, right.numbers));

    public static FourLanes operator <=(FourLanes left, FourLanes right) =>
        new(Vector256.LessThanOrEqual(left.numbers, right.numbers));

    public static FourLanes operator >=(FourLanes left, FourLanes right) =>
        new(Vector256.GreaterThanOrEqual(left.numbers, right.numbers));

    public static FourLanes operator &(FourLanes left, FourLanes right) => new(left.numbers & right.numbers);

    public static FourLanes operator |(FourLanes left, FourLanes right) => new(left.numbers | right.numbers);

    public static FourLanes operator ~(FourLanes value) => new(~value.numbers);

    public static FourLanes operator >>>(FourLanes value, int bits) => new(value.Bits >>> bits);

    public static FourLanes IsUnknown(FourLanes value) => new(~Vector256.Equals(value.numbers, value.numbers));

    public static FourLanes HasBits(FourLanes value, FourLanes bits) => new(Vector256.Equals(value.Bits, bits.Bits));

    public static FourLanes When(FourLanes mask, FourLanes then, FourLanes otherwise) =>
        new(Vector256.ConditionalSelect(mask.numbers, then.numbers, otherwise.numbers));

    public static FourLanes Least(FourLanes left, FourLanes right) =>
        new(Vector256.MinNative(left.numbers, right.numbers));

    /// <summary>In the sum with 2^52 a whole number stands in the lowest bits: without a conversion, which few processors
    /// have.</summary>
    public static FourLanes Places(FourLanes value)
    {
        var shift = Vector256.Create((double)(1UL << 52));
        return new((Vector256.Floor(value.numbers) + shift).AsUInt64() - shift.AsUInt64());
    }

    public static FourLanes Next(FourLanes places, FourLanes mask) => new(places.Bits - mask.Bits);

    public static FourLanes LookUp(in LookUp list, FourLanes places) =>
        new(
            Vector256.Create(
                list.At(places.Bits.GetElement(0)),
                list.At(places.Bits.GetElement(1)),
                list.At(places.Bits.GetElement(2)),
                list.At(places.Bits.GetElement(3))
            )
        );

    public static uint LanesSet(FourLanes mask) => (uint)mask.numbers.ExtractMostSignificantBits();

    public void CopyBytesTo(Span<byte> bytes)
    {
        for (int lane = 0; lane < Count; lane++)
        {
            bytes[lane] = (byte)Bits.GetElement(lane);
        }
    }
}
