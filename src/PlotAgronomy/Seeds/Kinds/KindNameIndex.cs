using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>The names of the kinds of a catalog, as they are looked up: in full before in part.</summary>
internal sealed class KindNameIndex
{
    private readonly ImmutableArray<ListedKind> kinds;
    private readonly ImmutableArray<KindName> names;
    private readonly ILookup<string, ListedKind> inFull;

    /// <summary>The names that hold a word, in the order of the catalog.</summary>
    private readonly ILookup<string, KindName> holding;

    internal KindNameIndex(ImmutableArray<ListedKind> kinds)
    {
        this.kinds = kinds;
        names = [.. from k in kinds from n in k.Names select new KindName(k, n)];
        holding = names.SelectMany(n => n.Words, (name, word) => new { name, word }).ToLookup(n => n.word, n => n.name);
        inFull = names.SelectMany(n => n.Keys, (n, key) => new { key, n.Kind }).ToLookup(n => n.key, n => n.Kind);
        MostWords = names.Max(n => n.Printed.Split([' ', '-', '/', ',', '(']).Length) + 1;
    }

    /// <summary>The most words that any name has, as a person may write it.</summary>
    internal int MostWords { get; }

    /// <summary>The kinds a name fits, in the order of the catalog.</summary>
    internal IEnumerable<ListedKind> Fitting(string name)
    {
        var words = KindNames.Words(name);
        if (words.IsEmpty)
        {
            return [];
        }

        var whole = inFull[KindNames.Joined(name)].Concat(inFull[KindNames.InOrder(words)]).Distinct().ToList();
        return whole.Count == 0
            ? holding[words[0]].Where(n => words.All(n.Words.Contains)).Select(n => n.Kind).Distinct()
            : whole.OrderBy(kinds.IndexOf);
    }

    /// <summary>The kinds whose names take the fewest changed letters, nearest first.</summary>
    internal IEnumerable<ListedKind> Near(string name)
    {
        string joined = KindNames.Joined(name);
        return names.OrderBy(n => KindNames.Distance(n.Joined, joined)).Select(n => n.Kind).Distinct();
    }
}
