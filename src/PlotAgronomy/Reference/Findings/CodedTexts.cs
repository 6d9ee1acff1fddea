using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace PlotAgronomy.Reference;

/// <summary>The coded texts of all rooms, one table a room.</summary>
/// <param name="file">Name of the table in each room's Data.</param>
/// <param name="noun">What one row is, such as <c>finding</c>.</param>
/// <param name="map">Makes one of a row.</param>
internal sealed class CodedTexts<T>(string file, string noun, Func<CsvRow, T> map)
    where T : CodedText
{
    private readonly Lazy<IReadOnlyDictionary<string, T>> byCode = new(() => Load(file, map));

    internal ImmutableArray<string> Codes => [.. byCode.Value.Keys.Order(StringComparer.Ordinal)];

    internal IEnumerable<T> InOrder => byCode.Value.Values.OrderBy(t => t.Code, StringComparer.Ordinal);

    /// <summary>The text of a code with the values for its places, no more and no fewer.</summary>
    internal (T Template, ImmutableArray<FindingValue> Values) Fill(
        string code,
        ReadOnlySpan<(string Place, string Value)> values
    )
    {
        var template = byCode.Value.TryGetValue(code, out var known)
            ? known
            : throw new KeyNotFoundException($"No {noun} has the code '{code}'.");
        var places = template.Text.Places;
        bool areAllMeant = places.Length == values.Length;
        var given = new FindingValue[values.Length];
        for (int i = 0; i < given.Length; i++)
        {
            given[i] = new(values[i].Place, values[i].Value);
            areAllMeant &= places.Contains(given[i].Name);
        }

        return areAllMeant
            ? (template, ImmutableCollectionsMarshal.AsImmutableArray(given))
            : throw new InvalidOperationException(
                $"The {noun} '{code}' has the places {string.Join(", ", places)}, given "
                    + $"{string.Join(", ", given.Select(v => v.Name))}."
            );
    }

    private static Dictionary<string, T> Load(string file, Func<CsvRow, T> map)
    {
        var texts = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (string table in CsvTable.EmbeddedNames.Where(n => n.EndsWith($"/{file}", StringComparison.Ordinal)))
        {
            foreach (var (text, row) in Table.Read(table, r => (map(r), r)))
            {
                if (!texts.TryAdd(text.Code, text))
                {
                    throw row.Problem("code", $"'{text.Code}' stands twice");
                }

                if (text.Subject is { } subject && !text.Text.Places.Contains(subject))
                {
                    throw row.Problem("subject", $"the text has no place {{{subject}}}");
                }
            }
        }

        return texts;
    }
}
