using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.Reference;

/// <summary>One row of a table; every getter names file, line and field when the text is not what it should be.</summary>
internal sealed class CsvRow(CsvTable table, int line, ImmutableArray<string> fields)
{
    internal int Line => line;

    internal string Text(string column) => Raw(column) is { Length: > 0 } text ? text : throw Problem(column, "must not be empty");

    internal string? TextOrNull(string column) => Raw(column) is { Length: > 0 } text ? text : null;

    internal double Number(string column) => Parse(column, Text(column));

    internal double? NumberOrNull(string column) => TextOrNull(column) is { } text ? Parse(column, text) : null;

    internal int Integer(string column) =>
        int.TryParse(Text(column), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value)
            ? value : throw Problem(column, "expected a whole number");

    internal T Choice<T>(string column) where T : struct, Enum =>
        Enum.TryParse(Text(column), ignoreCase: true, out T value) && Enum.IsDefined(value) && !char.IsAsciiDigit(Text(column)[0])
            ? value : throw Problem(column, $"expected one of {string.Join(", ", Enum.GetNames<T>())}");

    internal DataStatus Status(string column = "status") => Choice<DataStatus>(column);

    internal string SourceId() => Text("source_id");

    internal DataFormatException Problem(string column, string problem) => new(table.Name, line, column, problem);

    private string Raw(string column) => fields[table.IndexOf(column, line)];

    private double Parse(string column, string text) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
            ? value : throw Problem(column, $"expected a number, found '{text}'");
}
