using System.Runtime.CompilerServices;

namespace PlotAgronomy.Reference;

/// <summary>The <see cref="Tolerance"/> of many limits at once.</summary>
internal static class LaneTolerance
{
    /// <summary>The lowest and the highest value that still lie on each limit.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T Low, T High) Edges<T>(T limit)
        where T : unmanaged, ILanes<T>
    {
        var size = limit & T.OfBits(long.MaxValue);
        var dust = (size * T.Of(Tolerance.Dust)) & (size <= T.Of(double.MaxValue));
        return (limit - dust, limit + dust);
    }
}
