namespace PlotAgronomy.Sample.Output;

/// <summary>Writes a sheet in the wanted form to the screen or, whole or not at all, to a file.</summary>
internal static class SheetOutput
{
    internal static int Write(
        FieldSheet sheet,
        SheetFormat format,
        bool showWork,
        int? width,
        string? file,
        string input,
        ConsoleStreams streams
    )
    {
        string text = Render(sheet, format, showWork, width);
        if (file is null)
        {
            streams.Out.Write(text);
            return ExitCode.Done;
        }

        if (OutputFile.WhyNot(file, input) is { } why)
        {
            streams.Error.WriteLine($"cannot write '{file}': {why}");
            return ExitCode.Usage;
        }

        try
        {
            OutputFile.Replace(file, text);
            return ExitCode.Done;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            streams.Error.WriteLine($"cannot write '{file}': {error.Message}");
            return ExitCode.Usage;
        }
    }

    internal static string Render(FieldSheet sheet, SheetFormat format, bool showWork, int? width) =>
        format switch
        {
            SheetFormat.Json => sheet.ToJson(showWork),
            SheetFormat.Html => sheet.ToHtml(showWork),
            SheetFormat.Markdown => sheet.ToMarkdown(showWork),
            _ => sheet.ToText(width ?? FieldSheetWriting.UsualWidth, showWork),
        };
}
