using System.Globalization;
using PlotAgronomy.Land;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

/// <summary>Further numbered examples and cells of printed tables; most are from memory, and say so.</summary>
public class WeatherPrintExamples
{
    private const string Worked = "Weather/worked-print.csv";

    public static TheoryData<string> Ids => WorkedExamples.Ids(Worked);

    [Theory, MemberData(nameof(Ids))]
    public void Matches_what_is_printed(string id)
    {
        var row = WorkedExamples.Find(Worked, id);
        double[] x = [.. (row.TextOrNull("inputs") ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
        string topic = row.Text("topic");
        double answer =
            topic.StartsWith("brussels-", StringComparison.Ordinal) ? OfDay(topic["brussels-".Length..], Brussels, 50.80, 100)
            : topic.StartsWith("lyon-", StringComparison.Ordinal) ? OfDay(topic["lyon-".Length..], Lyon, 45.72, 200)
            : Other(topic, x) ?? WeatherWorkedExamples.Answer(topic, x);
        WorkedExamples.AssertMatches(row, answer);
    }

    /// <summary>Example 18: wind at 10 m, humidity and sunshine told.</summary>
    private static WeatherDay Brussels =>
        new()
        {
            Date = new(2013, 7, 6),
            High = Temperature.FromDegreesCelsius(21.5),
            Low = Temperature.FromDegreesCelsius(12.3),
            HighestHumidity = Fraction.FromPercent(84),
            LowestHumidity = Fraction.FromPercent(63),
            Wind = Speed.FromKilometersPerHour(10),
            WindHeight = Length.FromMeters(10),
            Sunshine = TimeSpan.FromHours(9.25),
        };

    /// <summary>Example 20: temperatures alone; dew taken at the low and wind as 2 m/s.</summary>
    private static WeatherDay Lyon =>
        new()
        {
            Date = new(2013, 7, 15),
            High = Temperature.FromDegreesCelsius(26.6),
            Low = Temperature.FromDegreesCelsius(14.8),
            DewPoint = Temperature.FromDegreesCelsius(14.8),
            Wind = Speed.FromMetersPerSecond(2),
        };

    private static double OfDay(string quantity, WeatherDay day, double latitude, double elevation)
    {
        var place = GeoPoint.FromDegrees(latitude, 4.5);
        var sun = new SunDay(place, day.Date.DayOfYear);
        var full = PenmanMonteithDay.Of(day, sun, elevation, 0.16)!;
        return quantity switch
        {
            "wind" => full.Wind,
            "slope" => full.Slope,
            "gamma" => full.Psychrometric,
            "saturation" => full.Saturation,
            "vapour" => full.Vapour,
            "deficit" => full.Saturation - full.Vapour,
            "ra" => sun.Extraterrestrial,
            "day" => sun.DayLengthHours,
            "solar" => full.Solar,
            "clear" => full.ClearSky,
            "shortwave" => full.Shortwave,
            "longwave" => full.Longwave,
            "net" => full.NetRadiation,
            "et" => ReferenceEvaporation.Of(place, day, Length.FromMeters(elevation)).Value.Depth.Millimeters,
            _ => throw new InvalidOperationException(quantity),
        };
    }

    private static double? Other(string topic, double[] x) => topic switch
    {
        "slope" => AirMath.SlopeOfPressure(WeatherConstants.All["slope-factor"], AirMath.SaturationPressure(x[0]), x[0], WeatherConstants.All["vapour-offset"]),
        "water-of-energy" => WeatherConstants.All["depth-of-radiation"] * x[0],
        "clear-sky" => SunMath.ClearSky(WeatherConstants.All["clear-sky-at-sea"], WeatherConstants.All["clear-sky-per-meter"], x[2], new SunDay(GeoPoint.FromDegrees(x[0], 0), (int)x[1]).Extraterrestrial),
        "longwave" => AirMath.NetLongwave(WeatherConstants.All["stefan-boltzmann"], x[0], x[1], x[2], x[3]),
        "grid-six-hours" => SixHours(WeatherFiles.Utc((int)x[0], (int)x[1], (int)x[2], (int)x[3])),
        "days-at-the-mean-of" => EmergenceMath.DaysNeeded(x[0], x[1] / x[2], 0),
        _ => null,
    };

    private static double SixHours(DateTimeOffset from)
    {
        WeatherFiles.Grid.Rain(from, from.AddHours(6)).TryGetPart(out var rain);
        return rain!.ChanceAtLeast.Percent;
    }
}
