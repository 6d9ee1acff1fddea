using System.Collections.Frozen;
using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>All findings by their codes: severity, text and source. Every room keeps its own in Data/findings.csv.</summary>
internal static class FindingCatalog
{
    private static readonly Lazy<FrozenDictionary<string, FindingTemplate>> ByCode = new(Load);

    /// <summary>Gets the code of every finding, in order.</summary>
    internal static ImmutableArray<string> Codes => [.. ByCode.Value.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Gets every finding as its table holds it, in the order of their codes.</summary>
    internal static IEnumerable<FindingTemplate> Templates => ByCode.Value.Values.OrderBy(t => t.Code, StringComparer.Ordinal);

    /// <summary>Makes the finding of a code.</summary>
    /// <param name="code">Code.</param>
    /// <param name="values">Name and printed value of every {place} in the text, no more and no fewer.</param>
    internal static Finding Create(string code, params ReadOnlySpan<(string Place, string Value)> values)
    {
        var template = ByCode.Value.TryGetValue(code, out var known)
            ? known
            : throw new KeyNotFoundException($"No finding has the code '{code}'.");
        var given = ImmutableArray.CreateBuilder<FindingValue>(values.Length);
        foreach (var (place, value) in values)
        {
            given.Add(new(place, value));
        }

        var places = template.Text.Places;
        return places.Length == values.Length && given.All(v => places.Contains(v.Name))
            ? new Finding(template, given.MoveToImmutable())
            : throw new InvalidOperationException(
                $"Finding '{code}' has the places {string.Join(", ", places)}, given "
                    + $"{string.Join(", ", given.Select(v => v.Name))}."
            );
    }

    private static FrozenDictionary<string, FindingTemplate> Load()
    {
        var templates = new Dictionary<string, FindingTemplate>(StringComparer.Ordinal);
        foreach (string table in CsvTable.EmbeddedNames.Where(n => n.EndsWith("/findings.csv", StringComparison.Ordinal)))
        {
            foreach (var (template, row) in Table.Read(table, r => (FromRow(r), r)))
            {
                if (!templates.TryAdd(template.Code, template))
                {
                    throw row.Problem("code", $"'{template.Code}' stands twice");
                }

                if (template.Subject is { } subject && !template.Text.Places.Contains(subject))
                {
                    throw row.Problem("subject", $"the text has no place {{{subject}}}");
                }
            }
        }

        return templates.ToFrozenDictionary(StringComparer.Ordinal);
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
