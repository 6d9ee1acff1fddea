using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>One row of a kind's file. Each getter wants the cells it does not read to be empty, so that nothing is passed
/// over.</summary>
internal sealed class KindObservation
{
    private const string WindowFigure = "planting-window";
    private const string AsideMark = "aside: ";

    private readonly CsvRow row;
    private readonly string? low;
    private readonly string? high;
    private readonly string? unit;
    private readonly string? note;

    internal KindObservation(CsvRow row)
    {
        this.row = row;
        Figure = row.Text("figure");
        Method = row.TextOrNull("method");
        low = row.TextOrNull("low");
        high = row.TextOrNull("high");
        unit = row.TextOrNull("unit");
        note = row.TextOrNull("note");
        Locator = row.TextOrNull("locator");
        Status = row.Status();
        Purpose = row.ChoiceOrNull<SeedPurpose>("purpose");
        string? region = row.TextOrNull("region");
        RequireEmpty("region", IsPlantingWindow ? null : region);
    }

    internal string Figure { get; }

    internal string? Method { get; }

    /// <summary>Place in the publication; planting dates may go without.</summary>
    internal string? Locator { get; }

    internal DataStatus Status { get; }

    /// <summary>What it is printed for; null where the publication does not say.</summary>
    internal SeedPurpose? Purpose { get; }

    /// <summary>Whether it is kept but does not speak; the note gives the reason.</summary>
    internal bool IsAside => note?.StartsWith(AsideMark, StringComparison.Ordinal) == true;

    internal int Line => row.Line;

    internal bool IsPlantingWindow => Figure == WindowFigure;

    internal Origin Origin => row.Origin();

    internal ImmutableArray<Source> Sources => row.Sources();

    /// <summary>A number alone.</summary>
    internal double Number(string expectedUnit)
    {
        RequireUnit(expectedUnit);
        RequireEmpty("high", high);
        RequireEmpty("note", IsAside ? null : note);
        return row.Number("low");
    }

    /// <summary>A whole number alone, without a unit.</summary>
    internal int Count()
    {
        RequireEmpty("high", high);
        RequireEmpty("unit", unit);
        RequireEmpty("note", note);
        return row.Integer("low");
    }

    /// <summary>A range of numbers alone.</summary>
    internal (double Low, double High) Range(string expectedUnit)
    {
        RequireEmpty("note", note);
        return Numbers(expectedUnit);
    }

    /// <summary>A range of numbers in one of several units; beside it at most the reason why it is set aside.</summary>
    internal (double Low, double High, string Unit) Printed(ReadOnlySpan<string> units)
    {
        RequireEmpty("note", IsAside ? null : note);
        string found = unit is not null && units.Contains(unit) ? unit : units[0];
        var (from, to) = Numbers(found);
        return (from, to, found);
    }

    /// <summary>The ends of a range as whole numbers.</summary>
    internal void RequireWhole() => (_, _) = (row.Integer("low"), row.Integer("high"));

    /// <summary>Says the same of the same place as another row.</summary>
    internal bool Repeats(KindObservation other) =>
        (Method, Purpose, low, high, unit, note, Locator)
            == (other.Method, other.Purpose, other.low, other.high, other.unit, other.note, other.Locator)
        && Sources.SequenceEqual(other.Sources);

    /// <summary>A range of numbers, or neither, beside words.</summary>
    internal (double Low, double High)? RangeBesideWords(string expectedUnit)
    {
        if (low is not null)
        {
            return Numbers(expectedUnit);
        }

        RequireEmpty("high", high);
        RequireEmpty("unit", unit);
        return null;
    }

    /// <summary>Words beside a range.</summary>
    internal string WordsBesideRange() => row.Text("note");

    /// <summary>Words alone.</summary>
    internal string Words()
    {
        RequireNoNumber();
        return row.Text("note");
    }

    /// <summary>Two texts alone, parted by the first colon.</summary>
    internal (string First, string Second) TwoWords()
    {
        string[] parts = Words().Split(": ", 2);
        return parts.Length == 2 ? (parts[0], parts[1]) : throw Problem("note", "expected two texts, parted by a colon");
    }

    /// <summary>A value of an enumeration alone.</summary>
    internal T Word<T>()
        where T : struct, Enum
    {
        RequireNoNumber();
        return row.Choice<T>("note");
    }

    internal bool YesOrNo()
    {
        RequireNoNumber();
        return row.YesOrNo("note");
    }

    /// <summary>The method as a value of an enumeration.</summary>
    internal T MethodOf<T>()
        where T : struct, Enum => row.Choice<T>("method");

    /// <summary>The region, as who knows regions reads it.</summary>
    internal T Region<T>(Func<CsvRow, string, T> read) => read(row, "region");

    /// <summary>What a planting window means.</summary>
    internal T Rule<T>()
        where T : struct, Enum => row.Choice<T>("note");

    /// <summary>Whether a planting window names months only.</summary>
    internal bool IsMonthsOnly => MonthDay.IsMonthsOnly(unit);

    internal (int Month, int Day)? FirstDay() => MonthDay.Read(row, "low", low, unit);

    internal (int Month, int Day)? LastDay() => MonthDay.Read(row, "high", high, unit);

    internal DataFormatException Problem(string column, string problem) => row.Problem(column, problem);

    private (double Low, double High) Numbers(string expectedUnit)
    {
        RequireUnit(expectedUnit);
        var range = (Low: row.Number("low"), High: row.Number("high"));
        return range.Low <= range.High ? range : throw Problem("high", "must not be below the low end");
    }

    private void RequireUnit(string expected)
    {
        if (unit != expected)
        {
            throw Problem("unit", $"expected '{expected}', found '{unit}'");
        }
    }

    private void RequireNoNumber()
    {
        RequireEmpty("purpose", Purpose?.ToString());
        RequireEmpty("low", low);
        RequireEmpty("high", high);
        RequireEmpty("unit", unit);
    }

    private void RequireEmpty(string column, string? text)
    {
        if (text is not null)
        {
            throw Problem(column, $"must be empty for '{Figure}', found '{text}'");
        }
    }
}
