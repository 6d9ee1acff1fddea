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
        var numbers = head.Select((_, column) => body.TrueForAll(row => IsNumber(row[column]))).ToList();
        return body.Prepend(head).Select(row =>
            string.Join("  ", row.Select((cell, column) => Pad(cell, widths[column], numbers[column]))).TrimEnd());
    }

    private static bool IsNumber(string cell) => cell.All(c => char.IsAsciiDigit(c) || c == '-');

    private static string Pad(string cell, int width, bool toTheRight) => toTheRight ? cell.PadLeft(width) : cell.PadRight(width);
}
