using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

public class WeatherDocTests
{
    [Fact]
    public void The_page_shows_what_the_code_does() =>
        DocExample.AssertCurrent("docs/weather.md", "tests/PlotAgronomy.Tests/Weather/WeatherDocTests.cs", Example);

    [Fact]
    public void The_page_lists_every_finding_of_the_room()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/weather.md"));
        Assert.Empty(FindingCatalog.Codes.Concat(QuestionCatalog.Codes).Where(c => c.StartsWith("weather-", StringComparison.Ordinal) && !page.Contains($"`{c}`", StringComparison.Ordinal)));
    }

    private static void Example(TextWriter output)
    {
        // begin example
        // Tomorrow's rain as a forecast gives it, typed by hand: chance, amount, high, low.
        var zone = TimeZoneInfo.CreateCustomTimeZone("plot", TimeSpan.FromHours(-5), "plot", "plot");
        var place = GeoPoint.FromDegrees(42.74, -73.81);
        var first = new DateOnly(2026, 8, 20);
        (double Chance, double Inches)[] told = [(70, 0.8), (40, 0.2), (10, 0), (10, 0), (20, 0.05), (60, 0.6), (30, 0.1), (10, 0), (10, 0)];
        WeatherForecast forecast = WeatherForecast.FromLines([.. told.Select((day, i) => new TypedForecastLine
        {
            Date = first.AddDays(i),
            Chance = Fraction.FromPercent(day.Chance),
            Rain = Length.FromInches(day.Inches),
            High = Temperature.FromDegreesFahrenheit(80),
            Low = Temperature.FromDegreesFahrenheit(60),
        })], zone);

        // Enough for the seed? A quarter inch in the next two days.
        var start = new DateTimeOffset(2026, 8, 20, 0, 0, 0, TimeSpan.FromHours(-5));
        RainOutlook rain = forecast.Rain(start, start.AddDays(2)).Value;
        RainChance enough = rain.AtLeast(Length.FromInches(0.25));
        output.WriteLine($"{Amounts.Print(rain.Amount, "in", 2)}; rain from {rain.ChanceAtLeast} to {rain.ChanceAtMost}; a quarter inch from {Amounts.Print(enough.Low, 0)} to {Amounts.Print(enough.High, 0)}");

        // What the air takes, how long the surface stays moist, and when clover is up.
        ReferenceEvaporation evaporation = ReferenceEvaporation.Of(place, forecast.Days(zone)[0]).Value;
        output.WriteLine($"{Amounts.Print(evaporation.Depth, "in", 2)} a day by {evaporation.Method}");
        SeedbedOutlook seedbed = SeedbedOutlook.Of(new() { Days = forecast.Days(zone), Place = place, Texture = SoilTexture.SiltLoam }).Value;
        SeedbedDay last = seedbed.Days[^1];
        var (fewest, most) = seedbed.MoistDays(first, SeedPlacement.PressedIn);
        output.WriteLine($"pressed in: {fewest} to {most} moist days; wetness on the last {Amounts.Print(last.Wetness, 0)}");
        EmergenceOutlook clover = EmergenceOutlook.Of(seedbed, KindCatalog.Standard.Find("medium red clover"), first, SeedPlacement.PressedIn).Value;
        output.WriteLine($"up on {clover.EmergesOn:yyyy-MM-dd}, {clover.MoistDays} moist days, soil about {Amounts.Print(clover.SoilTemperatureEstimate.DegreesFahrenheit, 0)} F");
        foreach (var finding in clover.Findings)
        {
            output.WriteLine(finding);
        }

        // Frost: published dates, and counting back.
        FrostDates frost = FrostDates.FromQuantiles(Temperature.FromDegreesFahrenheit(32), new(2026, 10, 3), new(2026, 10, 15), new(2026, 11, 1));
        foreach (LatestSowing latest in LatestSowing.Of(KindCatalog.Standard.Find("forage-turnip"), frost, Fraction.FromPercent(10), 2026))
        {
            output.WriteLine($"{latest.Use}: sow by {latest.Safe:yyyy-MM-dd}, at the latest {latest.Latest:yyyy-MM-dd}");
        }

        // Sow now or wait?
        PlantingOutlook days = PlantingOutlook.Of(new() { Kind = clover.Kind, Placement = SeedPlacement.PressedIn, Seedbed = seedbed, Forecast = forecast, Zone = zone, Frost = frost }).Value;
        foreach (PlantingDay day in days.Days.Take(3))
        {
            output.WriteLine($"{day}; {string.Join(" ", day.Reasons.Select(r => r.Text))}");
        }

        // Heat by a gauge and thermometer of one's own.
        WeatherHistory gauge = WeatherHistory.ReadTable("""
            date,rain_in,high_f,low_f
            2026-08-18,0.00,82,61
            2026-08-19,0.35,78,63
            """, "gauge.csv");
        DegreeDays heat = DegreeDays.Of(gauge.Days, Temperature.FromDegreesFahrenheit(50), DegreeDayMethod.Clipped, Temperature.FromDegreesFahrenheit(86)).Value;
        output.WriteLine($"{Amounts.Print(heat.SumFahrenheit, 1)} F days");
        // end example
    }
}
