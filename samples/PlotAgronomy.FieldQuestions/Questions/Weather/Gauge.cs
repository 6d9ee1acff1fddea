using System.Text;
using PlotAgronomy.Land;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;

namespace PlotAgronomy.FieldQuestions.Weather;

/// <summary>Red clover was pressed in on 14 August; the gauge at the barn and a thermometer tell of nine days since. Is it up,
/// or has it dried out?</summary>
internal static class Gauge
{
    private const string Barn =
        """
        date,rain_in,high_f,low_f
        2026-08-14,0.62,84,66
        2026-08-15,0.00,86,64
        2026-08-16,0.00,88,65
        2026-08-17,0.00,89,67
        2026-08-18,0.00,90,68
        2026-08-19,0.08,87,67
        2026-08-20,0.00,88,66
        2026-08-21,1.15,79,65
        2026-08-22,0.10,80,62
        """;

    internal static void Answer(TextWriter output)
    {
        using var file = new MemoryStream(Encoding.UTF8.GetBytes(Barn));
        var days = WeatherHistory.ReadTable(file, "barn.csv").Days;
        var place = GeoPoint.FromDegrees(39.1, -82.6);
        var seedbed = SeedbedOutlook.Of(new() { Days = days, Place = place, Texture = SoilTexture.Loam }).Value;
        foreach (var day in seedbed.Days)
        {
            string lost = $"dried {Inches(day.Evaporation)}, seeped {Inches(day.Percolation)}";
            output.WriteLine($"{day.Date.Aloud()}: rain {Inches(day.Rain)}, {lost}; wet to {Amounts.Print(day.Wetness, 0)}");
        }

        var hottest = ReferenceEvaporation.Of(place, days.MaxBy(d => d.High!.Value.DegreesFahrenheit)!).Value;
        string by = hottest.Method is EvaporationMethod.Hargreaves ? "by high and low alone" : "by air, wind and sun";
        output.WriteLine($"The hottest day had {Amounts.Print(hottest.DayLength, "h", 1)} from sunrise to sunset");
        output.WriteLine($"and took {Inches(hottest.Depth)} from grass, {by}.");

        var kind = KindCatalog.Standard.Find("medium red clover");
        var clover = EmergenceOutlook.Of(seedbed, kind, days[0].Date, SeedPlacement.PressedIn).Value;
        output.WriteLine(clover.EmergesOn is { } up ? $"Half of it should be up on {up.Aloud()}." : "It cannot be up yet.");
        string warm = Amounts.Print(clover.SoilTemperatureEstimate.DegreesFahrenheit, 0);
        output.WriteLine($"Seed zone about {warm} F; {clover.MoistDays} moist days.");
        output.WriteLine(clover.IsByThermalTime ? "Counted by warmth, as measured in fields." : "Counted by the printed days.");
        output.Warn(clover.Findings);
        output.Warn(seedbed.Findings.DistinctBy(f => f.Code));

        var heat = DegreeDays.Of(days, Temperature.FromDegreesFahrenheit(50), DegreeDayMethod.SimpleAverage).Value;
        output.WriteLine($"Warmth above 50 F since sowing: {Amounts.Print(heat.SumFahrenheit, 0)} degree days.");
    }

    private static string Inches(Length water) => Amounts.Print(water, "in", 2);
}
