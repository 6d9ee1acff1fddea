namespace PlotAgronomy.Weather;

/// <summary>Where the weather service says that the forecasts of a place lie.</summary>
/// <remarks>The points document of the US National Weather Service, handed in as text. Nothing is fetched.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ForecastPoint
{
    private ForecastPoint() { }

    /// <summary>Gets the grid cell, such as <c>BMX 32,69</c>.</summary>
    public required string Cell { get; init; }

    /// <summary>Gets the name of the time zone, such as <c>America/Chicago</c>.</summary>
    public required string TimeZoneName { get; init; }

    /// <summary>Gets the address of the grid document.</summary>
    public required string GridAddress { get; init; }

    /// <summary>Gets the address of the forecast by half days.</summary>
    public required string PeriodAddress { get; init; }

    /// <summary>Gets the address of the hourly forecast.</summary>
    public required string HourlyAddress { get; init; }

    /// <summary>Reads a points document.</summary>
    /// <param name="text">Text of the document.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <returns>Where the forecasts lie.</returns>
    /// <exception cref="PlotAgronomy.Reference.DataFormatException">The text is no points document.</exception>
    public static ForecastPoint Read(string text, string fileName)
    {
        var fields = WeatherJson.Fields(WeatherText.Checked(text, fileName), fileName);
        return new()
        {
            Cell = $"{fields.Need("gridId").Text()} {Whole(fields, "gridX")},{Whole(fields, "gridY")}",
            TimeZoneName = fields.Need("timeZone").Text(),
            GridAddress = fields.Need("forecastGridData").Text(),
            PeriodAddress = fields.Need("forecast").Text(),
            HourlyAddress = fields.Need("forecastHourly").Text(),
        };
    }

    /// <summary>Written as text in one document and as a number in another.</summary>
    private static string Whole(WeatherJson fields, string name)
    {
        var value = fields.Need(name);
        double number =
            !value.IsText ? value.Number()
            : int.TryParse(value.Text(), System.Globalization.CultureInfo.InvariantCulture, out int written) ? written
            : throw value.Problem("expected a whole number");
        return number == Math.Floor(number)
            ? FormattableString.Invariant($"{number}")
            : throw value.Problem("expected a whole number");
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Cell}, {TimeZoneName}";
}
