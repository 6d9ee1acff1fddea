namespace PlotAgronomy.Reference;

/// <summary>Numbers side by side that go through a sum together: one, four, or eight, as many as the processor takes at once. A
/// sum is written once, for any of them, and gives each lane what it gives one number alone, bit for bit.</summary>
/// <remarks>A comparison gives a mask: all bits of a lane that it holds for, none of another. Where numbers stand for bits, such
/// as flags, they are never added or compared as numbers.</remarks>
internal interface ILanes<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>How many there are.</summary>
    static abstract int Count { get; }

    /// <summary>One number in every lane.</summary>
    static abstract T Of(double value);

    /// <summary>The same bits in every lane.</summary>
    static abstract T OfBits(ulong bits);

    static abstract T operator +(T left, T right);

    static abstract T operator -(T left, T right);

    static abstract T operator *(T left, T right);

    static abstract T operator /(T left, T right);

    static abstract T operator <(T left, T right);

    static abstract T operator >(T left, T right);

    static abstract T operator <=(T left, T right);

    static abstract T operator >=(T left, T right);

    static abstract T operator &(T left, T right);

    static abstract T operator |(T left, T right);

    static abstract T operator ~(T value);

    /// <summary>Moves the bits of each lane to the right.</summary>
    static abstract T operator >>>(T value, int bits);

    /// <summary>A mask of the lanes that are NaN: not known.</summary>
    static abstract T IsUnknown(T value);

    /// <summary>A mask of the lanes with the same bits.</summary>
    static abstract T HasBits(T value, T bits);

    /// <summary>Where the mask is set the one, elsewhere the other.</summary>
    static abstract T When(T mask, T then, T otherwise);

    /// <summary>The lesser of two numbers; neither is NaN.</summary>
    static abstract T Least(T left, T right);

    /// <summary>The whole part of numbers from 0, as places of a list.</summary>
    static abstract T Places(T value);

    /// <summary>Places, one further where the mask is set.</summary>
    static abstract T Next(T places, T mask);

    /// <summary>The numbers of a list at these places.</summary>
    static abstract T LookUp(in LookUp list, T places);

    /// <summary>A bit for each lane that a mask is set for, the first lane lowest.</summary>
    static abstract uint LanesSet(T mask);

    /// <summary>Writes the lowest byte of each lane.</summary>
    void CopyBytesTo(Span<byte> bytes);
}
