using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>A plain table of a forecast, by days or by hours: chance, amount and temperatures.</summary>
internal sealed class ForecastTable
{
    private const string Chance = "chance_pct";

    private readonly string file;
    private readonly CsvTable table;
    private readonly string time;
    private readonly bool hasChance;
    private readonly List<TableColumn> columns;

    internal ForecastTable(string text, string file)
    {
        this.file = file;
        WeatherTable.CheckLines(text, file);
        table = CsvTable.Parse(file, text);
        string? found = table.Header.SingleOrDefault(h => h is "date" or "time");
        if (found is null || table.Rows.IsEmpty)
        {
            throw new DataFormatException(file, 1, found, "expected a column 'date' or 'time', and at least one row");
        }

        time = found;
        hasChance = table.Header.Contains(Chance);
        columns = [.. table.Header.Where(h => h != time && h != Chance).Select(h => Column(h, IsByDays))];
    }

    internal bool IsByDays => time == "date";

    /// <summary>No forecast reaches that far.</summary>
    internal void CheckReach(ImmutableArray<RainBlock> blocks)
    {
        double longest = WeatherConstants.All["longest-forecast"];
        if (blocks.IsEmpty || (blocks.Max(b => b.Slot.End) - blocks.Min(b => b.Slot.Start)).TotalDays <= longest)
        {
            return;
        }

        throw new DataFormatException(
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

    /// <summary>The rows of a table by days.</summary>
    internal ImmutableArray<TypedForecastLine> Days()
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

        return [.. lines.Values];
    }

    /// <summary>Rain and temperatures of a table by hours.</summary>
    internal (ImmutableArray<RainBlock> Rain, SlotSeries Temperatures) Hours() =>
        (
            RainBlocks.Cut(Series(TableQuantity.Rain), hasChance ? From(ChanceOf) : SlotSeries.Empty),
            Series(TableQuantity.Temperature)
        );

    private SlotSeries Series(TableQuantity quantity) =>
        columns.Find(c => c.Quantity == quantity) is { } column ? From(column.Read) : SlotSeries.Empty;

    private SlotSeries From(Func<CsvRow, double?> read) =>
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
