using System.Globalization;
using System.Text;

namespace PlotAgronomy.Sheets;

/// <summary>Writes a sheet as Markdown.</summary>
internal static class SheetMarkdownWriter
{
    internal static string Write(FieldSheet sheet, bool showWork)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"# {sheet.Title}\n");
        foreach (var section in sheet.Printed(showWork))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {section.Heading}\n");
            SheetBlock? before = null;
            foreach (var block in section.Blocks)
            {
                if (block is not SheetFigure || before is not SheetFigure)
                {
                    page.Append('\n');
                }

                WriteBlock(page, block, showWork, section.ShowsCodes(showWork));
                before = block;
            }
        }

        return page.ToString();
    }

    private static void WriteBlock(StringBuilder page, SheetBlock block, bool showWork, bool showsCodes)
    {
        switch (block)
        {
            case SheetSentence sentence:
                page.Append(CultureInfo.InvariantCulture, $"{sentence.Text}\n");
                break;
            case SheetRemarks remarks:
                foreach (var remark in remarks.Remarks)
                {
                    page.Append(CultureInfo.InvariantCulture, $"- **{remark.Word}** {remark.Text}\n");
                }

                break;
            case SheetSteps steps:
                for (int i = 0; i < steps.Steps.Length; i++)
                {
                    page.Append(CultureInfo.InvariantCulture, $"{i + 1}. {steps.Steps[i]}\n");
                }

                break;
            case SheetTable table:
                bool hasCodes = showsCodes && table.HasCodes;
                int width = table.Columns.Length + (hasCodes ? 1 : 0);
                page.Append(Row(hasCodes ? "" : null, table.Columns));
                page.Append(CultureInfo.InvariantCulture, $"|{string.Concat(Enumerable.Repeat("---|", width))}\n");
                foreach (var row in table.Rows)
                {
                    page.Append(Row(hasCodes ? $"**{row.Figure?.Code}**" : null, row.Cells));
                }

                foreach (var figure in showWork ? table.Rows.Select(r => r.Figure).OfType<SheetFigure>() : [])
                {
                    page.Append('\n');
                    WriteBlock(page, figure, showWork, showsCodes);
                }

                break;
            case SheetDrawing drawing:
                page.Append(CultureInfo.InvariantCulture, $"{drawing.Caption}\n");
                break;
            case SheetFigure figure:
                page.Append(showsCodes ? $"- **{figure.Code}** " : "- ");
                page.Append(CultureInfo.InvariantCulture, $"{figure.Label}: {figure.Value}\n");
                if (showWork)
                {
                    foreach (var line in figure.ShowWork())
                    {
                        page.Append(CultureInfo.InvariantCulture, $"  - {line}\n");
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
