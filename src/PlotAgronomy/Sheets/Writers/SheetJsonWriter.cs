using System.Buffers;
using System.Text;
using System.Text.Json;

namespace PlotAgronomy.Sheets;

/// <summary>Writes a sheet as JSON for other programs.</summary>
internal static class SheetJsonWriter
{
    /// <summary>Raised when a member changes its meaning or goes.</summary>
    private const int SheetVersion = 2;

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
        json.WriteNumber("sheetVersion", SheetVersion);
        json.WriteString("libraryVersion", LibraryVersion.Text);
        json.WriteString("dataVersion", Source.DataVersion);
        json.WriteString("title", sheet.Title);
        WriteAll(json, "sections", sheet.Sections, section => WriteSection(json, section, showWork));
        WriteAll(json, "findings", sheet.Findings, finding => WriteFinding(json, finding));
        json.WriteEndObject();
    }

    private static void WriteSection(Utf8JsonWriter json, SheetSection section, bool showWork)
    {
        json.WriteString("id", section.Id);
        json.WriteString("heading", section.Heading);
        json.WriteString("part", section.Part.ToString().ToLowerInvariant());
        WriteAll(json, "blocks", section.Blocks, block => WriteBlock(json, block, showWork));
    }

    private static void WriteBlock(Utf8JsonWriter json, SheetBlock block, bool showWork)
    {
        switch (block)
        {
            case SheetSentence sentence:
                json.WriteString("block", "sentence");
                json.WriteString("text", sentence.Text);
                break;
            case SheetRemarks remarks:
                json.WriteString("block", "remarks");
                WriteAll(json, "remarks", remarks.Remarks, remark =>
                {
                    json.WriteString("word", remark.Word);
                    json.WriteString("text", remark.Text);
                });
                break;
            case SheetSteps steps:
                json.WriteString("block", "steps");
                WriteTexts(json, "steps", steps.Steps);
                break;
            case SheetTable table:
                json.WriteString("block", "table");
                WriteTexts(json, "columns", table.Columns);
                WriteAll(json, "rows", table.Rows, row => WriteRow(json, row, showWork));
                break;
            case SheetDrawing drawing:
                json.WriteString("block", "drawing");
                json.WriteString("text", drawing.Caption);
                json.WriteString("svg", drawing.Svg);
                break;
            case SheetFigure figure:
                json.WriteString("block", "figure");
                WriteFigure(json, figure, showWork);
                break;
            default:
                throw new InvalidOperationException($"No way to write {block.GetType().Name}.");
        }
    }

    private static void WriteRow(Utf8JsonWriter json, SheetRow row, bool showWork)
    {
        WriteTexts(json, "cells", row.Cells);
        if (row.Figure is { } figure)
        {
            json.WriteStartObject("figure");
            WriteFigure(json, figure, showWork);
            json.WriteEndObject();
        }
    }

    private static void WriteFigure(Utf8JsonWriter json, SheetFigure figure, bool showWork)
    {
        json.WriteString("code", figure.Code);
        json.WriteString("label", figure.Label);
        json.WriteString("text", figure.Value);
        if (figure.Amount is { } amount)
        {
            WriteNumber(json, "value", amount.Value);
            WriteNumber(json, "low", amount.Low);
            WriteNumber(json, "high", amount.High);
            json.WriteString("unit", amount.Unit);
        }

        json.WriteString("status", WordOf(figure.Status));
        WriteTexts(json, "sourceIds", figure.Sources.Select(s => s.Id));
        if (showWork)
        {
            WriteTexts(json, "work", figure.ShowWork().Select(l => l.ToString()));
        }
    }

    private static void WriteFinding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("code", finding.Code);
        json.WriteString("severity", WordOf(finding.Severity));
        if (finding.Subject is { } subject)
        {
            json.WriteString("subject", subject);
        }

        json.WriteStartObject("values");
        foreach (var value in finding.Values)
        {
            json.WriteString(value.Name, value.Text);
        }

        json.WriteEndObject();
        json.WriteString("text", finding.Text);
        json.WriteString("sourceId", finding.Source.Id);
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } known)
        {
            json.WriteNumber(name, known);
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

    /// <summary>An array of objects, each filled by the given function.</summary>
    private static void WriteAll<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> fill)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            fill(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string WordOf(DataStatus status) => status.ToString().ToLowerInvariant();

    private static string WordOf(FindingSeverity severity) => severity.ToString().ToLowerInvariant();
}
