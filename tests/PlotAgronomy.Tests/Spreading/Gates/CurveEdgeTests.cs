using MathNet.Numerics.Interpolation;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>The ends of a curve and of a power law.</summary>
public class CurveEdgeTests
{
    [Fact]
    public void A_curve_meets_its_knots_and_is_that_of_a_general_library_between()
    {
        double[] x = [1, 2, 4, 7], y = [10, 12, 20, 21];
        var curve = new MonotoneCurve(x, y);
        var library = CubicSpline.InterpolatePchip(x, y);
        Assert.All(x.Zip(y), knot => Assert.Equal(knot.Second, curve.At(knot.First), 1e-12));
        for (double at = 1; at < 7; at += 0.25)
        {
            Assert.Equal(library.Interpolate(at), curve.At(at), 1e-12);
            Assert.Equal(at, curve.ArgumentOf(curve.At(at)), 1e-9);
        }
    }

    [Fact]
    public void Both_ends_belong_to_the_curve_and_nothing_beyond_them_does()
    {
        var line = new MonotoneCurve([1, 3], [10, 20]);
        Assert.Equal((10, 20), (line.At(1), line.At(3)));
        Assert.Equal(3, line.ArgumentOf(20), 1e-12);
        Assert.Equal(1, line.ArgumentOf(10), 1e-12);
        Assert.Equal("argument", Assert.Throws<ArgumentOutOfRangeException>(() => line.At(3.001)).ParamName);
        Assert.Equal("value", Assert.Throws<ArgumentOutOfRangeException>(() => line.ArgumentOf(9.999)).ParamName);
        Assert.Equal("value", Assert.Throws<ArgumentOutOfRangeException>(() => line.ArgumentOf(double.NaN)).ParamName);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_knot_without_a_value_is_refused(double value) =>
        Assert.Throws<ArgumentException>(() => new MonotoneCurve([1, 2], [1, value]));

    [Fact]
    public void A_power_is_found_from_two_points_and_not_from_one()
    {
        // y = 3 x squared.
        var (factor, exponent) = PowerLaw.Fit([(1, 3), (2, 12), (4, 48)])!.Value;
        Assert.Equal((3, 2), (Math.Round(factor, 9, MidpointRounding.ToEven), Math.Round(exponent, 9, MidpointRounding.ToEven)));
        Assert.Equal(2, PowerLaw.Exponent([(1, 3), (2, 12)])!.Value, 1e-12);
        Assert.Null(PowerLaw.Exponent([(1, 3)]));
        Assert.Null(PowerLaw.Exponent([(1, 12), (2, 3)]));
    }
}
