#:project ../../src/PlotAgronomy/PlotAgronomy.csproj

// Red clover and winter rye lie ready for a plot in New York. Sow today, or wait for a better day?
using PlotAgronomy;
using PlotAgronomy.Calendar;
using PlotAgronomy.Land;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;
using UnitsNet;

var eastern = TimeZoneInfo.CreateCustomTimeZone("eastern", TimeSpan.FromHours(-4), "eastern summer time", "eastern summer time");
var freezing = Temperature.FromDegreesFahrenheit(32);
var today = new DateOnly(2026, 8, 3);

// The forecast as a person reads it off: chance of rain in percent, inches, high and low in degrees Fahrenheit.
(double Chance, double Inches, double High, double Low)[] told =
[
    (10, 0, 86, 64), (10, 0, 87, 65), (20, 0, 88, 66), (20, 0.05, 85, 66), (30, 0.1, 82, 63), (20, 0, 81, 61),
    (40, 0.2, 80, 62), (70, 0.6, 76, 61), (80, 0.5, 74, 60), (30, 0.1, 77, 59), (20, 0, 79, 60), (20, 0, 80, 60),
];
var forecast = WeatherForecast.FromLines([.. told.Select((day, i) => new TypedForecastLine
{
    Date = today.AddDays(i),
    Chance = Fraction.FromPercent(day.Chance),
    Rain = Length.FromInches(day.Inches),
    High = Temperature.FromDegreesFahrenheit(day.High),
    Low = Temperature.FromDegreesFahrenheit(day.Low),
})], eastern);

// Frost: one year in ten by 28 September, every second year by 9 October.
var decision = PlantingDecision.Of(new DecisionRequest
{
    Kinds =
    [
        new KindToSow { Kind = KindCatalog.Standard.Find("medium red clover"), Placement = SeedPlacement.PressedIn },
        new KindToSow { Kind = KindCatalog.Standard.Find("cereal rye"), Placement = SeedPlacement.Covered },
    ],
    Forecast = forecast,
    Zone = eastern,
    Where = GeoPoint.FromDegrees(42.7, -74.2),
    Texture = SoilTexture.SiltLoam,
    Region = PlantingRegion.North,
    Frost = FrostDates.FromQuantiles(freezing, new(2026, 9, 28), new(2026, 10, 9), new(2026, 10, 22)),
}).Value;

Console.WriteLine($"On {today:yyyy-MM-dd}: {decision}");
foreach (var reason in decision.Days[0].Reasons)
{
    Console.WriteLine($"  {reason.Text}");
}

Console.WriteLine("\nHalf an inch of rain in the week from that day on:");
foreach (var day in decision.Days)
{
    Console.WriteLine($"  {day}, {day.Enough}");
}

Console.WriteLine($"\nLast sensible days: {string.Join("; ", decision.TimeLeft)}");
