using System.Text;

namespace PlotAgronomy.Record;

/// <summary>Plain CSV of its own: the record must not lean on the code it watches.</summary>
internal static class CsvLine
{
    internal static string Write(params ReadOnlySpan<string> cells)
    {
        var line = new StringBuilder();
        for (int i = 0; i < cells.Length; i++)
        {
            line.Append(i == 0 ? "" : ",").Append(Quoted(cells[i]));
        }

        return line.ToString();
    }

    internal static IEnumerable<string[]> ReadAll(TextReader reader, string heading)
    {
        int width = heading.Split(',').Length;
        if (reader.ReadLine() != heading)
        {
            throw new InvalidDataException($"Expected the heading '{heading}'.");
        }

        while (reader.ReadLine() is { } line)
        {
            while (line.Count(c => c == '"') % 2 == 1)
            {
                line += "\n" + (reader.ReadLine() ?? throw new InvalidDataException("A quotation does not end."));
            }

            string[] cells = Split(line);
            yield return cells.Length == width ? cells : throw new InvalidDataException($"Expected {width} cells: {line}");
        }
    }

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(",\"\n\r") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private static string[] Split(string line)
    {
        if (!line.Contains('"'))
        {
            return line.Split(',');
        }

        var cells = new List<string>();
        var cell = new StringBuilder();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            if (line[i] == '"')
            {
                bool doubled = quoted && i + 1 < line.Length && line[i + 1] == '"';
                if (doubled)
                {
                    cell.Append('"');
                    i++;
                }
                else
                {
                    quoted = !quoted;
                }
            }
            else if (line[i] == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(line[i]);
            }
        }

        cells.Add(cell.ToString());
        return [.. cells];
    }
}
