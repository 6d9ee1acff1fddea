using PlotAgronomy.Weather;

namespace PlotAgronomy.Tests.Weather;

/// <summary>The drying surface layer of FAO-56 and the thermal time of a seed, on and beside their limits; sums by
/// hand.</summary>
public class WetAndWarmTests
{
    [Theory]
    [InlineData(0, 1)]
    [InlineData(8, 1)]
    [InlineData(14, 0.5)] // (20 - 14) / (20 - 8)
    [InlineData(20, 0)]
    [InlineData(21, 0)]
    public void Evaporation_is_reduced_once_the_readily_evaporable_water_is_gone(double depletion, double reduction) =>
        Assert.Equal(reduction, SeedbedMath.Reduction(20, 8, depletion), 1e-12);

    [Theory]
    [InlineData(5, 3, 2, 0)]
    [InlineData(5, 5, 0, 0)]
    [InlineData(5, 9, 0, 4)]
    public void Rain_fills_the_layer_and_the_rest_runs_through(double before, double rain, double start, double through)
    {
        Assert.Equal(start, SeedbedMath.StartDepletion(before, rain));
        Assert.Equal(through, SeedbedMath.Percolation(rain, before));
    }

    [Fact]
    public void Evaporation_is_bounded_by_the_ground_that_lies_bare_and_by_the_water_that_is_left()
    {
        // Energy: 0.5 x (1.2 - 0.2) = 0.5, no more than a quarter of 1.2; water: no more than 3 mm of a half.
        Assert.Equal(0.5, SeedbedMath.EvaporationCoefficient(0.5, 1.2, 0.2, 1), 1e-12);
        Assert.Equal(0.3, SeedbedMath.EvaporationCoefficient(0.5, 1.2, 0.2, 0.25), 1e-12);
        Assert.Equal(2.5, SeedbedMath.Evaporation(0.5, 5, 20, 10, 1), 1e-12);
        Assert.Equal(1.5, SeedbedMath.Evaporation(0.5, 5, 20, 17, 0.5), 1e-12);
        Assert.Equal(13, SeedbedMath.EndDepletion(10, 1.5, 0.5), 1e-12);
        Assert.Equal(1.25, SeedbedMath.GreatestCoefficient(1.2, 2, 45, 0.3, 1.2), 1e-12);
        Assert.Equal(1.2 + (0.04 * 2), SeedbedMath.GreatestCoefficient(1.2, 4, 45, 3, 0.5), 1e-12);
    }

    [Theory]
    [InlineData(4, 0)]
    [InlineData(5, 0)]
    [InlineData(6, 1)]
    [InlineData(20, 15)] // the best
    [InlineData(25, 10)] // (20 - 5) x (35 - 25) / (35 - 20)
    [InlineData(35, 0)]
    [InlineData(36, 0)]
    public void Thermal_time_rises_to_the_best_temperature_and_falls_to_the_highest(double celsius, double time) =>
        Assert.Equal(time, EmergenceMath.OfDay(celsius, 5, 20, 35), 1e-12);

    [Theory]
    [InlineData(20, 15)]
    [InlineData(30, 15)]
    [InlineData(19, 14)]
    public void Without_a_highest_temperature_the_best_one_stays(double celsius, double time) =>
        Assert.Equal(time, EmergenceMath.OfDay(celsius, 5, 20, null), 1e-12);

    [Fact]
    public void Without_a_best_temperature_it_rises_on()
    {
        Assert.Equal(35, EmergenceMath.OfDay(40, 5, null, null), 1e-12);
        Assert.Equal(6, EmergenceMath.DaysNeeded(90, 20, 5), 1e-12);
        Assert.Equal(58, EmergenceMath.ThermalTimeAtDepth(50, 0.4, 20), 1e-12);
    }
}
