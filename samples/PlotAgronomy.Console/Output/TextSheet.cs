using System.Collections.Immutable;
using PlotAgronomy.Sheets;
using Spectre.Console;

namespace PlotAgronomy.Sample.Output;

/// <summary>Writes a sheet for a terminal: plain rows, readable in black and white.</summary>
internal static class TextSheet
{
    internal static void Write(IAnsiConsole console, FieldSheet sheet, bool showWork)
    {
        console.WriteLine(sheet.Title);
        console.WriteLine(new string('=', Math.Min(sheet.Title.Length, console.Profile.Width)));
        foreach (var section in sheet.Sections)
        {
            console.WriteLine();
            console.WriteLine(section.Heading);
            console.WriteLine(new string('-', section.Heading.Length));
            WriteBlocks(console, section, showWork);
        }
    }

    private static void WriteBlocks(IAnsiConsole console, SheetSection section, bool showWork)
    {
        var figures = new List<SheetFigure>();
        foreach (var block in section.Blocks)
        {
            if (block is SheetFigure figure)
            {
                figures.Add(figure);
                continue;
            }

            WriteFigures(console, figures, showWork);
            switch (block)
            {
                case SheetSentence sentence:
                    console.Write(new Padder(new Text(sentence.Text), new Padding(0, 0, 0, 0)));
                    break;
                case SheetRemarks remarks:
                    var list = new Grid()
                        .AddColumn(new GridColumn().NoWrap().PadLeft(2).PadRight(1))
                        .AddColumn(new GridColumn().PadLeft(0).PadRight(0));
                    foreach (var remark in remarks.Remarks)
                    {
                        list.AddRow(new Text(remark.Word), new Text(remark.Text));
                    }

                    console.Write(list);
                    break;
                case SheetSteps steps:
                    var grid = new Grid()
                        .AddColumn(new GridColumn().NoWrap().PadLeft(2).PadRight(1))
                        .AddColumn(new GridColumn().PadLeft(0).PadRight(0));
                    for (int i = 0; i < steps.Steps.Length; i++)
                    {
                        grid.AddRow(
                            new Text($"{(i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)}."),
                            new Text(steps.Steps[i])
                        );
                    }

                    console.Write(grid);
                    break;
                case SheetTable table:
                    WriteTable(console, table, showWork);
                    break;
                default:
                    throw new InvalidOperationException($"No way to write {block.GetType().Name}.");
            }
        }

        WriteFigures(console, figures, showWork);
    }

    private static void WriteFigures(IAnsiConsole console, List<SheetFigure> figures, bool showWork)
    {
        if (figures.Count == 0)
        {
            return;
        }

        var grid = new Grid()
            .AddColumn(new GridColumn().NoWrap().PadLeft(2).PadRight(1))
            .AddColumn(new GridColumn().PadLeft(0).PadRight(2))
            .AddColumn(new GridColumn().PadLeft(0).PadRight(0));
        foreach (var figure in figures)
        {
            grid.AddRow(new Text(figure.Code), new Text(figure.Label), new Text(figure.Value));
            if (showWork)
            {
                foreach (var line in figure.ShowWork())
                {
                    grid.AddRow(
                        new Text(""),
                        new Text($"  {line.Label}"),
                        new Text($"{line.Formula} = {line.Numbers}{SourceOf(line)}")
                    );
                }
            }
        }

        console.Write(grid);
        figures.Clear();
    }

    private static void WriteTable(IAnsiConsole console, SheetTable table, bool showWork)
    {
        ImmutableArray<string> columns = table.HasCodes ? ["", .. table.Columns] : table.Columns;
        var rows = table.Rows.Select(r => table.HasCodes ? [r.Figure?.Code ?? "", .. r.Cells] : r.Cells).ToList();
        var laid = new Table { Border = TableBorder.Simple };
        for (int i = 0; i < columns.Length; i++)
        {
            int column = i;
            var head = new TableColumn(new Text(columns[i]));
            laid.AddColumn(rows.All(r => LooksLikeNumber(r[column])) ? head.RightAligned() : head);
        }

        foreach (var row in rows)
        {
            laid.AddRow(row.Select(cell => new Text(cell)));
        }

        console.Write(laid);
        if (showWork)
        {
            WriteFigures(console, [.. table.Rows.Select(r => r.Figure).OfType<SheetFigure>()], showWork);
        }
    }

    private static string SourceOf(WorkedLine line) => line.Origin is null ? "" : $" [{line.Origin}]";

    private static bool LooksLikeNumber(string cell) => cell.Length == 0 || char.IsAsciiDigit(cell[0]) || cell == "-";
}
