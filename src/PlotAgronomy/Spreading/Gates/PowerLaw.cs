using MathNet.Numerics.LinearRegression;

namespace PlotAgronomy.Spreading;

/// <summary>y = a x^b, fitted as a straight line to the logarithms.</summary>
internal static class PowerLaw
{
    /// <summary>The exponent; null with fewer than two points or when the fit does not rise.</summary>
    internal static double? Exponent((double X, double Y)[] points) => Fit(points) is (_, > 0 and var exponent) ? exponent : null;

    /// <summary>The law through a point, at another argument.</summary>
    internal static double Value(double knownX, double knownY, double exponent, double x) =>
        knownY * Math.Pow(x / knownX, exponent);

    /// <summary>The argument at which the law through a point has a value.</summary>
    internal static double Argument(double knownX, double knownY, double exponent, double y) =>
        knownX * Math.Pow(y / knownY, 1 / exponent);

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
