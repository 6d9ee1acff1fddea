using System.Collections.Frozen;

namespace PlotAgronomy.Reference;

/// <summary>Every source named beside a number in this library.</summary>
public static class SourceCatalog
{
    private static readonly Lazy<FrozenDictionary<string, Source>> ById = new(Load);

    /// <summary>Gets the version of the reference data; it changes whenever a published number in the tables does.</summary>
    public static string DataVersion => "2026.11";

    /// <summary>Gets all sources, in the order of their ids.</summary>
    public static IReadOnlyList<Source> All => [.. ById.Value.Values.OrderBy(s => s.Id, StringComparer.Ordinal)];

    /// <summary>Finds a source.</summary>
    /// <param name="id">Source id.</param>
    /// <returns>The source.</returns>
    /// <exception cref="KeyNotFoundException">No source has this id.</exception>
    public static Source Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return ById.Value.TryGetValue(id, out var source)
            ? source
            : throw new KeyNotFoundException($"No source has the id '{id}'.");
    }

    /// <summary>Looks for a source.</summary>
    /// <param name="id">Source id.</param>
    /// <returns>The source, or null.</returns>
    public static Source? TryFind(string id) => ById.Value.GetValueOrDefault(id);

    private static FrozenDictionary<string, Source> Load()
    {
        var table = CsvTable.Embedded("Reference/Data/sources.csv", "id", "title", "institution", "edition", "superseded_by");
        var sources = new Dictionary<string, Source>(StringComparer.Ordinal);
        foreach (var row in table.Rows)
        {
            var source = new Source
            {
                Id = row.Text("id"),
                Title = row.Text("title"),
                Institution = row.Text("institution"),
                Edition = row.Text("edition"),
                SupersededBy = row.TextOrNull("superseded_by"),
            };
            if (!sources.TryAdd(source.Id, source))
            {
                throw row.Problem("id", $"'{source.Id}' stands twice");
            }
        }

        return sources.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
