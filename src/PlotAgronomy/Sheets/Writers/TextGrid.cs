using System.Text;

namespace PlotAgronomy.Sheets;

/// <summary>Rows of cells in columns, with blanks before and after each, wrapped to a width.</summary>
internal sealed class TextGrid(params TextGrid.Column[] columns)
{
    /// <summary>A column of cells.</summary>
    /// <param name="Before">Blanks before it.</param>
    /// <param name="After">Blanks after it.</param>
    /// <param name="MayWrap">Whether its text may be broken.</param>
    /// <param name="AlignsRight">Whether its text ends at the right.</param>
    internal sealed record Column(int Before, int After, bool MayWrap = true, bool AlignsRight = false);

    private readonly List<IReadOnlyList<string>> rows = [];

    internal void Add(params IReadOnlyList<string> cells) => rows.Add(cells);

    /// <summary>Lays the rows out.</summary>
    /// <param name="width">Columns a line may have.</param>
    /// <param name="used">Columns the grid takes, blanks included.</param>
    /// <returns>The lines of each row, without blanks at their ends.</returns>
    internal List<List<string>> LinesOfRows(int width, out int used)
    {
        int blanks = columns.Sum(c => c.Before + c.After);
        int[] wanted = [.. columns.Select((_, i) => rows.Count == 0 ? 0 : rows.Max(r => TextWrap.Longest(r[i])))];
        int[] widths = ColumnWidths.Fit(wanted, [.. columns.Select(c => c.MayWrap)], width - blanks);
        used = widths.Sum() + blanks;
        return [.. rows.Select(r => LinesOf(r, widths))];
    }

    /// <summary>Lays the rows out, one below the other.</summary>
    internal IEnumerable<string> Lines(int width) => LinesOfRows(width, out _).SelectMany(lines => lines);

    private List<string> LinesOf(IReadOnlyList<string> row, int[] widths)
    {
        var cells = row.Select((text, i) => TextWrap.Lines(text, Math.Max(widths[i], 1))).ToList();
        int height = cells.Max(c => c.Count);
        return [.. Enumerable.Range(0, height).Select(line => Line(cells, widths, line))];
    }

    private string Line(List<List<string>> cells, int[] widths, int number)
    {
        var line = new StringBuilder();
        for (int i = 0; i < columns.Length; i++)
        {
            string text = number < cells[i].Count ? cells[i][number] : "";
            int blanks = Math.Max(widths[i] - TextWidth.Of(text), 0);
            line.Append(' ', columns[i].Before + (columns[i].AlignsRight ? blanks : 0))
                .Append(text)
                .Append(' ', columns[i].After + (columns[i].AlignsRight ? 0 : blanks));
        }

        return line.ToString().TrimEnd();
    }
}
