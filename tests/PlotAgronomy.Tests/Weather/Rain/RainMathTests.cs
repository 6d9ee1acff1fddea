using PlotAgronomy.Weather;

namespace PlotAgronomy.Tests.Weather;

/// <summary>Chances of rain: closed forms of the exponential, and of gammas of shape 2 and 3.</summary>
public class RainMathTests
{
    [Theory]
    [InlineData(0, 5)]
    [InlineData(-0.1, 5)]
    [InlineData(0.5, 0)]
    [InlineData(0.5, -1)]
    public void Without_a_chance_or_an_amount_there_is_no_rain(double chance, double amount)
    {
        Assert.Equal(0, RainMath.AtLeast(RainShape.Patchy, chance, 1, amount));
        Assert.Equal(0, RainMath.AtLeast(RainShape.General, chance, 1, amount));
        Assert.Equal(0, RainMath.AtLeast(RainShape.Patchy, [(chance, amount)], 1), 1e-12);
    }

    [Fact]
    public void One_period_alone_has_the_chance_of_its_curve()
    {
        // 4 mm with 0.8: 5 mm if it rains; 0.8 exp(-1) of 5 mm; of shape 3, y = 3: 0.8 exp(-3) (1 + 3 + 4.5).
        Assert.Equal(0.8 * Math.Exp(-1), RainMath.AtLeast(RainShape.Patchy, 0.8, 5, 4), 1e-12);
        Assert.Equal(0.8 * Math.Exp(-3) * 8.5, RainMath.AtLeast(RainShape.General, 0.8, 5, 4), 1e-12);
        Assert.Equal(0.8 * Math.Exp(-1), RainMath.AtLeast(RainShape.Patchy, [(0.8, 4)], 5), 1e-6);
    }

    [Fact]
    public void Two_periods_sure_of_rain_add_up_to_a_gamma_of_shape_two()
    {
        // Each 5 mm on the mean: exp(-x / 5) (1 + x / 5).
        foreach (double atLeast in new[] { 2.0, 10, 25 })
        {
            Assert.Equal(
                Math.Exp(-atLeast / 5) * (1 + (atLeast / 5)),
                RainMath.AtLeast(RainShape.Patchy, [(1, 5), (1, 5)], atLeast),
                1e-4
            );
        }

        Assert.Equal(
            RainMath.AtLeast(RainShape.Patchy, [(1, 5), (1, 5)], 10),
            RainMath.AtLeast(RainShape.Patchy, [(1, 5), (0, 5), (1, 5), (0.3, 0)], 10),
            1e-12
        );
    }

    [Fact]
    public void Two_periods_with_half_a_chance_are_four_cases()
    {
        // Both 1/4, one 2/4: 0.25 exp(-2) (1 + 2) + 0.5 exp(-2), of 10 mm with 5 mm if it rains.
        Assert.Equal(
            (0.75 * Math.Exp(-2)) + (0.5 * Math.Exp(-2)),
            RainMath.AtLeast(RainShape.Patchy, [(0.5, 2.5), (0.5, 2.5)], 10),
            1e-4
        );
    }

    [Theory]
    [InlineData(0.3, 0.4, 0.4, 0.58, 0.7)]
    [InlineData(0.8, 0.4, 0.8, 0.88, 1)]
    public void Periods_are_joined_three_ways(double one, double other, double strongest, double independent, double sum)
    {
        Assert.Equal(strongest, RainMath.StrongestPeriod(one, other));
        Assert.Equal(independent, RainMath.IndependentPeriods(one, other), 1e-12);
        Assert.Equal(sum, RainMath.SumOfPeriods(one, other), 1e-12);
    }
}
