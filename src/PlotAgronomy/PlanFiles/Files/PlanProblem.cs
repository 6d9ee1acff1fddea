using System.Globalization;

namespace PlotAgronomy.PlanFiles;

/// <summary>One mistake in a plan file: where it stands and what was expected.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlanProblem
{
    /// <summary>Gets the line, counted from 1.</summary>
    public required int Line { get; init; }

    /// <summary>Gets the column, counted from 1.</summary>
    public required int Column { get; init; }

    /// <summary>Gets the JSON path, such as <c>$.plot.sides.width</c>.</summary>
    public required string Path
    {
        get;
        init => field = Guard.NotNull(value, nameof(Path));
    }

    /// <summary>Gets what is wrong and what was expected.</summary>
    public required string Text
    {
        get;
        init => field = Guard.NotNull(value, nameof(Text));
    }

    internal static PlanProblem At(string path, string text) =>
        new()
        {
            Line = 0,
            Column = 0,
            Path = path,
            Text = text,
        };

    /// <summary>Text such as <c>line 12, column 16, $.plot.area: no unit in '0.62'</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"line {Line}, column {Column}, {Path}: {Text}");
}
