using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>A column that a table of weather may have: what it holds, and its unit at the end of its name.</summary>
internal sealed record TableColumn(
    string Header,
    TableQuantity Quantity,
    Func<double, double> Convert,
    double Lowest,
    double Highest,
    string Held
)
{
    private static readonly ImmutableArray<(string Name, TableQuantity Quantity)> Names =
    [
        ("rain", TableQuantity.Rain),
        ("prcp", TableQuantity.Rain),
        ("precipitation", TableQuantity.Rain),
        ("high", TableQuantity.High),
        ("tmax", TableQuantity.High),
        ("low", TableQuantity.Low),
        ("tmin", TableQuantity.Low),
        ("temperature", TableQuantity.Temperature),
        ("dew_point", TableQuantity.DewPoint),
        ("humidity_high", TableQuantity.HighestHumidity),
        ("humidity_low", TableQuantity.LowestHumidity),
        ("humidity", TableQuantity.Humidity),
        ("wind", TableQuantity.Wind),
        ("sunshine", TableQuantity.Sunshine),
        ("solar", TableQuantity.Solar),
    ];

    /// <summary>The column of a header; the words tell what is wrong where there is none.</summary>
    internal static TableColumn? Find(string header, out string problem)
    {
        var named = Names.Where(n => header == n.Name || header.StartsWith($"{n.Name}_", StringComparison.Ordinal)).ToList();
        if (named.Count == 0)
        {
            problem = $"unknown column; known are date, time, {string.Join(", ", Names.Select(n => n.Name))}, each with its unit";
            return null;
        }

        var (name, quantity) = named.MaxBy(n => n.Name.Length);
        string unit = header.Length > name.Length ? header[(name.Length + 1)..] : "";
        var (convert, lowest, highest, held, units) = Measures(quantity, unit);
        problem = convert is null ? $"the unit must stand in the header, such as {name}_{units}" : "";
        return convert is null ? null : new(header, quantity, convert, lowest, highest, held);
    }

    internal double? Read(CsvRow row) =>
        row.NumberOrNull(Header) is { } number
            ? WeatherRanges.Check(Convert(number), Lowest, Highest, Held, p => row.Problem(Header, p))
            : null;

    private static (Func<double, double>? Convert, double Lowest, double Highest, string Held, string Units) Measures(
        TableQuantity quantity,
        string unit
    ) =>
        quantity switch
        {
            TableQuantity.Rain => (WeatherUnit.ToMillimeters(unit), 0, WeatherRanges.MostRain, "mm", "mm or _in"),
            TableQuantity.HighestHumidity or TableQuantity.LowestHumidity or TableQuantity.Humidity => (
                WeatherUnit.ToPercent(unit),
                0,
                100,
                "%",
                "pct"
            ),
            TableQuantity.Wind => (
                WeatherUnit.ToMetersPerSecond(unit.Replace("_", "", StringComparison.Ordinal)),
                0,
                WeatherRanges.MostWind,
                "m/s",
                "m_s, _km_h or _mph"
            ),
            TableQuantity.Sunshine => (unit == "h" ? x => x : null, 0, 24, "h", "h"),
            TableQuantity.Solar => (unit == "mj_m2" ? x => x : null, 0, WeatherRanges.MostSun, "MJ/m2", "mj_m2"),
            _ => (WeatherUnit.ToCelsius(unit), WeatherRanges.Coldest, WeatherRanges.Hottest, "C", "c or _f"),
        };
}
