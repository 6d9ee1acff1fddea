using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <content>Reads a forecast whatever document it came as.</content>
public sealed partial class WeatherForecast
{
    /// <summary>Reads the grid or the periods of the US National Weather Service, or a plain table, whichever the text
    /// is.</summary>
    /// <param name="text">Text of the document.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <param name="zone">Time zone of the place, for a table by days.</param>
    /// <returns>The forecast.</returns>
    /// <exception cref="DataFormatException">The text is none of them: the message names file, line and field.</exception>
    public static WeatherForecast Read(string text, string fileName, TimeZoneInfo zone)
    {
        string known = WeatherText.Checked(text, fileName);
        return !known.AsSpan().TrimStart('\uFEFF').TrimStart().StartsWith("{") ? ReadTable(known, fileName, zone)
            : WeatherJson.Fields(known, fileName).Find("periods") is not null ? ReadPeriods(known, fileName)
            : ReadGrid(known, fileName);
    }

    /// <summary>Reads whichever document a stream holds; the stream stays open.</summary>
    /// <param name="stream">The document in UTF-8.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <param name="zone">Time zone of the place, for a table by days.</param>
    /// <returns>The forecast.</returns>
    /// <exception cref="DataFormatException">The stream holds none of them.</exception>
    public static WeatherForecast Read(Stream stream, string fileName, TimeZoneInfo zone) =>
        Read(WeatherText.Read(stream, fileName), fileName, zone);
}
