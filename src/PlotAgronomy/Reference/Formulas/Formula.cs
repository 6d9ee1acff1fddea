using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>A formula as its publication prints it: one row of a room's <c>Data/formulas.csv</c>.</summary>
/// <remarks>An expression has <c>+ - * /</c>, <c>pow</c>, <c>ln</c>, <c>exp</c>, <c>min</c>, <c>max</c> and <c>if</c> only, its
/// quantities and coefficients as places in braces. A formula with branches is one row a branch, each with the limits it holds
/// within.</remarks>
internal sealed class Formula
{
    private readonly TextWithPlaces label;
    private readonly TextWithPlaces text;

    private Formula(CsvRow row)
    {
        Id = row.Text("id");
        Kind = row.Choice<FormulaKind>("kind");
        label = new(row.Text("label"));
        text = new(row.Text("formula"));
        Limits = row.TextOrNull("limits");
        Origin = row.OriginOrNull();
    }

    internal string Id { get; }

    internal FormulaKind Kind { get; }

    internal string Label => label.Template;

    internal string Text => text.Template;

    /// <summary>The formula as a person reads it, its places by their names.</summary>
    internal string InWords => Printed(text.Named);

    /// <summary>Condition on its places under which this branch holds; null where it always does.</summary>
    internal string? Limits { get; }

    /// <summary>Where it is printed; null for plain arithmetic.</summary>
    internal Origin? Origin { get; }

    internal ImmutableArray<string> Places => text.Places;

    internal static Formula FromRow(CsvRow row) => new(row);

    /// <summary>The formula as a line of a sum, its places filled in.</summary>
    /// <param name="answer">What it gives, with its unit.</param>
    /// <param name="values">Name and printed value of every place, of the label's too.</param>
    internal WorkedLine Line(string answer, params ReadOnlySpan<(string Place, string Value)> values)
    {
        string numbers = Kind == FormulaKind.Words ? answer : $"{Printed(text.Filled(values))} = {answer}";
        return new(label.Filled(values), InWords, numbers, Origin);
    }

    /// <summary>The multiplication sign as people write it.</summary>
    private static string Printed(string expression) => expression.Replace(" * ", " x ", StringComparison.Ordinal);
}
