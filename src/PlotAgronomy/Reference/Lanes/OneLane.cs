namespace PlotAgronomy.Reference;

/// <summary>One number alone.</summary>
internal readonly record struct OneLane(double Value) : ILanes<OneLane>
{
    public static int Count => 1;

    /// <summary>The number as bits, also a mask or flags.</summary>
    internal ulong Bits => BitConverter.DoubleToUInt64Bits(Value);

    public static OneLane Of(double value) => new(value);

    public static OneLane OfBits(ulong bits) => new(BitConverter.UInt64BitsToDouble(bits));

    public static OneLane operator +(OneLane left, OneLane right) => new(left.Value + right.Value);

    public static OneLane operator -(OneLane left, OneLane right) => new(left.Value - right.Value);

    public static OneLane operator *(OneLane left, OneLane right) => new(left.Value * right.Value);

    public static OneLane operator /(OneLane left, OneLane right) => new(left.Value / right.Value);

    public static OneLane operator <(OneLane left, OneLane right) => Mask(left.Value < right.Value);

    public static OneLane operator >(OneLane left, OneLane right) => Mask(left.Value > right.Value);

    public static OneLane operator <=(OneLane left, OneLane right) => Mask(left.Value <= right.Value);

    public static OneLane operator >=(OneLane left, OneLane right) => Mask(left.Value >= right.Value);

    public static OneLane operator &(OneLane left, OneLane right) => OfBits(left.Bits & right.Bits);

    public static OneLane operator |(OneLane left, OneLane right) => OfBits(left.Bits | right.Bits);

    public static OneLane operator ~(OneLane value) => OfBits(~value.Bits);

    public static OneLane operator >>>(OneLane value, int bits) => OfBits(value.Bits >>> bits);

    public static OneLane IsUnknown(OneLane value) => Mask(double.IsNaN(value.Value));

    public static OneLane HasBits(OneLane value, OneLane bits) => Mask(value.Bits == bits.Bits);

    public static OneLane When(OneLane mask, OneLane then, OneLane otherwise) => mask.Bits != 0 ? then : otherwise;

    public static OneLane Least(OneLane left, OneLane right) => left.Value < right.Value ? left : right;

    public static OneLane Places(OneLane value) => OfBits((ulong)value.Value);

    public static OneLane Next(OneLane places, OneLane mask) => OfBits(places.Bits - mask.Bits);

    public static OneLane LookUp(in LookUp list, OneLane places) => new(list.At(places.Bits));

    public static uint LanesSet(OneLane mask) => (uint)mask.Bits & 1;

    public void CopyBytesTo(Span<byte> bytes) => bytes[0] = (byte)Bits;

    private static OneLane Mask(bool holds) => OfBits(holds ? ulong.MaxValue : 0);
}
