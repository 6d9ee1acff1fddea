namespace PlotAgronomy.Weather;

/// <summary>A layer of the grid document that this room reads: its unit and the range of what can be.</summary>
internal sealed class GridLayer(string name, Func<string, Func<double, double>?> unit, double lowest, double highest, string held)
{
    internal static readonly GridLayer Rain = new(
        "quantitativePrecipitation",
        WeatherUnit.ToMillimeters,
        0,
        WeatherRanges.MostRain,
        "mm"
    );

    internal static readonly GridLayer Chance = new("probabilityOfPrecipitation", WeatherUnit.ToPercent, 0, 100, "%");
    internal static readonly GridLayer Temperature = OfTemperature("temperature");
    internal static readonly GridLayer High = OfTemperature("maxTemperature");
    internal static readonly GridLayer Low = OfTemperature("minTemperature");
    internal static readonly GridLayer DewPoint = OfTemperature("dewpoint");
    internal static readonly GridLayer Humidity = new("relativeHumidity", WeatherUnit.ToPercent, 0, 100, "%");
    internal static readonly GridLayer Wind = new("windSpeed", WeatherUnit.ToMetersPerSecond, 0, WeatherRanges.MostWind, "m/s");

    /// <summary>The values of the layer; null values are not known, and a layer without values may leave its unit out.</summary>
    internal SlotSeries Read(WeatherJson fields, string file, DateTimeOffset? issued)
    {
        if (fields.Find(name) is not { } layer)
        {
            return SlotSeries.Empty;
        }

        var values = layer.Need("values").Items().ToList();
        if (values.Count == 0)
        {
            return SlotSeries.Empty;
        }

        var convert = Unit(layer);
        var known = new List<SlotValue>(values.Count);
        foreach (var entry in values)
        {
            var slot = entry.Need("validTime").Interval(issued);
            if (entry.Need("value") is { IsNull: false } value)
            {
                known.Add(new(slot, InRange(value, convert(value.Number())), entry.Line));
            }
        }

        return SlotSeries.From(known, file, name);
    }

    private static GridLayer OfTemperature(string name) =>
        new(name, WeatherUnit.ToCelsius, WeatherRanges.Coldest, WeatherRanges.Hottest, "C");

    private Func<double, double> Unit(WeatherJson layer)
    {
        var uom = layer.Need("uom");
        return unit(WeatherUnit.Bare(uom.Text())) ?? throw uom.Problem($"unknown unit '{IsoInterval.Shortened(uom.Text())}'");
    }

    private double InRange(WeatherJson at, double value) => WeatherRanges.Check(value, lowest, highest, held, at.Problem);
}
