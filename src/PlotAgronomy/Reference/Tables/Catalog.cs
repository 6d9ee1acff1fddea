using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace PlotAgronomy.Reference;

/// <summary>Things that are found by an id. What rests on numbers from memory is kept apart: it answers only when asked for by
/// name.</summary>
/// <param name="noun">What one entry is, such as <c>lime basis</c>.</param>
/// <param name="entries">Makes all entries, in the order in which they are listed.</param>
/// <param name="idOf">Id of an entry.</param>
/// <param name="statusOf">How well the numbers of an entry are known; null where none is from memory.</param>
/// <param name="advice">What to do when an id is unknown, as a sentence; null for none.</param>
/// <param name="namesOf">Other names an entry is found by; none where null.</param>
internal sealed class Catalog<T>(
    string noun,
    Func<IEnumerable<T>> entries,
    Func<T, string> idOf,
    Func<T, DataStatus>? statusOf = null,
    string? advice = null,
    Func<T, IEnumerable<string>>? namesOf = null
)
    where T : class
{
    private readonly Lazy<(ImmutableArray<T> Listed, IReadOnlyDictionary<string, T> ByName)> everything = new(() =>
    {
        ImmutableArray<T> listed = [.. entries()];
        var named =
            from entry in listed
            from name in (namesOf?.Invoke(entry) ?? []).Append(idOf(entry)).Distinct(StringComparer.OrdinalIgnoreCase)
            select new { name, entry };
        return (listed, named.ToDictionary(n => n.name, n => n.entry, StringComparer.OrdinalIgnoreCase));
    });

    /// <summary>The entries whose numbers were seen in print, or are practice.</summary>
    internal ImmutableArray<T> All => [.. Everything.Where(e => !IsFromMemory(e))];

    /// <summary>The entries that rest on numbers from memory.</summary>
    internal ImmutableArray<T> Unchecked => [.. Everything.Where(IsFromMemory)];

    /// <summary>All entries, checked or not.</summary>
    internal ImmutableArray<T> Everything => everything.Value.Listed;

    /// <exception cref="KeyNotFoundException">No entry has this id; the message lists all.</exception>
    internal T Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return TryFind(id, out var entry, out string problem) ? entry : throw new KeyNotFoundException(problem);
    }

    internal bool TryFind(string? id, [NotNullWhen(true)] out T? entry, out string problem)
    {
        entry = id is null ? null : everything.Value.ByName.GetValueOrDefault(id.Trim());
        problem = entry is null ? Unknown(id) : "";
        return entry is not null;
    }

    private bool IsFromMemory(T entry) => statusOf?.Invoke(entry) == DataStatus.Memory;

    private string Unknown(string? id)
    {
        string sentence = advice is null ? "" : $" {advice}";
        string known = namesOf is null ? "has the id" : "is called";
        return $"No {noun} {known} '{id}'.{sentence} There are: {string.Join(", ", Everything.Select(idOf))}.";
    }
}
