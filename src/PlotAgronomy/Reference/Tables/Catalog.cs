using System.Collections.Frozen;
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
internal sealed class Catalog<T>(
    string noun,
    Func<IEnumerable<T>> entries,
    Func<T, string> idOf,
    Func<T, DataStatus>? statusOf = null,
    string? advice = null
)
    where T : class
{
    private readonly Lazy<(ImmutableArray<T> Listed, FrozenDictionary<string, T> ById)> everything = new(() =>
    {
        ImmutableArray<T> listed = [.. entries()];
        return (listed, listed.ToFrozenDictionary(idOf, StringComparer.OrdinalIgnoreCase));
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
        entry = id is null ? null : everything.Value.ById.GetValueOrDefault(id.Trim());
        problem = entry is null ? Unknown(id) : "";
        return entry is not null;
    }

    private bool IsFromMemory(T entry) => statusOf?.Invoke(entry) == DataStatus.Memory;

    private string Unknown(string? id)
    {
        string sentence = advice is null ? "" : $" {advice}";
        return $"No {noun} has the id '{id}'.{sentence} There are: {string.Join(", ", Everything.Select(idOf))}.";
    }
}
