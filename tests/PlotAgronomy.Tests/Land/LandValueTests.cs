using PlotAgronomy.Land;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

/// <summary>What every value of the room keeps to: equality, order, default and text.</summary>
public class LandValueTests
{
    [Fact]
    public void Defaults_are_valid_values()
    {
        Assert.Equal(Slope.Level, default);
        Assert.Equal(0, default(Slope).Degrees);
        Assert.Equal(StepCount.FromSingleSteps(0), default);
        Assert.Equal(PlanePoint.FromFeet(0, 0), default);
        Assert.Equal(GeoPoint.FromDegrees(0, 0), default);
        Assert.Equal(Bearing.FromDegrees(0), default);
        Assert.Equal((MeasuredLength)Length.Zero, default);
    }

    [Fact]
    public void Equal_values_are_equal_in_any_unit()
    {
        Assert.Equal(StepCount.FromSingleSteps(80), StepCount.FromDoublePaces(40));
        Assert.Equal(Bearing.FromDegrees(360), Bearing.FromDegrees(0));
        Near.Assert(45, Slope.FromPercent(100).Degrees);
    }

    [Theory]
    [InlineData(0, "0 degrees (N)")]
    [InlineData(22.4, "22.4 degrees (N)")]
    [InlineData(22.5, "22.5 degrees (NE)")]
    [InlineData(90, "90 degrees (E)")]
    [InlineData(225, "225 degrees (SW)")]
    [InlineData(359, "359 degrees (N)")]
    public void A_bearing_names_its_point_of_the_compass(double degrees, string text) => Assert.Equal(text, Bearing.FromDegrees(degrees).ToString());

    [Theory]
    [InlineData(-0.1)]
    [InlineData(60.1)]
    [InlineData(double.NaN)]
    public void A_slope_in_degrees_lies_between_level_and_sixty(double degrees) => Assert.Throws<ArgumentOutOfRangeException>(() => Slope.FromDegrees(degrees));

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_count_of_steps_is_a_finite_number_from_zero(double count)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StepCount.FromSingleSteps(count));
        Assert.Throws<ArgumentOutOfRangeException>(() => StepCount.FromDoublePaces(count));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void A_place_on_the_plane_is_finite(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PlanePoint.FromFeet(value, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlanePoint.FromFeet(0, value));
    }

    [Fact]
    public void A_length_and_its_error_are_not_negative()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredLength.FromLength(Length.FromFeet(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredLength.WithError(Length.FromFeet(1), Length.FromFeet(-0.1)));
        Assert.Equal("12.5 ft", MeasuredLength.FromLength(Length.FromFeet(12.5)).ToString());
    }
}
