namespace PlotAgronomy.Tests.Root;

public class FractionTests
{
    [Theory]
    [InlineData(-0.0001)]
    [InlineData(1.0001)]
    [InlineData(90)]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void A_value_outside_the_whole_throws(double value) => Assert.Throws<ArgumentOutOfRangeException>(() => Fraction.FromValue(value));

    [Theory]
    [InlineData(-0.0001)]
    [InlineData(100.0001)]
    [InlineData(double.NaN)]
    public void A_percentage_outside_the_whole_throws(double percent) => Assert.Throws<ArgumentOutOfRangeException>(() => Fraction.FromPercent(percent));

    [Fact]
    public void The_limits_are_allowed_and_the_default_is_zero()
    {
        Assert.Equal(Fraction.Zero, Fraction.FromValue(0));
        Assert.Equal(Fraction.One, Fraction.FromPercent(100));
        Assert.Equal(default, Fraction.Zero);
        Assert.True(Fraction.FromPercent(90) == Fraction.FromValue(0.9));
    }
}
