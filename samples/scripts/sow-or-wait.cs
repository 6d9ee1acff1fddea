#:project ../../src/PlotAgronomy/PlotAgronomy.csproj

// Red clover and winter rye lie ready for a plot in New York. Sow today, or wait for a better day?
using PlotAgronomy;
using PlotAgronomy.Calendar;
using PlotAgronomy.Land;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;
using UnitsNet;

var eastern = TimeZoneInfo.CreateCustomTimeZone("eastern", TimeSpan.FromHours(-4), "eastern summer time", "eastern summer time");
var today = new DateOnly(2026, 8, 24);

// The forecast as a person reads it off: chance of rain in percent, inches, high and low in degrees Fahrenheit.
(double Chance, double Inches, double High, double Low)[] told =
[
    (10, 0, 84, 62), (20, 0, 86, 64), (70, 0.5, 79, 63), (80, 0.7, 74, 60), (40, 0.1, 76, 58),
    (20, 0, 78, 57), (10, 0, 80, 58), (30, 0.1, 79, 60), (40, 0.2, 77, 59), (20, 0, 76, 56),
];
var forecast = WeatherForecast.FromLines([.. told.Select((day, i) => new TypedForecastLine
{
    Date = today.AddDays(i),
    Chance = Fraction.FromPercent(day.Chance),
    Rain = Length.FromInches(day.Inches),
    High = Temperature.FromDegreesFahrenheit(day.High),
    Low = Temperature.FromDegreesFahrenheit(day.Low),
})], eastern);

var answer = PlantingDecision.Of(new DecisionRequest
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
    Frost = FrostDates.FromQuantiles(Temperature.FromDegreesFahrenheit(32), new(2026, 9, 28), new(2026, 10, 9), new(2026, 10, 22)),
});
var decision = answer.Value;

foreach (var day in decision.Days)
{
    Console.WriteLine($"{day}; half an inch of rain within a week: {day.Enough}");
}

Console.WriteLine($"\nToday: {decision}");
Console.WriteLine($"just ahead of the rain: {decision.JustAheadOfRain}");
foreach (var reason in decision.Days[0].Reasons)
{
    Console.WriteLine($"  {reason.Text}");
}

foreach (var kind in decision.TimeLeft)
{
    Console.WriteLine($"  {kind}");
}
foreach (var finding in decision.Findings) Console.WriteLine(finding);
