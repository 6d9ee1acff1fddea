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
    private readonly Lazy<Dictionary<string, Entry>> byCode = new(() => Load(file, map));

    internal ImmutableArray<string> Codes => [.. byCode.Value.Keys.Order(StringComparer.Ordinal)];

    internal IEnumerable<T> InOrder => byCode.Value.Values.Select(e => e.Made).OrderBy(t => t.Code, StringComparer.Ordinal);

    /// <summary>The text of a code with the values for its places, no more and no fewer.</summary>
    internal (T Template, ImmutableArray<FindingValue> Values) Fill(
        string code,
        ReadOnlySpan<(string Place, string Value)> values
    )
    {
        var template = byCode.Value.TryGetValue(code, out var known)
            ? known.Made
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

    private static Dictionary<string, Entry> Load(string file, Func<CsvRow, T> map)
    {
        var texts = new Dictionary<string, Entry>(StringComparer.Ordinal);
        foreach (string name in CsvTable.EmbeddedNames.Where(n => n.EndsWith($"/{file}", StringComparison.Ordinal)))
        {
            var table = CsvTable.Embedded(name);
            foreach (var row in table.Rows)
            {
                string code = row.Text("code");
                if (!texts.TryAdd(code, new Entry(row, map)))
                {
                    throw row.Problem("code", $"'{code}' stands twice");
                }
            }

            // One text shows whether every column is read; the others are made when they are said.
            _ = texts[table.Rows[0].Text("code")].Made;
            Table.RequireEveryColumnRead(table);
        }

        return texts;
    }

    /// <summary>A row, and the text that is made of it when it is first said: of some five hundred a sheet says a few.</summary>
    private sealed class Entry(CsvRow row, Func<CsvRow, T> map)
    {
        private T? made;

        internal T Made => made ?? Interlocked.CompareExchange(ref made, Make(), null) ?? made;

        private T Make()
        {
            var text = map(row);
            return text.Subject is not { } subject || text.Text.Places.Contains(subject)
                ? text
                : throw row.Problem("subject", $"the text has no place {{{subject}}}");
        }
    }
}
