using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>A plain table of daily or hourly values with a header that names each unit.</summary>
internal sealed class WeatherTable(string file)
{
    internal ImmutableArray<WeatherDay> Read(string text, TimeZoneInfo? zone)
    {
        CheckLines(text, file);
        var table = CsvTable.Parse(file, text);
        string? time = table.Header.SingleOrDefault(h => h is "date" or "time");
        if (time is null || table.Rows.IsEmpty)
        {
            throw new DataFormatException(file, 1, time, "expected a column 'date' or 'time', and at least one row");
        }

        ImmutableArray<TableColumn> columns = [.. table.Header.Where(h => h != time).Select(h => Column(h))];
        return time == "date" ? Daily(table, columns)
            : zone is null
                ? throw new DataFormatException(file, 1, time, "hours are summed to days of a time zone: hand in the zone")
            : Hourly(table, columns, zone);
    }

    internal static void CheckLines(string text, string file)
    {
        int most = (int)WeatherConstants.All["most-values"];
        if (text.AsSpan().Count('\n') > most)
        {
            throw new DataFormatException(file, most, null, FormattableString.Invariant($"more than {most} lines"));
        }
    }

    private TableColumn Column(string header) =>
        TableColumn.Find(header, out string problem) ?? throw new DataFormatException(file, 1, header, problem);

    private ImmutableArray<WeatherDay> Daily(CsvTable table, ImmutableArray<TableColumn> columns)
    {
        var days = new SortedDictionary<DateOnly, WeatherDay>();
        foreach (var row in table.Rows)
        {
            if (!IsoInterval.TryDate(row.Text("date"), "yyyy-MM-dd", out var date))
            {
                throw row.Problem("date", "expected a date such as 2013-09-03");
            }

            var draft = new DayDraft(file, row.Line);
            foreach (var column in columns)
            {
                Put(draft, column, row);
            }

            if (!days.TryAdd(date, draft.Day(date)))
            {
                throw row.Problem("date", "the date stands twice");
            }
        }

        return [.. days.Values];
    }

    private static void Put(DayDraft day, TableColumn column, CsvRow row)
    {
        double? value = column.Read(row);
        switch (column.Quantity)
        {
            case TableQuantity.Rain:
                day.Rain = value;
                break;
            case TableQuantity.High:
                day.High = value;
                break;
            case TableQuantity.Low:
                day.Low = value;
                break;
            case TableQuantity.DewPoint:
                day.DewPoint = value;
                break;
            case TableQuantity.HighestHumidity:
                day.HighestHumidity = value;
                break;
            case TableQuantity.LowestHumidity:
                day.LowestHumidity = value;
                break;
            case TableQuantity.Wind:
                day.Wind = value;
                break;
            case TableQuantity.Sunshine:
                day.SunshineHours = value;
                break;
            case TableQuantity.Solar:
                day.Solar = value;
                break;
            default:
                throw row.Problem(column.Header, "a day has a high and a low; this column belongs to a table by hours");
        }
    }

    /// <summary>A day has its sum, high and low where every hour of it is known: 23 or 25 hours where the clock
    /// changes.</summary>
    private ImmutableArray<WeatherDay> Hourly(CsvTable table, ImmutableArray<TableColumn> columns, TimeZoneInfo zone)
    {
        var times = table.Rows.Select(row => (Row: row, Start: StartOf(row))).OrderBy(t => t.Start).ToList();
        var series = columns.ToDictionary(c => c.Quantity, c => Series(times, c));
        var dates = times.Select(t => TimeSlot.DateAt(t.Start, zone)).Distinct();
        return [.. dates.Select(date => DayOf(date, TimeSlot.OfDate(date, zone), series))];
    }

    private WeatherDay DayOf(DateOnly date, TimeSlot slot, Dictionary<TableQuantity, SlotSeries> series)
    {
        SlotSeries? Whole(TableQuantity quantity) =>
            series.TryGetValue(quantity, out var known) && known.Covers(slot) ? known : null;

        var draft = new DayDraft(file, 1)
        {
            Rain = Whole(TableQuantity.Rain)?.Sum(slot),
            High = Whole(TableQuantity.Temperature)?.Highest(slot),
            Low = Whole(TableQuantity.Temperature)?.Lowest(slot),
            DewPoint = Whole(TableQuantity.DewPoint)?.Mean(slot),
            HighestHumidity = Whole(TableQuantity.Humidity)?.Highest(slot),
            LowestHumidity = Whole(TableQuantity.Humidity)?.Lowest(slot),
            Wind = Whole(TableQuantity.Wind)?.Mean(slot),
            SunshineHours = Whole(TableQuantity.Sunshine)?.Sum(slot),
            Solar = Whole(TableQuantity.Solar)?.Sum(slot),
        };
        return draft.Day(date);
    }

    private SlotSeries Series(IReadOnlyList<(CsvRow Row, DateTimeOffset Start)> times, TableColumn column) =>
        column.Quantity
            is TableQuantity.High
                or TableQuantity.Low
                or TableQuantity.HighestHumidity
                or TableQuantity.LowestHumidity
            ? throw new DataFormatException(
                file,
                1,
                column.Header,
                "an hour has one value; this column belongs to a table by days"
            )
            : SlotSeries.From(
                from t in times
                let value = column.Read(t.Row)
                where value is not null
                select new SlotValue(new(t.Start, t.Start.AddHours(1)), value.Value, t.Row.Line),
                file,
                "time"
            );

    private static DateTimeOffset StartOf(CsvRow row) =>
        IsoInterval.TryMoment(row.Text("time"), out var moment)
            ? moment
            : throw row.Problem("time", "expected the start of the hour with its offset, such as 2024-11-03T01:00-04:00");
}
