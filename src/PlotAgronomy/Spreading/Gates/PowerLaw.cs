using MathNet.Numerics.LinearRegression;

namespace PlotAgronomy.Spreading;

/// <summary>y = a x^b, fitted as a straight line to the logarithms.</summary>
internal static class PowerLaw
{
    /// <summary>The exponent; null with fewer than two points or when the fit does not rise.</summary>
    internal static double? Exponent((double X, double Y)[] points) => Fit(points) is (_, > 0 and var exponent) ? exponent : null;

    internal static (double Factor, double Exponent)? Fit((double X, double Y)[] points)
    {
        if (points.Length < 2)
        {
            return null;
        }

        var (intercept, slope) = SimpleRegression.Fit(
            [.. points.Select(p => Math.Log(p.X))],
            [.. points.Select(p => Math.Log(p.Y))]
        );
        return (Math.Exp(intercept), slope);
    }
}
