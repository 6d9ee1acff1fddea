using System.Globalization;

namespace PlotAgronomy.Map.Printing;

/// <summary>Columns of plain text: words to the left, numbers to the right.</summary>
internal static class TextTable
{
    internal static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    internal static IEnumerable<string> Lay(IReadOnlyList<string> head, IEnumerable<IReadOnlyList<string>> rows)
    {
        var body = rows.ToList();
        var widths = head.Select((title, column) => body.Select(row => row[column].Length).Append(title.Length).Max()).ToList();
        var isNumber = head.Select((_, column) => body.TrueForAll(row => row[column].All(c => char.IsAsciiDigit(c) || c == '-'))).ToList();
        return body.Prepend(head).Select(row =>
            string.Join("  ", row.Select((cell, column) => isNumber[column] ? cell.PadLeft(widths[column]) : cell.PadRight(widths[column]))).TrimEnd());
    }
}
