namespace PlotAgronomy.Tests.Support;

/// <summary>Comparison for laws of algebra.</summary>
internal static class Near
{
    internal static bool Equal(double a, double b, double relative = 1e-12) =>
        Math.Abs(a - b) <= relative * Math.Max(1e-300, Math.Max(Math.Abs(a), Math.Abs(b)));

    internal static void Assert(double expected, double actual, double relative = 1e-12) =>
        Xunit.Assert.True(Equal(expected, actual, relative), $"expected {expected:R}, got {actual:R}");
}
