using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using System.Text;

namespace PlotAgronomy.Sheets;

/// <summary>Writes a sheet as one page that prints by itself: nothing is fetched, nothing runs, and black on white is
/// enough.</summary>
internal static class SheetHtmlWriter
{
    internal static string Write(FieldSheet sheet, bool showWork)
    {
        var page = new StringBuilder();
        page.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n")
            .Append(CultureInfo.InvariantCulture, $"<title>{Plain(sheet.Title)}</title>\n<style>\n{PageStyle.Text}</style>\n")
            .Append("</head>\n<body>\n<main>\n")
            .Append(CultureInfo.InvariantCulture, $"<h1>{Plain(sheet.Title)}</h1>\n");
        bool isBehind = false;
        foreach (var section in sheet.Printed(showWork))
        {
            if (section.Part == SheetPart.Back != isBehind)
            {
                isBehind = !isBehind;
                page.Append(isBehind ? "<div class=\"behind\">\n" : "</div>\n");
            }

            page.Append(CultureInfo.InvariantCulture, $"<section id=\"{Plain(section.Id)}\" class=\"{WordOf(section.Part)}\">\n")
                .Append(CultureInfo.InvariantCulture, $"<h2>{Plain(section.Heading)}</h2>\n");
            WriteBlocks(page, section.Blocks, showWork);
            page.Append("</section>\n");
        }

        page.Append(isBehind ? "</div>\n" : "");
        return page.Append("</main>\n</body>\n</html>\n").ToString();
    }

    /// <summary>Figures that follow one another share a table.</summary>
    private static void WriteBlocks(StringBuilder page, ImmutableArray<SheetBlock> blocks, bool showWork)
    {
        bool isOpen = false;
        foreach (var block in blocks)
        {
            if (block is SheetFigure != isOpen)
            {
                isOpen = !isOpen;
                page.Append(isOpen ? "<table class=\"figures\">\n" : "</table>\n");
            }

            WriteBlock(page, block, showWork);
        }

        page.Append(isOpen ? "</table>\n" : "");
    }

    private static void WriteBlock(StringBuilder page, SheetBlock block, bool showWork)
    {
        switch (block)
        {
            case SheetSentence sentence:
                page.Append(CultureInfo.InvariantCulture, $"<p>{Plain(sentence.Text)}</p>\n");
                break;
            case SheetRemarks remarks:
                page.Append("<table class=\"remarks\">\n");
                foreach (var remark in remarks.Remarks)
                {
                    page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{Plain(remark.Word)}</th>")
                        .Append(CultureInfo.InvariantCulture, $"<td>{Plain(remark.Text)}</td></tr>\n");
                }

                page.Append("</table>\n");
                break;
            case SheetSteps steps:
                page.Append("<ol>\n");
                foreach (string step in steps.Steps)
                {
                    page.Append(CultureInfo.InvariantCulture, $"<li>{Plain(step)}</li>\n");
                }

                page.Append("</ol>\n");
                break;
            case SheetTable table:
                WriteTable(page, table, showWork);
                break;
            case SheetFigure figure:
                WriteFigure(page, figure, showWork);
                break;
            case SheetDrawing drawing:
                page.Append(CultureInfo.InvariantCulture, $"<figure><img alt=\"{Plain(drawing.Caption)}\" ")
                    .Append("src=\"data:image/svg+xml;base64,")
                    .Append(Convert.ToBase64String(Encoding.UTF8.GetBytes(drawing.Svg)))
                    .Append(CultureInfo.InvariantCulture, $"\"/><figcaption>{Plain(drawing.Caption)}</figcaption></figure>\n");
                break;
            default:
                throw new InvalidOperationException($"No way to write {block.GetType().Name}.");
        }
    }

    private static void WriteTable(StringBuilder page, SheetTable table, bool showWork)
    {
        page.Append("<table class=\"rows\">\n<thead><tr>");
        foreach (string column in table.Columns)
        {
            page.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{Plain(column)}</th>");
        }

        page.Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            page.Append("<tr").Append(Coded(row.Figure)).Append('>');
            foreach (string cell in row.Cells)
            {
                page.Append(CultureInfo.InvariantCulture, $"<td>{Plain(cell)}</td>");
            }

            page.Append("</tr>\n");
        }

        page.Append("</tbody>\n</table>\n");
        var worked = showWork ? table.Rows.Select(r => r.Figure).OfType<SheetFigure>().ToImmutableArray() : [];
        WriteBlocks(page, [.. worked], showWork);
    }

    private static void WriteFigure(StringBuilder page, SheetFigure figure, bool showWork)
    {
        page.Append("<tr").Append(Coded(figure)).Append('>');
        page.Append(CultureInfo.InvariantCulture, $"<th scope=\"row\">{Plain(figure.Label)}</th><td>{Plain(figure.Value)}");
        foreach (var line in showWork ? figure.ShowWork() : [])
        {
            page.Append(CultureInfo.InvariantCulture, $"<br/><small>{Plain(line.ToString())}</small>");
        }

        page.Append("</td></tr>\n");
    }

    /// <summary>The code under which a number is explained: for programs and links, not for the reader in the field.</summary>
    private static string Coded(SheetFigure? figure) => figure is null ? "" : $" data-code=\"{Plain(figure.Code)}\"";

    private static string WordOf(SheetPart part) => part.ToString().ToLowerInvariant();

    private static string Plain(string text) => WebUtility.HtmlEncode(text);
}
