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

    internal static string Render(FieldSheet sheet, SheetFormat format, bool showWork, int? width)
    {
        switch (format)
        {
            case SheetFormat.Json:
                using (var stream = new MemoryStream())
                {
                    JsonSheet.Write(stream, sheet, showWork);
                    return System.Text.Encoding.UTF8.GetString(stream.ToArray()) + "\n";
                }

            case SheetFormat.Markdown:
                using (var writer = new StringWriter())
                {
                    MarkdownSheet.Write(writer, sheet, showWork);
                    return writer.ToString();
                }

            default:
                using (var writer = new StringWriter { NewLine = "\n" })
                {
                    TextSheet.Write(ConsoleStreams.Layout(writer, width), sheet, showWork);
                    return Trimmed(writer);
                }
        }
    }

    /// <summary>What was laid out, without the blanks that fill its columns.</summary>
    internal static string Trimmed(StringWriter laidOut) =>
        string.Join('\n', laidOut.ToString().ReplaceLineEndings("\n").Split('\n').Select(l => l.TrimEnd()));
}
