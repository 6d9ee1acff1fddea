using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <content>Reads observed weather from tables. Nothing is fetched.</content>
public sealed partial class WeatherHistory
{
    /// <summary>Reads a table with a header: a column <c>date</c> and values by day, or <c>time</c> and values by hour.</summary>
    /// <param name="text">Text of the table; every column names its unit, such as <c>rain_mm</c>, <c>high_f</c>,
    /// <c>wind_mph</c>.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <param name="zone">Time zone whose days the hours are summed to; not needed for values by day.</param>
    /// <returns>The days.</returns>
    /// <exception cref="DataFormatException">The text breaks the format: the message names file, line and field.</exception>
    public static WeatherHistory ReadTable(string text, string fileName, TimeZoneInfo? zone = null) =>
        new() { FileName = fileName, Days = new WeatherTable(fileName).Read(WeatherText.Checked(text, fileName), zone) };

    /// <summary>Reads a table with a header from a stream, which stays open.</summary>
    /// <param name="stream">The table in UTF-8.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <param name="zone">Time zone whose days the hours are summed to; not needed for values by day.</param>
    /// <returns>The days.</returns>
    /// <exception cref="DataFormatException">The stream breaks the format: the message names file, line and field.</exception>
    public static WeatherHistory ReadTable(Stream stream, string fileName, TimeZoneInfo? zone = null) =>
        ReadTable(WeatherText.Read(stream, fileName), fileName, zone);

    /// <summary>Reads the daily values of one station of the Global Historical Climatology Network: rows of eight fields
    /// without a header, or the lines of its months.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <returns>The days; a value that failed a check of the network is left out.</returns>
    /// <exception cref="DataFormatException">The text breaks the format: the message names file, line and field.</exception>
    public static WeatherHistory ReadStation(string text, string fileName)
    {
        var observations = new DailyObservations(fileName);
        var days = observations.Read(WeatherText.Checked(text, fileName));
        return new()
        {
            FileName = fileName,
            Days = days,
            DroppedValues = observations.Dropped,
        };
    }

    /// <summary>Reads the daily values of one station from a stream, which stays open.</summary>
    /// <param name="stream">The file in UTF-8.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <returns>The days; a value that failed a check of the network is left out.</returns>
    /// <exception cref="DataFormatException">The stream breaks the format: the message names file, line and field.</exception>
    public static WeatherHistory ReadStation(Stream stream, string fileName) =>
        ReadStation(WeatherText.Read(stream, fileName), fileName);
}
