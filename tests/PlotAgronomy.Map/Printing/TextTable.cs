using System.Globalization;

namespace PlotAgronomy.Map.Printing;

/// <summary>Columns of plain text: words to the left, numbers to the right.</summary>
internal static class TextTable
{
    internal const int WidestLine = 130;

    internal static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>One line a row; what the last column cannot hold goes on below it.</summary>
    internal static IEnumerable<string> Lay(IReadOnlyList<string> head, IEnumerable<IReadOnlyList<string>> rows)
    {
        var body = rows.ToList();
        var widths = head.Select((title, column) => body.Select(row => row[column].Length).Append(title.Length).Max()).ToList();
        var numbers = head.Select((_, column) => body.TrueForAll(row => IsNumber(row[column]))).ToList();
        int indent = widths.SkipLast(1).Sum(width => width + 2);
        return body.Prepend(head).SelectMany(row =>
            Wrap(string.Join("  ", row.Select((cell, column) => Pad(cell, widths[column], numbers[column]))).TrimEnd(), indent));
    }

    /// <summary>A text no longer than a width; dots stand for what is left out.</summary>
    internal static string Shorten(string text, int width) => text.Length <= width ? text : $"{text[..(width - 3)]}...";

    private static IEnumerable<string> Wrap(string line, int indent)
    {
        while (line.Length > WidestLine && line.LastIndexOf(' ', WidestLine) is var gap && gap > indent)
        {
            yield return line[..gap];
            line = new string(' ', indent) + line[(gap + 1)..];
        }

        yield return line;
    }

    private static bool IsNumber(string cell) => cell.All(c => char.IsAsciiDigit(c) || c == '-');

    private static string Pad(string cell, int width, bool toTheRight) => toTheRight ? cell.PadLeft(width) : cell.PadRight(width);
}
