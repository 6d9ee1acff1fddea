using System.Buffers.Binary;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace PlotAgronomy.Reference;

/// <summary>Eight numbers.</summary>
internal readonly struct EightLanes(Vector512<double> numbers) : ILanes<EightLanes>
{
    private readonly Vector512<double> numbers = numbers;

    private EightLanes(Vector512<ulong> bits)
        : this(bits.AsDouble()) { }

    public static int Count => Vector512<double>.Count;

    private Vector512<ulong> Bits => numbers.AsUInt64();

    public static EightLanes Of(double value) => new(Vector512.Create(value));

    public static EightLanes OfBits(ulong bits) => new(Vector512.Create(bits));

    public static EightLanes operator +(EightLanes left, EightLanes right) => new(left.numbers + right.numbers);

    public static EightLanes operator -(EightLanes left, EightLanes right) => new(left.numbers - right.numbers);

    public static EightLanes operator *(EightLanes left, EightLanes right) => new(left.numbers * right.numbers);

    public static EightLanes operator /(EightLanes left, EightLanes right) => new(left.numbers / right.numbers);

    public static EightLanes operator <(EightLanes left, EightLanes right) =>
        new(Vector512.LessThan(left.numbers, right.numbers));

    public static EightLanes operator >(EightLanes left, EightLanes right) =>
        new(Vector512.GreaterThan(left.numbers, right.numbers));

    public static EightLanes operator <=(EightLanes left, EightLanes right) =>
        new(Vector512.LessThanOrEqual(left.numbers, right.numbers));

    public static EightLanes operator >=(EightLanes left, EightLanes right) =>
        new(Vector512.GreaterThanOrEqual(left.numbers, right.numbers));

    public static EightLanes operator &(EightLanes left, EightLanes right) => new(left.numbers & right.numbers);

    public static EightLanes operator |(EightLanes left, EightLanes right) => new(left.numbers | right.numbers);

    public static EightLanes operator ~(EightLanes value) => new(~value.numbers);

    public static EightLanes operator >>>(EightLanes value, int bits) => new(value.Bits >>> bits);

    public static EightLanes IsUnknown(EightLanes value) => new(~Vector512.Equals(value.numbers, value.numbers));

    public static EightLanes HasBits(EightLanes value, EightLanes bits) =>
        new(Vector512.Equals(value.Bits, bits.Bits));

    public static EightLanes When(EightLanes mask, EightLanes then, EightLanes otherwise) =>
        new(Vector512.ConditionalSelect(mask.numbers, then.numbers, otherwise.numbers));

    public static EightLanes Least(EightLanes left, EightLanes right) =>
        new(Vector512.MinNative(left.numbers, right.numbers));

    public static EightLanes Places(EightLanes value) =>
        new(Vector512.ConvertToInt64Native(value.numbers).AsUInt64());

    public static EightLanes Next(EightLanes places, EightLanes mask) => new(places.Bits - mask.Bits);

    public static EightLanes LookUp(in LookUp list, EightLanes places) => new(list.At(places.Bits));

    public static uint LanesSet(EightLanes mask) => (uint)mask.numbers.ExtractMostSignificantBits();

    public void CopyBytesTo(Span<byte> bytes)
    {
        if (Avx512F.IsSupported)
        {
            BinaryPrimitives.WriteUInt64LittleEndian(bytes, Avx512F.ConvertToVector128Byte(Bits).AsUInt64().ToScalar());
            return;
        }

        for (int lane = 0; lane < Count; lane++)
        {
            bytes[lane] = (byte)Bits.GetElement(lane);
        }
    }
}
