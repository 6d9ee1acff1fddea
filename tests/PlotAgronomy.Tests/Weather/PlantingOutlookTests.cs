using PlotAgronomy.Land;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

public class PlantingOutlookTests
{
    private static readonly GeoPoint Place = GeoPoint.FromDegrees(42.74, -73.81);

    private static PlantingOutlook Of(string kind, DateOnly first, double high, FrostDates? frost, params (double Chance, double Inches)[] told)
    {
        var zone = WeatherFiles.Eastern;
        var forecast = WeatherForecast.FromLines([.. told.Select((day, i) => new TypedForecastLine
        {
            Date = first.AddDays(i),
            Chance = Fraction.FromPercent(day.Chance),
            Rain = Length.FromInches(day.Inches),
            High = Temperature.FromDegreesFahrenheit(high),
            Low = Temperature.FromDegreesFahrenheit(high - 20),
        })], zone);
        var seedbed = SeedbedOutlook.Of(new() { Days = forecast.Days(zone), Place = Place, Texture = SoilTexture.SiltLoam }).Value;
        return PlantingOutlook.Of(new() { Kind = KindCatalog.Standard.Find(kind), Placement = SeedPlacement.Covered, Seedbed = seedbed, Forecast = forecast, Zone = zone, Frost = frost }).Value;
    }

    private static (double, double)[] Days(int count, double chance, double inches) => [.. Enumerable.Repeat((chance, inches), count)];

    [Fact]
    public void A_dry_week_says_wait_until_the_week_with_the_rain()
    {
        var outlook = Of("medium-red-clover", new(2026, 8, 20), 80, null, [.. Days(8, 0, 0), .. Days(10, 90, 0.5), .. Days(5, 80, 0.3)]);
        Assert.Equal(PlantingVerdict.Wait, outlook.Now);
        Assert.Equal("weather-rain-unlikely", outlook.Days[0].Reasons[0].Code);
        Assert.NotNull(outlook.WaitUntil);
        Assert.All(outlook.BetterDays, d => Assert.True(d.Verdict < PlantingVerdict.Wait));
        Assert.Equal(outlook.BetterDays.MinBy(d => (d.Verdict, d.Date))!.Date, outlook.WaitUntil);
    }

    /// <summary>What is enough, and how likely, is common practice: half an inch in the week, as likely as not.</summary>
    [Fact]
    public void A_day_on_which_nothing_speaks_against_it_is_waited_for_past_one_that_asks_for_care()
    {
        var outlook = Of("medium-red-clover", new(2026, 8, 20), 80, null, [.. Days(10, 0, 0), .. Days(3, 35, 0.4), .. Days(14, 95, 0.5)]);
        Assert.Equal(PlantingVerdict.Wait, outlook.Now);
        var care = outlook.Days.First(d => d.Verdict < PlantingVerdict.Wait);
        var free = outlook.Days.First(d => d.Verdict == PlantingVerdict.Sow);
        Assert.Equal(PlantingVerdict.SowWithCare, care.Verdict);
        Assert.True(care.Date < free.Date);
        Assert.Equal(free.Date, outlook.WaitUntil);
    }

    [Fact]
    public void A_wet_warm_fortnight_says_sow_and_nothing_better_comes()
    {
        var outlook = Of("medium-red-clover", new(2026, 8, 20), 80, null, Days(20, 90, 0.3));
        Assert.Equal(PlantingVerdict.Sow, outlook.Now);
        Assert.Empty(outlook.BetterDays);
        Assert.Null(outlook.WaitUntil);
        Assert.Equal(["weather-rain-likely", "weather-up-on"], outlook.Days[0].Reasons.Select(r => r.Code).Order());
    }

    [Fact]
    public void The_end_of_the_forecast_is_said_and_not_taken_for_dry()
    {
        var outlook = Of("medium-red-clover", new(2026, 8, 20), 80, null, Days(10, 90, 0.3));
        Assert.DoesNotContain(outlook.Days[3].Reasons, r => r.Code == "weather-rain-untold");
        Assert.Contains(outlook.Days[4].Reasons, r => r.Code == "weather-rain-untold");
    }

    /// <summary>From the service's own document to a verdict: the whole days of the grid, 28 mm of rain in its second half.</summary>
    [Fact]
    public void The_grid_of_the_service_gives_each_day_its_reasons()
    {
        var zone = WeatherFiles.Central;
        var days = WeatherFiles.Grid.Days(zone).Where(d => d.Rain is not null && d.High is not null && d.Low is not null).ToList();
        Assert.Equal(new DateOnly(2024, 2, 24), days[0].Date);
        var seedbed = SeedbedOutlook.Of(new() { Days = [.. days], Place = GeoPoint.FromDegrees(33.211, -87.566), Texture = SoilTexture.SandyLoam, Elevation = WeatherFiles.Grid.Elevation }).Value;
        var outlook = PlantingOutlook.Of(new() { Kind = KindCatalog.Standard.Find("medium-red-clover"), Placement = SeedPlacement.PressedIn, Seedbed = seedbed, Forecast = WeatherFiles.Grid, Zone = zone }).Value;
        Assert.Equal(days.Count, outlook.Days.Length);
        Assert.Equal(28.194, outlook.Days[0].Rain.Amount.Millimeters, 1.0);
        Assert.All(outlook.Days, d => Assert.NotEmpty(d.Reasons));
        Assert.Contains(outlook.Days[^1].Reasons, r => r.Code == "weather-rain-untold");
        Assert.Equal(0, seedbed.Days[0].Wetness.Value);
        Assert.True(seedbed.Days.Single(d => d.Date == new DateOnly(2024, 2, 29)).Wetness.Value > 0);
    }

    [Fact]
    public void Cold_soil_and_the_frost_speak_against_it()
    {
        var frost = FrostDates.FromQuantiles(Temperature.FromDegreesFahrenheit(32), new(2026, 10, 3), new(2026, 10, 15), new(2026, 11, 1));
        Assert.Contains(Of("corn", new(2026, 4, 1), 55, frost, Days(10, 90, 0.3)).Days[0].Reasons, r => r.Code == "weather-too-cold-to-sow");
        Assert.Contains(Of("forage-turnip", new(2026, 8, 1), 80, frost, Days(10, 90, 0.3)).Days[0].Reasons, r => r.Code == "weather-before-frost");
        var late = Of("forage-turnip", new(2026, 10, 1), 75, frost, Days(10, 90, 0.3));
        Assert.Contains(late.Days[0].Reasons, r => r.Code == "weather-too-late");
        Assert.Equal(PlantingVerdict.Wait, late.Now);
    }
}
