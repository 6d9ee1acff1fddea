using MathNet.Numerics.Interpolation;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Straight lines between printed points; expected values are hand algebra, or those of a general library.</summary>
public class PointNeedKernelTests
{
    private static readonly (double Test, double Rate)[] Nine =
        [(0, 200), (5, 170), (10, 120), (12, 110), (20, 80), (21, 60), (40, 30), (60, 10), (100, 0)];

    [Theory]
    [InlineData(0, 80)]
    [InlineData(5, 60)]
    [InlineData(10, 40)]
    [InlineData(15, 30)]
    [InlineData(20, 20)]
    [InlineData(20.1, 20)]
    [InlineData(500, 20)]
    public void Between_points_the_rate_lies_on_a_line_and_above_the_last_it_stays(double test, double rate) =>
        Assert.Equal(rate, new PointNeedKernel([(0, 80), (10, 40), (20, 20)]).Rate(test, double.NaN), 1e-9);

    [Fact]
    public void Nine_points_are_read_as_a_general_library_reads_them()
    {
        var kernel = new PointNeedKernel([.. Nine]);
        var line = LinearSpline.InterpolateSorted([.. Nine.Select(p => p.Test)], [.. Nine.Select(p => p.Rate)]);
        for (double test = 0; test <= 100; test += 0.25)
        {
            Assert.Equal(line.Interpolate(test), kernel.Rate(test, double.NaN), 1e-9);
        }
    }

    [Fact]
    public void One_point_is_one_rate() => Assert.Equal(45, new PointNeedKernel([(0, 45)]).Rate(12, double.NaN));

    [Fact]
    public void More_points_than_are_compared_at_once_are_refused_with_their_limit()
    {
        var refused = Assert.Throws<ArgumentException>(() => new PointNeedKernel([.. Nine, (120, 0)]));
        Assert.Equal("printed", refused.ParamName);
        Assert.StartsWith("Must be at most 9 points.", refused.Message, StringComparison.Ordinal);
    }
}
