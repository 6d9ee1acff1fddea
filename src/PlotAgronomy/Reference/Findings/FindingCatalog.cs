using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>All findings by their codes: severity, text and source. Every room keeps its own in Data/findings.csv.</summary>
internal static class FindingCatalog
{
    private static readonly CodedTexts<FindingTemplate> All = new("findings.csv", "finding", FromRow);

    /// <summary>Gets the code of every finding, in order.</summary>
    internal static ImmutableArray<string> Codes => All.Codes;

    /// <summary>Gets every finding as its table holds it, in the order of their codes.</summary>
    internal static IEnumerable<FindingTemplate> Templates => All.InOrder;

    /// <summary>Makes the finding of a code.</summary>
    /// <param name="code">Code.</param>
    /// <param name="values">Name and printed value of every {place} in the text, no more and no fewer.</param>
    internal static Finding Create(string code, params ReadOnlySpan<(string Place, string Value)> values)
    {
        var (template, given) = All.Fill(code, values);
        return new Finding(template, given);
    }

    private static FindingTemplate FromRow(CsvRow row) =>
        new(
            row.Text("code"),
            row.Choice<FindingSeverity>("severity"),
            new(row.Text("text")),
            row.TextOrNull("subject"),
            row.Source()
        );
}
