namespace PlotAgronomy;

/// <summary>What two ways of the same sum may differ by. A value this close to a limit lies on it.</summary>
internal static class Tolerance
{
    /// <summary>Relative size of arithmetic dust.</summary>
    internal const double Dust = 1e-9;

    internal static bool IsAbove(double value, double limit) => value > HighEdge(limit);

    internal static bool IsBelow(double value, double limit) => value < LowEdge(limit);

    /// <summary>The highest value that still lies on a limit.</summary>
    internal static double HighEdge(double limit) => limit + DustOf(limit);

    /// <summary>The lowest value that still lies on a limit.</summary>
    internal static double LowEdge(double limit) => limit - DustOf(limit);

    internal static bool AreEqual(double a, double b) => a == b || Math.Abs(a - b) <= DustOf(Math.Max(Math.Abs(a), Math.Abs(b)));

    /// <summary>Largest whole number that is not above the value.</summary>
    internal static double Floor(double value) => Math.Floor(value + DustOf(value));

    /// <summary>Smallest whole number that is not below the value.</summary>
    internal static double Ceiling(double value) => Math.Ceiling(value - DustOf(value));

    private static double DustOf(double size) => double.IsFinite(size) ? Dust * Math.Abs(size) : 0;
}
