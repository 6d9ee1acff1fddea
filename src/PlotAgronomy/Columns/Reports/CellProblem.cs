using System.Globalization;

namespace PlotAgronomy.Columns;

/// <summary>A cell of a table of soil tests that could not be taken as it stands: its value counts as not stated.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class CellProblem
{
    internal CellProblem(int line, string header, string text) => (Line, Header, Text) = (line, header, text);

    /// <summary>Gets the line of the file, counted from 1.</summary>
    public int Line { get; }

    /// <summary>Gets the header of the column.</summary>
    public string Header { get; }

    /// <summary>Gets what is wrong.</summary>
    public string Text { get; }

    /// <summary>Where and what.</summary>
    /// <returns>Text such as <c>line 12, 'pH': pH 66 is no pH of a soil</c>.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"line {Line}, '{Header}': {Text}");
}
