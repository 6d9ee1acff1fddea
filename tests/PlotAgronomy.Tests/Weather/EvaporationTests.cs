using PlotAgronomy.Land;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

public class EvaporationTests
{
    private static readonly GeoPoint Place = GeoPoint.FromDegrees(33.2, -87.6);

    private static WeatherDay Day() =>
        new()
        {
            Date = new(2026, 7, 6),
            High = Temperature.FromDegreesCelsius(33),
            Low = Temperature.FromDegreesCelsius(21),
            HighestHumidity = Fraction.FromPercent(92),
            LowestHumidity = Fraction.FromPercent(50),
            Wind = Speed.FromMetersPerSecond(2),
            Sunshine = TimeSpan.FromHours(9),
        };

    [Fact]
    public void The_data_that_are_known_choose_the_method()
    {
        var full = ReferenceEvaporation.Of(Place, Day()).Value;
        var poor = ReferenceEvaporation.Of(Place, new() { Date = new(2026, 7, 6), High = Day().High, Low = Day().Low }).Value;
        Assert.Equal(EvaporationMethod.PenmanMonteith, full.Method);
        Assert.Equal(EvaporationMethod.Hargreaves, poor.Method);
        Assert.Equal(["weather-from-temperatures"], poor.Findings.Select(f => f.Code));
        Assert.Empty(full.Findings);
        Assert.InRange(full.Depth.Millimeters, poor.Depth.Millimeters - 2, poor.Depth.Millimeters + 2);
    }

    [Fact]
    public void Sunshine_that_is_not_told_is_estimated_and_said()
    {
        var day = new WeatherDay { Date = new(2026, 7, 6), High = Day().High, Low = Day().Low, DewPoint = Temperature.FromDegreesCelsius(20), Wind = Day().Wind };
        var evaporation = ReferenceEvaporation.Of(Place, day).Value;
        Assert.Equal(["weather-sun-from-range"], evaporation.Findings.Select(f => f.Code));
        Assert.Contains(evaporation.ShowWork(), l => l.Label == "Solar radiation, estimated");
    }

    [Fact]
    public void The_grid_tells_enough_for_penman_monteith()
    {
        var day = WeatherFiles.Grid.Days(WeatherFiles.Central).Single(d => d.Date == new DateOnly(2024, 2, 26));
        var evaporation = ReferenceEvaporation.Of(Place, day, WeatherFiles.Grid.Elevation).Value;
        Assert.Equal(EvaporationMethod.PenmanMonteith, evaporation.Method);
        Assert.InRange(evaporation.Depth.Millimeters, 0.5, 5);
    }

    /// <summary>On 6 July at 33.2 N the day has 14.1 h.</summary>
    [Theory]
    [InlineData(14.0, 0)]
    [InlineData(14.3, 1)]
    public void More_sunshine_than_the_day_has_is_said(double hours, int count)
    {
        var day = new WeatherDay { Date = Day().Date, High = Day().High, Low = Day().Low, DewPoint = Temperature.FromDegreesCelsius(20), Wind = Day().Wind, Sunshine = TimeSpan.FromHours(hours) };
        Assert.Equal(count, ReferenceEvaporation.Of(Place, day).Value.Findings.Count(f => f.Code == "weather-sunshine-too-long"));
    }

    [Fact]
    public void A_high_below_the_low_is_no_day()
    {
        var day = new WeatherDay { Date = Day().Date, High = Day().Low, Low = Day().High };
        Assert.Equal("weather-ask-temperatures", ReferenceEvaporation.Of(Place, day).Questions.Single().Code);
        Assert.Equal(AnswerState.Open, DegreeDays.Of([day], Temperature.FromDegreesCelsius(5), DegreeDayMethod.SingleSine).State);
        Assert.Throws<ArgumentOutOfRangeException>(() => new WeatherDay { Date = Day().Date, WindHeight = Length.FromMeters(0.1) });
    }

    [Theory]
    [InlineData(54.9, 0)]
    [InlineData(55.0, 0)]
    [InlineData(55.1, 1)]
    [InlineData(-70.0, 1)]
    public void Far_from_the_equator_is_said(double latitude, int count)
    {
        var evaporation = ReferenceEvaporation.Of(GeoPoint.FromDegrees(latitude, 0), Day()).Value;
        Assert.Equal(count, evaporation.Findings.Count(f => f.Code == "weather-far-from-equator"));
        Assert.True(double.IsFinite(evaporation.Depth.Millimeters));
    }

    [Theory]
    [InlineData(80, 172, 24)]
    [InlineData(80, 355, 0)]
    [InlineData(-80, 355, 24)]
    public void The_sun_does_not_set_or_rise_near_the_poles(double latitude, int day, double hours) =>
        Assert.Equal(hours, new SunDay(GeoPoint.FromDegrees(latitude, 0), day).DayLengthHours, 9);

    [Fact]
    public void Every_line_of_the_working_is_filled()
    {
        Assert.Equal(4 + 9 + 1, ReferenceEvaporation.Of(Place, Day()).Value.ShowWork().Length);
        Assert.All(ReferenceEvaporation.Of(Place, Day()).Value.ShowWork(), l => Assert.DoesNotContain("{", l.ToString(), StringComparison.Ordinal));
    }
}
