using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.Reference;

/// <summary>One row of a table; every getter names file, line and field when the text is not what it should be.</summary>
internal sealed class CsvRow(CsvColumns columns, int line, ImmutableArray<string> fields)
{
    internal int Line => line;

    internal string Text(string column) =>
        Raw(column) is { Length: > 0 } text ? text : throw Problem(column, "must not be empty");

    internal string? TextOrNull(string column) => Raw(column) is { Length: > 0 } text ? text : null;

    internal double Number(string column) => Parse(column, Text(column));

    internal double? NumberOrNull(string column) => TextOrNull(column) is { } text ? Parse(column, text) : null;

    internal int Integer(string column) =>
        int.TryParse(Text(column), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value)
            ? value
            : throw Problem(column, "expected a whole number");

    /// <summary>A value of an enumeration, its name in lower case with hyphens between the words: <c>mehlich-3</c>.</summary>
    internal T Choice<T>(string column)
        where T : struct, Enum => Choice<T>(column, Text(column));

    internal T? ChoiceOrNull<T>(string column)
        where T : struct, Enum => TextOrNull(column) is { } word ? Choice<T>(column, word) : null;

    /// <summary>Values of an enumeration, parted by semicolons; none in an empty cell.</summary>
    internal ImmutableArray<T> Choices<T>(string column)
        where T : struct, Enum => [.. List(column).Select(word => Choice<T>(column, word))];

    /// <summary>Words parted by semicolons; none in an empty cell.</summary>
    internal ImmutableArray<string> List(string column) => TextOrNull(column) is { } text ? [.. text.Split(';')] : [];

    /// <summary>Numbers parted by semicolons; none in an empty cell.</summary>
    internal ImmutableArray<double> Numbers(string column) => [.. List(column).Select(number => Parse(column, number))];

    internal bool YesOrNo(string column) =>
        Text(column) switch
        {
            "yes" => true,
            "no" => false,
            _ => throw Problem(column, "expected yes or no"),
        };

    internal DataStatus Status(string column = "status") => Choice<DataStatus>(column);

    /// <summary>Ids of the sources, place and status, or none where all three are left empty; a number that was seen must
    /// have a place in its publication, or in the one that quotes it.</summary>
    internal (string SourceIds, string Locator, DataStatus Status)? OriginCells()
    {
        if ((TextOrNull("source_id") ?? TextOrNull("locator") ?? TextOrNull("status")) is null)
        {
            return null;
        }

        var status = Status();
        return (Text("source_id"), DataStatuses.IsSeen(status) ? Text("locator") : TextOrNull("locator") ?? "", status);
    }

    internal DataFormatException Problem(string column, string problem) => new(columns.Table, line, column, problem);

    internal T Choice<T>(string column, string word)
        where T : struct, Enum =>
        EnumCells<T>.TryFind(word, out var value)
            ? value
            : throw Problem(column, $"expected one of {string.Join(", ", EnumCells<T>.Words)}, found '{word}'");

    private string Raw(string column) => fields[columns.Read(column, line)];

    private double Parse(string column, string text) =>
        double.TryParse(
            text,
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture,
            out double value
        ) && double.IsFinite(value)
            ? value
            : throw Problem(column, $"expected a number, found '{text}'");
}
