namespace PlotAgronomy.Blends;

/// <summary>Steps lacking in each season, held as one value.</summary>
internal readonly record struct SeasonSteps(ulong Packed)
{
    internal const int Seasons = 5;

    private const int Bits = 8;

    internal static SeasonSteps Of(ReadOnlySpan<int> steps)
    {
        ulong packed = 0;
        for (int s = 0; s < Seasons; s++)
        {
            packed |= (ulong)steps[s] << (Bits * s);
        }

        return new(packed);
    }

    internal int this[int season] => (int)(Packed >> (Bits * season)) & 0xFF;

    internal SeasonSteps After(int steps, int seasonMask)
    {
        ulong packed = 0;
        for (int s = 0; s < Seasons; s++)
        {
            int left = (seasonMask & (1 << s)) != 0 ? Math.Max(0, this[s] - steps) : this[s];
            packed |= (ulong)left << (Bits * s);
        }

        return new(packed);
    }
}
