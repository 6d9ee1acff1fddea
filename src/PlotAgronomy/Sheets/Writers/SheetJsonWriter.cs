using System.Buffers;
using System.Text;
using System.Text.Json;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Sheets;

/// <summary>Writes a sheet as JSON for other programs.</summary>
internal static class SheetJsonWriter
{
    internal static string Write(FieldSheet sheet, bool showWork)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            WriteSheet(json, sheet, showWork);
        }

        return $"{Encoding.UTF8.GetString(bytes.WrittenSpan)}\n";
    }

    private static void WriteSheet(Utf8JsonWriter json, FieldSheet sheet, bool showWork)
    {
        json.WriteStartObject();
        json.WriteNumber("sheetVersion", 1);
        json.WriteString("dataVersion", SourceCatalog.DataVersion);
        json.WriteString("title", sheet.Title);
        json.WriteStartArray("sections");
        foreach (var section in sheet.Sections)
        {
            json.WriteStartObject();
            json.WriteString("heading", section.Heading);
            json.WriteStartArray("blocks");
            foreach (var block in section.Blocks)
            {
                WriteBlock(json, block, showWork);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("findings");
        foreach (var finding in sheet.Findings)
        {
            json.WriteStartObject();
            json.WriteString("code", finding.Code);
            json.WriteString("severity", finding.Severity.ToString().ToLowerInvariant());
            json.WriteString("text", finding.Text);
            json.WriteString("sourceId", finding.Source.Id);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteBlock(Utf8JsonWriter json, SheetBlock block, bool showWork)
    {
        json.WriteStartObject();
        switch (block)
        {
            case SheetSentence sentence:
                json.WriteString("sentence", sentence.Text);
                break;
            case SheetRemarks remarks:
                WriteTexts(json, "remarks", remarks.Remarks.Select(r => $"{r.Word}: {r.Text}"));
                break;
            case SheetSteps steps:
                WriteTexts(json, "steps", steps.Steps);
                break;
            case SheetTable table:
                WriteTexts(json, "columns", table.Columns);
                json.WriteStartArray("rows");
                foreach (var row in table.Rows)
                {
                    json.WriteStartObject();
                    WriteTexts(json, "cells", row.Cells);
                    if (row.Figure is { } explained)
                    {
                        WriteFigure(json, explained, showWork);
                    }

                    json.WriteEndObject();
                }

                json.WriteEndArray();
                break;
            case SheetFigure figure:
                WriteFigure(json, figure, showWork);
                break;
            default:
                throw new InvalidOperationException($"No way to write {block.GetType().Name}.");
        }

        json.WriteEndObject();
    }

    private static void WriteFigure(Utf8JsonWriter json, SheetFigure figure, bool showWork)
    {
        json.WriteString("code", figure.Code);
        json.WriteString("label", figure.Label);
        json.WriteString("value", figure.Value);
        json.WriteString("status", figure.Status.ToString().ToLowerInvariant());
        WriteTexts(json, "sourceIds", figure.Sources.Select(s => s.Id));
        if (showWork)
        {
            WriteTexts(json, "work", figure.ShowWork().Select(l => l.ToString()));
        }
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }
}
