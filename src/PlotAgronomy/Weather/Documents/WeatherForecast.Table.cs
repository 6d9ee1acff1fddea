using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <content>Reads forecasts from plain tables.</content>
public sealed partial class WeatherForecast
{
    /// <summary>Reads a plain table: a column <c>date</c>, or <c>time</c> with hours, the chance of rain as <c>chance_pct</c>,
    /// and
    /// columns that name their unit, such as <c>rain_in</c>, <c>high_f</c>, <c>low_f</c>; by hours
    /// <c>temperature_f</c>.</summary>
    /// <param name="text">Text of the table.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <param name="zone">Time zone of the place.</param>
    /// <returns>The forecast.</returns>
    /// <exception cref="DataFormatException">The text breaks the format: the message names file, line and field.</exception>
    public static WeatherForecast ReadTable(string text, string fileName, TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        var table = new ForecastTable(WeatherText.Checked(text, fileName), fileName);
        var forecast = table.IsByDays ? FromLines(table.Days(), zone, fileName) : ByHours(table, fileName);
        table.CheckReach(forecast.Blocks);
        return forecast;
    }

    /// <summary>Reads a plain table from a stream, which stays open.</summary>
    /// <param name="stream">The table in UTF-8.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <param name="zone">Time zone of the place.</param>
    /// <returns>The forecast.</returns>
    /// <exception cref="DataFormatException">The stream breaks the format: the message names file, line and field.</exception>
    public static WeatherForecast ReadTable(Stream stream, string fileName, TimeZoneInfo zone) =>
        ReadTable(WeatherText.Read(stream, fileName), fileName, zone);

    private static WeatherForecast ByHours(ForecastTable table, string file)
    {
        var (rain, temperatures) = table.Hours();
        return new()
        {
            FileName = file,
            Blocks = rain,
            Hourly = temperatures,
        };
    }
}
