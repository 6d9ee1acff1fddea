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
        ConsoleStreams streams
    )
    {
        string text = Render(sheet, format, showWork, width);
        if (file is null)
        {
            streams.Out.Write(text);
            return ExitCode.Done;
        }

        string draft = $"{file}.part";
        try
        {
            File.WriteAllText(draft, text);
            File.Move(draft, file, overwrite: true);
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
            SheetFormat.Markdown => sheet.ToMarkdown(showWork),
            _ => sheet.ToText(width ?? FieldSheetWriting.UsualWidth, showWork),
        };
}
