using System.Globalization;

namespace PlotAgronomy.Reference;

/// <summary>A table file breaks its format. Names the file, the line and the field.</summary>
public sealed class DataFormatException : FormatException
{
    /// <summary>Creates the exception.</summary>
    /// <param name="file">File or table name.</param>
    /// <param name="line">Line, counted from 1.</param>
    /// <param name="field">Column, or null for a whole line.</param>
    /// <param name="problem">What is wrong and what was expected.</param>
    public DataFormatException(string file, int line, string? field, string problem)
        : base($"{Place(file, line, field)}: {problem}")
    {
        File = file;
        Line = line;
        Field = field;
    }

    /// <summary>Gets the file or table name.</summary>
    public string File { get; }

    /// <summary>Gets the line, counted from 1.</summary>
    public int Line { get; }

    /// <summary>Gets the column, or null.</summary>
    public string? Field { get; }

    private static string Place(string file, int line, string? field)
    {
        string column = field is null ? "" : $", field '{field}'";
        return string.Create(CultureInfo.InvariantCulture, $"{file}, line {line}{column}");
    }
}
