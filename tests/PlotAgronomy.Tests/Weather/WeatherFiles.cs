using PlotAgronomy.Weather;

namespace PlotAgronomy.Tests.Weather;

/// <summary>Documents of one office and update, and four years of a city's days, kept beside the tests.</summary>
internal static class WeatherFiles
{
    internal const string MonthLine =
        "USX00000001201311TMIN  144     117      33      11      33      61      67      50      39      67      61       0     -16  "
        + "    11      22      61      78     111      22      -5      -5      94       0     -43     -49      11      22     -10     -10     -38   -9999   ";

    private static readonly Lazy<WeatherForecast> GridOnce = new(() => WeatherForecast.ReadGrid(Text("grid.json"), "grid.json"));

    private static readonly Lazy<WeatherHistory> NewYorkOnce = new(() => WeatherHistory.ReadTable(Text("daily-new-york.csv"), "daily-new-york.csv"));

    internal static WeatherForecast Grid => GridOnce.Value;

    internal static WeatherHistory NewYork => NewYorkOnce.Value;

    /// <summary>Central time with the clock change of 2007 and after, whatever the machine knows.</summary>
    internal static TimeZoneInfo Central { get; } = Zone(-6);

    internal static TimeZoneInfo Eastern { get; } = Zone(-5);

    internal static string Text(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Weather", name));

    internal static DateTimeOffset Utc(int year, int month, int day, int hour) => new(year, month, day, hour, 0, 0, TimeSpan.Zero);

    private static TimeZoneInfo Zone(int hours)
    {
        var two = new DateTime(1, 1, 1, 2, 0, 0);
        var rule = TimeZoneInfo.AdjustmentRule.CreateAdjustmentRule(
            new DateTime(2007, 1, 1),
            DateTime.MaxValue.Date,
            TimeSpan.FromHours(1),
            TimeZoneInfo.TransitionTime.CreateFloatingDateRule(two, 3, 2, DayOfWeek.Sunday),
            TimeZoneInfo.TransitionTime.CreateFloatingDateRule(two, 11, 1, DayOfWeek.Sunday));
        return TimeZoneInfo.CreateCustomTimeZone($"of tests {hours}", TimeSpan.FromHours(hours), "standard", "standard", "daylight", [rule]);
    }
}
