using System.Collections.Frozen;

namespace PlotAgronomy.Reference;

/// <summary>The one table of cautions: code, severity, text and source.</summary>
public static class FindingCatalog
{
    private static readonly Lazy<FrozenDictionary<string, Finding>> ByCode = new(Load);

    /// <summary>Gets every caution with its text still holding {named} places, in the order of their codes.</summary>
    public static IReadOnlyList<Finding> All => [.. ByCode.Value.Values.OrderBy(f => f.Code, StringComparer.Ordinal)];

    /// <summary>Makes the finding of a code, its named places filled in.</summary>
    /// <param name="code">Code in findings.csv.</param>
    /// <param name="values">Name and printed value of every {place} in the text, no more and no fewer.</param>
    internal static Finding Create(string code, params ReadOnlySpan<(string Place, string Value)> values)
    {
        if (!ByCode.Value.TryGetValue(code, out var template))
        {
            throw new KeyNotFoundException($"No finding has the code '{code}'.");
        }

        string text = template.Text;
        foreach (var (place, value) in values)
        {
            string mark = "{" + place + "}";
            text = text.Contains(mark, StringComparison.Ordinal)
                ? text.Replace(mark, value, StringComparison.Ordinal)
                : throw new InvalidOperationException($"Finding '{code}' has no place {mark}.");
        }

        return text.Contains('{', StringComparison.Ordinal)
            ? throw new InvalidOperationException($"Finding '{code}' has a place that was not filled: {text}")
            : new Finding { Code = code, Severity = template.Severity, Text = text, SourceId = template.SourceId };
    }

    private static FrozenDictionary<string, Finding> Load()
    {
        var table = CsvTable.Embedded("findings.csv", "code", "severity", "text", "source_id");
        var findings = new Dictionary<string, Finding>(StringComparer.Ordinal);
        foreach (var row in table.Rows)
        {
            var finding = new Finding
            {
                Code = row.Text("code"),
                Severity = row.Choice<FindingSeverity>("severity"),
                Text = row.Text("text"),
                SourceId = row.SourceId(),
            };
            if (!findings.TryAdd(finding.Code, finding))
            {
                throw row.Problem("code", $"'{finding.Code}' stands twice");
            }
        }

        return findings.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
