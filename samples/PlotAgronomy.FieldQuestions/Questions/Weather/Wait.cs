using System.Text;
using PlotAgronomy.Calendar;
using PlotAgronomy.Land;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;

namespace PlotAgronomy.FieldQuestions.Weather;

/// <summary>Red clover lies ready, the last four days were noted, and the forecast was typed into a table. Now, or
/// wait?</summary>
internal static class Wait
{
    private const string Told =
        """
        date,chance_pct,rain_in,high_f,low_f
        2026-08-03,10,0.00,88,66
        2026-08-04,20,0.02,89,67
        2026-08-05,30,0.10,86,66
        2026-08-06,70,0.55,80,64
        2026-08-07,60,0.35,78,62
        2026-08-08,20,0.02,79,60
        2026-08-09,10,0.00,81,60
        2026-08-10,20,0.05,82,61
        2026-08-11,30,0.10,80,61
        2026-08-12,40,0.20,79,60
        """;

    internal static void Answer(TextWriter output)
    {
        var zone = TimeZoneInfo.CreateCustomTimeZone("farm", TimeSpan.FromHours(-4), "farm time", "farm time");
        using var file = new MemoryStream(Encoding.UTF8.GetBytes(Told));
        var decision = PlantingDecision.Of(new()
        {
            Kinds = [new() { Kind = KindCatalog.Standard.Find("medium red clover"), Placement = SeedPlacement.PressedIn }],
            Forecast = WeatherForecast.ReadTable(file, "told.csv", zone),
            Observed = WeatherHistory.FromDays([Noted(4, 0.4), Noted(3, 0.1), Noted(2, 0), Noted(1, 0)]),
            Zone = zone,
            Where = GeoPoint.FromDegrees(40.1, -78.4),
            Texture = SoilTexture.SiltLoam,
            Region = PlantingRegion.North,
        }).Value;
        output.WriteLine(decision.Now is PlantingVerdict.Sow ? "Sow today:" : "Not today, if it can wait:");
        output.Warn(decision.Days[0].Reasons);
        if (decision.WaitUntil is { } better)
        {
            output.WriteLine($"Better on {better.Date.Aloud()}: half an inch within a week, {better.Enough}.");
        }

        output.Warn(decision.Findings);
    }

    private static WeatherDay Noted(int daysAgo, double inches) => new()
    {
        Date = new DateOnly(2026, 8, 3).AddDays(-daysAgo),
        Rain = Length.FromInches(inches),
        High = Temperature.FromDegreesFahrenheit(87),
        Low = Temperature.FromDegreesFahrenheit(66),
    };
}
