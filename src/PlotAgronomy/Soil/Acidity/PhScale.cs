using System.Runtime.CompilerServices;

namespace PlotAgronomy.Soil;

/// <summary>What a pH can be at all.</summary>
internal static class PhScale
{
    /// <summary>Where the scale ends; it begins above 0.</summary>
    internal const double Highest = 14;

    internal static double Check(double ph, [CallerArgumentExpression(nameof(ph))] string? name = null) =>
        Guard.AboveUpTo(ph, 0, Highest, "pH", name);
}
