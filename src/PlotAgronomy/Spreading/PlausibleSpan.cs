using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>Between what a figure of a spreader lies.</summary>
internal readonly struct PlausibleSpan
{
    private readonly double least;
    private readonly double most;
    private readonly double lowEdge;
    private readonly double highEdge;

    internal PlausibleSpan(string what, string? leastId, string mostId, string unit)
    {
        least = leastId is null ? 0 : SpreadingConstants.All[leastId];
        most = SpreadingConstants.All[mostId];
        lowEdge = Tolerance.LowEdge(least);
        highEdge = Tolerance.HighEdge(most);
        What = what;
        Unit = unit;
    }

    internal string What { get; }

    internal string Unit { get; }

    internal string InWords => $"{Amounts.Print(least, 2)} to {Amounts.Print(most, 0)} {Unit}";

    internal bool Holds(double value) => value >= lowEdge && value <= highEdge;

    /// <summary>The same of several at once, as a mask.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T Holds<T>(T value)
        where T : unmanaged, ILanes<T> => (value >= T.Of(lowEdge)) & (value <= T.Of(highEdge));
}
