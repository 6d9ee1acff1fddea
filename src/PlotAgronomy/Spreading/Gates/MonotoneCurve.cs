using MathNet.Numerics.Interpolation;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>A smooth curve through points that never overshoots them; straight lines are in
/// <see cref="Interpolation"/>.</summary>
/// <remarks>Piecewise cubic Hermite whose inner slopes are the weighted harmonic mean of the neighbouring secants (SPREAD-S37):
/// the one door to the numeric library's interpolation. It checks its knots, and refuses every argument outside them: it never
/// extrapolates.</remarks>
internal sealed class MonotoneCurve
{
    private const int Halvings = 200;

    private readonly double[] x;
    private readonly double[] y;
    private readonly bool isRising;
    private readonly CubicSpline? spline;

    /// <param name="x">Knots, strictly rising, at least two.</param>
    /// <param name="y">Values at the knots.</param>
    internal MonotoneCurve(double[] x, double[] y)
    {
        if (x.Length != y.Length || x.Length < 2)
        {
            throw new ArgumentException("A curve needs at least two knots, each with one value.", nameof(x));
        }

        for (int i = 0; i < x.Length; i++)
        {
            if (!double.IsFinite(x[i]) || !double.IsFinite(y[i]) || (i > 0 && !(x[i] > x[i - 1])))
            {
                throw new ArgumentException("Knots must be finite and strictly rising.", nameof(x));
            }
        }

        this.x = [.. x];
        this.y = [.. y];
        isRising = y.Zip(y.Skip(1)).All(pair => pair.First < pair.Second);
        spline = x.Length > 2 ? CubicSpline.InterpolatePchipSorted(this.x, this.y) : null;
    }

    /// <exception cref="ArgumentOutOfRangeException">The argument lies outside the knots.</exception>
    internal double At(double argument)
    {
        if (!(argument >= x[0] && argument <= x[^1]))
        {
            throw new ArgumentOutOfRangeException(nameof(argument), argument, "Outside the knots of the curve.");
        }

        return argument == x[^1] ? y[^1]
            : spline is { } curve ? curve.Interpolate(argument)
            : Interpolation.Line(x[0], y[0], x[1], y[1], argument);
    }

    /// <summary>Argument of a value on a rising curve.</summary>
    /// <exception cref="InvalidOperationException">The values at the knots do not rise strictly.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value lies outside those of the knots.</exception>
    internal double ArgumentOf(double value)
    {
        if (!isRising)
        {
            throw new InvalidOperationException("Only a curve whose values rise strictly can be read backwards.");
        }

        if (!(value >= y[0] && value <= y[^1]))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "Outside the values of the curve.");
        }

        double low = x[0];
        double high = x[^1];
        for (int i = 0; i < Halvings && low < high; i++)
        {
            double middle = low + ((high - low) / 2);
            if (middle == low || middle == high)
            {
                break;
            }

            (low, high) = At(middle) < value ? (middle, high) : (low, middle);
        }

        return high;
    }
}
