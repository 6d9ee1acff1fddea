namespace PlotAgronomy.Fertilizers;

/// <summary>When a count of packages that comes out of floating arithmetic is a whole number.</summary>
internal static class WholeCount
{
    /// <summary>Part of a package that is arithmetic dust.</summary>
    internal const double Tolerance = 1e-7;
    private const double Nothing = 1e-9;

    /// <summary>The whole number below; a count within dust of the next one is that one.</summary>
    internal static double Below(double packages) => packages <= Nothing ? 0 : Math.Floor(packages + DustAt(packages));

    /// <summary>The smallest whole number of packages that holds the count.</summary>
    internal static double Above(double packages) => packages <= Nothing ? 0 : Math.Ceiling(packages - DustAt(packages));

    internal static bool IsWhole(double packages) =>
        packages - Below(packages) <= (packages < 1 ? Math.Max(Nothing, DustAt(packages)) : Tolerance);

    /// <summary>Dust shrinks with the count, so that a trace of a nutrient is not rounded away.</summary>
    private static double DustAt(double packages) => Tolerance * Math.Min(1, Math.Abs(packages));
}
