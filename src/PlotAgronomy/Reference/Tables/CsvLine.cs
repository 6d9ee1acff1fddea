using System.Text;

namespace PlotAgronomy.Reference;

/// <summary>Writes lines of comma-separated text (RFC 4180 quoting).</summary>
internal static class CsvLine
{
    internal static StringBuilder AppendCsvLine(this StringBuilder text, params IEnumerable<string> cells) =>
        text.AppendJoin(',', cells.Select(Quoted)).Append('\n');

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny("\",\n\r\uFEFF") >= 0 ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
}
