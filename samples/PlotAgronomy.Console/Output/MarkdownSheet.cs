using System.Globalization;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Output;

/// <summary>Writes a sheet as Markdown.</summary>
internal static class MarkdownSheet
{
    internal static void Write(TextWriter writer, FieldSheet sheet, bool showWork)
    {
        writer.Write($"# {sheet.Title}\n");
        foreach (var section in sheet.Sections)
        {
            writer.Write($"\n## {section.Heading}\n");
            SheetBlock? before = null;
            foreach (var block in section.Blocks)
            {
                if (block is not SheetFigure || before is not SheetFigure)
                {
                    writer.Write("\n");
                }

                WriteBlock(writer, block, showWork);
                before = block;
            }
        }
    }

    private static void WriteBlock(TextWriter writer, SheetBlock block, bool showWork)
    {
        switch (block)
        {
            case SheetSentence sentence:
                writer.Write($"{sentence.Text}\n");
                break;
            case SheetRemarks remarks:
                foreach (var remark in remarks.Remarks)
                {
                    writer.Write($"- **{remark.Word}** {remark.Text}\n");
                }

                break;
            case SheetSteps steps:
                for (int i = 0; i < steps.Steps.Length; i++)
                {
                    writer.Write(string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {steps.Steps[i]}\n"));
                }

                break;
            case SheetTable table:
                int width = table.Columns.Length + (table.HasCodes ? 1 : 0);
                writer.Write(Row(table.HasCodes ? "" : null, table.Columns));
                writer.Write($"|{string.Concat(Enumerable.Repeat("---|", width))}\n");
                foreach (var row in table.Rows)
                {
                    writer.Write(Row(table.HasCodes ? $"**{row.Figure?.Code}**" : null, row.Cells));
                }

                foreach (var figure in showWork ? table.Rows.Select(r => r.Figure).OfType<SheetFigure>() : [])
                {
                    writer.Write("\n");
                    WriteBlock(writer, figure, showWork);
                }

                break;
            case SheetFigure figure:
                writer.Write($"- **{figure.Code}** {figure.Label}: {figure.Value}\n");
                if (showWork)
                {
                    foreach (var line in figure.ShowWork())
                    {
                        writer.Write($"  - {line}\n");
                    }
                }

                break;
            default:
                throw new InvalidOperationException($"No way to write {block.GetType().Name}.");
        }
    }

    /// <summary>A row of a table, its code before the cells; null where the table has no codes.</summary>
    private static string Row(string? code, IEnumerable<string> cells)
    {
        string lead = code switch
        {
            null => "",
            "" => " |",
            _ => $" {code} |",
        };
        return $"|{lead} {string.Join(" | ", cells.Select(Cell))} |\n";
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
