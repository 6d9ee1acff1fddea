using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>A plain table of a forecast, by days or by hours: chance, amount and temperatures.</summary>
internal sealed class ForecastTable(string file, TimeZoneInfo zone)
{
    private const string Chance = "chance_pct";

    internal WeatherForecast Read(string text)
    {
        WeatherTable.CheckLines(text, file);
        var table = CsvTable.Parse(file, text);
        string? time = table.Header.SingleOrDefault(h => h is "date" or "time");
        if (time is null || table.Rows.IsEmpty)
        {
            throw new DataFormatException(file, 1, time, "expected a column 'date' or 'time', and at least one row");
        }

        bool hasChance = table.Header.Contains(Chance);
        var columns = table.Header.Where(h => h != time && h != Chance).Select(h => Column(h, time == "date")).ToList();
        var forecast = time == "date" ? ByDays(table, columns, hasChance) : ByHours(table, columns, hasChance);
        var slots = forecast.Blocks.Select(b => b.Slot).ToList();
        double longest = WeatherConstants.All["longest-forecast"];
        return slots.Count == 0 || (slots.Max(s => s.End) - slots.Min(s => s.Start)).TotalDays <= longest
            ? forecast
            : throw new DataFormatException(
                file,
                1,
                time,
                FormattableString.Invariant($"the forecast reaches over more than {longest} days")
            );
    }

    private TableColumn Column(string header, bool isByDays)
    {
        var column = TableColumn.Find(header, out string problem) ?? throw new DataFormatException(file, 1, header, problem);
        bool isWanted = isByDays
            ? column.Quantity is TableQuantity.Rain or TableQuantity.High or TableQuantity.Low
            : column.Quantity is TableQuantity.Rain or TableQuantity.Temperature;
        string wanted = isByDays ? "rain, high and low" : "rain and temperature";
        return isWanted
            ? column
            : throw new DataFormatException(file, 1, header, $"a forecast of this sort holds {Chance}, {wanted} alone");
    }

    private WeatherForecast ByDays(CsvTable table, List<TableColumn> columns, bool hasChance)
    {
        var lines = new SortedDictionary<DateOnly, TypedForecastLine>();
        foreach (var row in table.Rows)
        {
            if (!IsoInterval.TryDate(row.Text("date"), "yyyy-MM-dd", out var date))
            {
                throw row.Problem("date", "expected a date such as 2013-09-03");
            }

            double? Of(TableQuantity quantity) => columns.Find(c => c.Quantity == quantity)?.Read(row);
            var (high, low) = (Of(TableQuantity.High), Of(TableQuantity.Low));
            if (low > high)
            {
                throw row.Problem("date", FormattableString.Invariant($"the low of {low} C is above the high of {high} C"));
            }

            var line = new TypedForecastLine
            {
                Date = date,
                Chance = hasChance && ChanceOf(row) is { } percent ? Fraction.FromPercent(percent) : null,
                Rain = Of(TableQuantity.Rain) is { } rain ? Length.FromMillimeters(rain) : null,
                High = high is { } highest ? Temperature.FromDegreesCelsius(highest) : null,
                Low = low is { } lowest ? Temperature.FromDegreesCelsius(lowest) : null,
            };
            if (!lines.TryAdd(date, line))
            {
                throw row.Problem("date", "the date stands twice");
            }
        }

        return WeatherForecast.FromLines([.. lines.Values], zone, file);
    }

    private WeatherForecast ByHours(CsvTable table, List<TableColumn> columns, bool hasChance)
    {
        SlotSeries Series(TableQuantity quantity) =>
            columns.Find(c => c.Quantity == quantity) is { } column ? From(table, column.Read) : SlotSeries.Empty;

        return new()
        {
            FileName = file,
            Blocks = RainBlocks.Cut(Series(TableQuantity.Rain), hasChance ? From(table, ChanceOf) : SlotSeries.Empty),
            Hourly = Series(TableQuantity.Temperature),
        };
    }

    private SlotSeries From(CsvTable table, Func<CsvRow, double?> read) =>
        SlotSeries.From(
            from row in table.Rows
            let value = read(row)
            where value is not null
            let start = StartOf(row)
            select new SlotValue(new(start, start.AddHours(1)), value.Value, row.Line),
            file,
            "time"
        );

    private static double? ChanceOf(CsvRow row) =>
        row.NumberOrNull(Chance) is { } percent ? WeatherRanges.Check(percent, 0, 100, "%", p => row.Problem(Chance, p)) : null;

    private static DateTimeOffset StartOf(CsvRow row) =>
        IsoInterval.TryMoment(row.Text("time"), out var moment)
            ? moment
            : throw row.Problem("time", "expected the start of the hour with its offset, such as 2024-11-03T01:00-04:00");
}
