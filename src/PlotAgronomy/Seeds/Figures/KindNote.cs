using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Something worth knowing about a kind, in words, with its sources.</summary>
public sealed class KindNote
{
    /// <summary>Gets the words.</summary>
    public required string Text { get; init; }

    /// <summary>Gets the sources.</summary>
    public required KindEvidence Evidence { get; init; }

    /// <summary>The words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;

    internal static KindNote FromRow(CsvRow row) => new() { Text = row.Text("text"), Evidence = KindEvidence.FromRow(row) };
}
