using System.Globalization;
using System.Text;

namespace PlotAgronomy.Sheets;

/// <summary>Writes a sheet as plain rows for a terminal or a printer, readable in black and white.</summary>
internal sealed class SheetTextWriter(int width, bool showWork)
{
    private const char Rule = '\u2500';

    private readonly StringBuilder page = new();

    /// <summary>The front is read in the field; its codes stand with the working.</summary>
    private bool showsCodes = true;

    /// <summary>A sheet of few pages spends no lines on blanks and rules.</summary>
    private bool isTight;

    internal static string Write(FieldSheet sheet, int width, bool showWork)
    {
        var writer = new SheetTextWriter(width, showWork);
        writer.Write(sheet);
        return writer.page.ToString();
    }

    private void Write(FieldSheet sheet)
    {
        Say(sheet.Title);
        Line(new string('=', Math.Min(TextWidth.Of(sheet.Title), width)));
        foreach (var section in sheet.Printed(showWork))
        {
            showsCodes = section.ShowsCodes(showWork);
            isTight = section.Part != SheetPart.Body;
            Head(section.Heading);
            WriteBlocks(section);
        }
    }

    /// <summary>Figures that follow one another share their columns.</summary>
    private void WriteBlocks(SheetSection section)
    {
        var figures = new List<SheetFigure>();
        foreach (var block in section.Blocks)
        {
            if (block is SheetFigure figure)
            {
                figures.Add(figure);
                continue;
            }

            WriteFigures(figures);
            figures.Clear();
            WriteBlock(block);
        }

        WriteFigures(figures);
    }

    private void Head(string heading)
    {
        Line("");
        if (isTight && TextWidth.Of(heading) + 1 is var taken && taken < width)
        {
            Line($"{heading} {new string(Rule, width - taken)}");
            return;
        }

        Say(heading);
        Say(new string('-', TextWidth.Of(heading)));
    }

    private void Gap()
    {
        if (!isTight)
        {
            Line("");
        }
    }

    private void WriteBlock(SheetBlock block)
    {
        switch (block)
        {
            case SheetSentence sentence:
                Say(sentence.Text);
                break;
            case SheetRemarks remarks:
                WriteList(remarks.Remarks.Select(r => (r.Word, r.Text)));
                break;
            case SheetSteps steps:
                WriteList(steps.Steps.Select((step, i) => (string.Create(CultureInfo.InvariantCulture, $"{i + 1}."), step)));
                break;
            case SheetTable table:
                WriteTable(table);
                break;
            case SheetDrawing drawing:
                Say(drawing.Caption);
                break;
            default:
                throw new InvalidOperationException($"No way to write {block.GetType().Name}.");
        }
    }

    private void WriteList(IEnumerable<(string Word, string Text)> items)
    {
        var list = new TextGrid(new(2, 1, MayWrap: false), new(0, 0));
        foreach (var (word, text) in items)
        {
            list.Add(word, text);
        }

        Lines(list.Lines(width));
    }

    private void WriteFigures(IEnumerable<SheetFigure> figures)
    {
        var grid = new TextGrid(new(2, 1, MayWrap: false), new(0, 2), new(0, 0));
        foreach (var figure in figures)
        {
            grid.Add(showsCodes ? figure.Code : "", figure.Label, figure.Value);
            if (!showWork)
            {
                continue;
            }

            foreach (var line in figure.ShowWork())
            {
                grid.Add("", $"  {line.Label}", $"{line.Formula} = {line.Numbers}{line.Place}");
            }
        }

        Lines(grid.Lines(width));
    }

    /// <summary>A code stands above its row, so that it takes no room from the cells.</summary>
    private void WriteTable(SheetTable table)
    {
        bool hasCodes = showsCodes && table.HasCodes;
        int indent = hasCodes ? 4 : 2;
        var grid = new TextGrid([
            .. table.Columns.Select(
                (_, i) =>
                    new TextGrid.Column(
                        i == 0 ? indent
                            : isTight ? 0
                            : 1,
                        2,
                        AlignsRight: table.Rows.All(r => LooksLikeNumber(r.Cells[i]))
                    )
            ),
        ]);
        grid.Add(table.Columns);
        foreach (var row in table.Rows)
        {
            grid.Add(row.Cells);
        }

        var laid = grid.LinesOfRows(width, out int used);
        Gap();
        Lines(laid[0]);
        Line(new string(Rule, used));
        foreach (var (row, lines) in table.Rows.Zip(laid.Skip(1)))
        {
            if (hasCodes && row.Figure is { } figure)
            {
                Say($"  {figure.Code}");
            }

            Lines(lines);
        }

        Gap();
        if (showWork)
        {
            WriteFigures(table.Rows.Select(r => r.Figure).OfType<SheetFigure>());
        }
    }

    private void Say(string text) => Lines(TextWrap.Lines(text, width));

    private void Lines(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            Line(line);
        }
    }

    private void Line(string line) => page.Append(line.TrimEnd()).Append('\n');

    private static bool LooksLikeNumber(string cell) => cell.Length == 0 || char.IsAsciiDigit(cell[0]) || cell == "-";
}
