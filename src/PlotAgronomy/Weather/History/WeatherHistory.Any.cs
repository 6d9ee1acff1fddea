using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <content>Reads observed weather whatever table it came as.</content>
public sealed partial class WeatherHistory
{
    /// <summary>Reads a plain table with a header, or the file of a station, whichever the stream holds; it stays open.</summary>
    /// <param name="stream">The table in UTF-8.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <param name="zone">Time zone whose days hours are summed to; not needed for values by day.</param>
    /// <returns>The days.</returns>
    /// <exception cref="DataFormatException">The stream breaks the format: the message names file, line and field.</exception>
    public static WeatherHistory Read(Stream stream, string fileName, TimeZoneInfo? zone = null)
    {
        string text = WeatherText.Read(stream, fileName);
        int end = text.IndexOf('\n', StringComparison.Ordinal);
        string[] header = (end < 0 ? text : text[..end]).TrimStart('\uFEFF').Trim().Split(',');
        return header.Any(h => h is "date" or "time") ? ReadTable(text, fileName, zone) : ReadStation(text, fileName);
    }
}
