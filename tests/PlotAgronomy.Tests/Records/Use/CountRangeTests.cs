using MathNet.Numerics.Distributions;
using PlotAgronomy.Records;

namespace PlotAgronomy.Tests.Records;

/// <summary>The ranges of counts and of browse, against hand algebra and a general library's distributions.</summary>
public class CountRangeTests
{
    [Fact]
    public void The_margin_of_browse_is_two_standard_errors_of_the_classes()
    {
        // Mean 31.8 %; the squares off it sum to 24,338 over 50 plants: 1.96 x root(24338 / 49 / 50).
        Assert.Equal(1.96 * Math.Sqrt(24338.0 / 49 / 50), BrowseMath.Margin([5, 10, 20, 10, 3, 2]), 1e-9);
        Assert.Equal(0, BrowseMath.Margin([0, 2, 0, 0, 0, 0]), 1e-12);
        Assert.Equal(100, BrowseMath.Margin([0, 1, 0, 0, 0, 0]));
    }

    [Fact]
    public void Hoops_alike_have_the_exact_range_of_all_their_plants()
    {
        // Exact range of 20 plants: 12.217 to 30.888, over two hoops half of it; of none: 0 to 3.689.
        var (low, high) = CountInterval.OfMean([10, 10]);
        Assert.Equal(12.217 / 2, low, 1e-3);
        Assert.Equal(30.888 / 2, high, 1e-3);
        (low, high) = CountInterval.OfMean([0, 0, 0]);
        Assert.Equal(0, low);
        Assert.Equal(3.689 / 3, high, 1e-3);
    }

    [Fact]
    public void Hoops_that_differ_by_more_than_chance_widen_the_range()
    {
        // Mean 12, variance 160 / 4 = 40: 3.333 times that of chance, and (2.776 / 1.960) squared for five hoops.
        double spread = 40 / 12.0 * Math.Pow(2.7764451 / 1.9599640, 2);
        var (low, high) = CountInterval.OfMean([4, 8, 12, 16, 20]);
        Assert.Equal(0.025, Gamma.CDF(60 / spread, 1, low * 5 / spread), 1e-6);
        Assert.Equal(0.975, Gamma.CDF((60 / spread) + 1, 1, high * 5 / spread), 1e-6);
    }
}
