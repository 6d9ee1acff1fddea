using System.Globalization;
using System.Text;
using PlotAgronomy.Weather;

namespace PlotAgronomy.FieldQuestions.Weather;

/// <summary>Clover is to be sown on Friday evening. Does the weekend bring a third of an inch, and how long is it dry after?
/// The documents are short ones of our own, as a program would have them from the weather service.</summary>
internal static class Rain
{
    private const string Point =
        """
        {"properties": {"gridId": "XYZ", "gridX": 12, "gridY": 40, "timeZone": "America/Chicago",
          "forecast": "cell/half-days", "forecastHourly": "cell/hours", "forecastGridData": "cell/grid"}}
        """;

    private const string Grid =
        """
        {"properties": {"updateTime": "2026-04-10T12:00:00-05:00",
          "quantitativePrecipitation": {"uom": "wmoUnit:mm", "values": [
            {"validTime": "2026-04-10T19:00:00-05:00/PT6H", "value": 0},
            {"validTime": "2026-04-11T01:00:00-05:00/PT6H", "value": 2.5},
            {"validTime": "2026-04-11T07:00:00-05:00/PT6H", "value": 7.1},
            {"validTime": "2026-04-11T13:00:00-05:00/PT12H", "value": 1},
            {"validTime": "2026-04-12T01:00:00-05:00/P2D", "value": 0}]},
          "probabilityOfPrecipitation": {"uom": "wmoUnit:percent", "values": [
            {"validTime": "2026-04-10T19:00:00-05:00/PT6H", "value": 10},
            {"validTime": "2026-04-11T01:00:00-05:00/PT6H", "value": 55},
            {"validTime": "2026-04-11T07:00:00-05:00/PT6H", "value": 75},
            {"validTime": "2026-04-11T13:00:00-05:00/PT12H", "value": 30},
            {"validTime": "2026-04-12T01:00:00-05:00/P2D", "value": 5}]}}}
        """;

    internal static void Answer(TextWriter output)
    {
        output.WriteLine($"The amounts for this place lie in '{ForecastPoint.Read(Point, "point").GridAddress}'.");
        using var document = new MemoryStream(Encoding.UTF8.GetBytes(Grid));
        var forecast = WeatherForecast.ReadGrid(document, "grid");
        var friday = new DateTimeOffset(2026, 4, 10, 19, 0, 0, TimeSpan.FromHours(-5));
        var rain = forecast.Rain(friday, friday.AddHours(30)).Value;
        output.WriteLine($"From {Hour(rain.From)} to {Hour(rain.To)}: {Amounts.Print(rain.Amount, "in", 2)} are expected.");
        output.WriteLine($"Some rain: {Amounts.Print(rain.ChanceAtLeast, 0)} to {Amounts.Print(rain.ChanceAtMost, 0)} likely.");

        var third = Length.FromInches(0.33);
        output.WriteLine($"A third of an inch: {rain.AtLeast(third)}.");
        output.Tell(rain.ShowWork(third));
        output.Tell(rain.ShowWork(Fraction.FromPercent(67)));
        output.Warn(rain.Findings);

        string dry = Amounts.Print(rain.DryAfter, "h", 0);
        output.WriteLine($"Then dry for {dry}.");
        if (rain.DryAfterIsCutShort)
        {
            output.WriteLine("The forecast ends there: it may be longer.");
        }
    }

    private static string Hour(DateTimeOffset time) => time.ToString("dddd HH:mm", CultureInfo.InvariantCulture);
}
