using System.Collections.Frozen;

namespace PlotAgronomy.Reference;

/// <summary>All cautions by their codes: severity, text and source. Every room keeps its own in Data/findings.csv.</summary>
public static class FindingCatalog
{
    private static readonly Lazy<FrozenDictionary<string, Finding>> ByCode = new(Load);

    /// <summary>Gets every caution with its text still holding {named} places, in the order of their codes.</summary>
    public static IReadOnlyList<Finding> All => [.. ByCode.Value.Values.OrderBy(f => f.Code, StringComparer.Ordinal)];

    /// <summary>Makes the finding of a code, its named places filled in.</summary>
    /// <param name="code">Code.</param>
    /// <param name="values">Name and printed value of every {place} in the text, no more and no fewer.</param>
    internal static Finding Create(string code, params ReadOnlySpan<(string Place, string Value)> values)
    {
        if (!ByCode.Value.TryGetValue(code, out var template))
        {
            throw new KeyNotFoundException($"No finding has the code '{code}'.");
        }

        return new Finding
        {
            Code = code,
            Severity = template.Severity,
            Text = Filled(code, template.Text, values),
            SourceId = template.SourceId,
        };
    }

    /// <summary>Fills each place once; a value may itself hold braces, since it may be a person's own words.</summary>
    private static string Filled(string code, string template, ReadOnlySpan<(string Place, string Value)> values)
    {
        foreach (var (place, _) in values)
        {
            if (!template.Contains("{" + place + "}", StringComparison.Ordinal))
            {
                throw new InvalidOperationException($"Finding '{code}' has no place {{{place}}}.");
            }
        }

        var text = new System.Text.StringBuilder();
        int at = 0;
        for (int open = template.IndexOf('{', StringComparison.Ordinal); open >= 0; open = template.IndexOf('{', at))
        {
            int close = template.IndexOf('}', open);
            text.Append(template, at, open - at).Append(ValueOf(code, template[(open + 1)..close], values));
            at = close + 1;
        }

        return text.Append(template, at, template.Length - at).ToString();
    }

    private static string ValueOf(string code, string place, ReadOnlySpan<(string Place, string Value)> values)
    {
        foreach (var (name, value) in values)
        {
            if (name == place)
            {
                return value;
            }
        }

        throw new InvalidOperationException($"Finding '{code}' has a place that was not filled: {{{place}}}");
    }

    private static FrozenDictionary<string, Finding> Load()
    {
        var findings = new Dictionary<string, Finding>(StringComparer.Ordinal);
        foreach (string table in CsvTable.EmbeddedNames.Where(n => n.EndsWith("/findings.csv", StringComparison.Ordinal)))
        {
            foreach (var (finding, row) in Table.Read(table, r => (Template(r), r)))
            {
                if (!findings.TryAdd(finding.Code, finding))
                {
                    throw row.Problem("code", $"'{finding.Code}' stands twice");
                }
            }
        }

        return findings.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private static Finding Template(CsvRow row) =>
        new()
        {
            Code = row.Text("code"),
            Severity = row.Choice<FindingSeverity>("severity"),
            Text = row.Text("text"),
            SourceId = row.SourceId(),
        };
}
