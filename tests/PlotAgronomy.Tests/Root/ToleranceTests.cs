namespace PlotAgronomy.Tests.Root;

/// <summary>The limits of the one tolerance: algebra, with 1e-9 of the limit as dust.</summary>
public class ToleranceTests
{
    [Theory]
    [InlineData(1, 1, false), InlineData(1 + 1e-10, 1, false), InlineData(1 + 2e-9, 1, true), InlineData(-1, -1 - 2e-9, true)]
    [InlineData(double.PositiveInfinity, 5, true), InlineData(5, double.PositiveInfinity, false), InlineData(0, 0, false)]
    public void A_value_is_above_a_limit_only_by_more_than_dust(double value, double limit, bool above) =>
        Assert.Equal(above, Tolerance.IsAbove(value, limit));

    [Theory]
    [InlineData(1, 1, false), InlineData(1 - 1e-10, 1, false), InlineData(1 - 2e-9, 1, true), InlineData(5, double.PositiveInfinity, true)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity, false)]
    public void A_value_is_below_a_limit_only_by_more_than_dust(double value, double limit, bool below) =>
        Assert.Equal(below, Tolerance.IsBelow(value, limit));

    [Theory]
    [InlineData(0.1 + 0.2, 0.3, true), InlineData(1, 1 + 2e-9, false), InlineData(0, 0, true)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity, true), InlineData(double.PositiveInfinity, 1, false)]
    public void Two_values_are_equal_within_dust(double a, double b, bool equal) => Assert.Equal(equal, Tolerance.AreEqual(a, b));

    [Fact]
    public void A_whole_number_with_dust_is_that_number()
    {
        Assert.Equal(3, Tolerance.Floor(3 - 1e-10));
        Assert.Equal(3, Tolerance.Ceiling(3 + 1e-10));
        Assert.Equal(2, Tolerance.Floor(2.9));
        Assert.Equal(3, Tolerance.Ceiling(2.1));
    }
}
