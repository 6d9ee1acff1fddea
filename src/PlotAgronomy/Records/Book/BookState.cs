using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>What holds after all corrections, whatever the order in which the entries came.</summary>
internal sealed class BookState
{
    private readonly List<Finding> remarks = [];

    internal BookState(ImmutableArray<BookEntry> given)
    {
        Entries = [.. given.GroupBy(e => e.Id).Select(Once).OrderBy(e => e.On).ThenBy(NameOf)];
        var corrections = Entries.Where(e => e.Corrects is not null).ToLookup(e => e.Corrects!);
        var reached = new HashSet<BookEntry>();
        var current = ImmutableArray.CreateBuilder<BookEntry>();
        foreach (var first in Entries.Where(e => e.Corrects is null))
        {
            var last = Latest(first, corrections, reached);
            if (last is not StruckEntry)
            {
                current.Add(last);
            }
        }

        foreach (var lost in Entries.Where(e => !reached.Contains(e)))
        {
            remarks.Add(FindingCatalog.Create(RecordCodes.CorrectsNothing, ("entry", lost.Id!), ("named", lost.Corrects!)));
        }

        Current = [.. current.OrderBy(e => e.On).ThenBy(NameOf)];
    }

    /// <summary>Every entry once, by date and name.</summary>
    internal ImmutableArray<BookEntry> Entries { get; }

    /// <summary>The entries that hold, by date and name.</summary>
    internal ImmutableArray<BookEntry> Current { get; }

    internal IEnumerable<Finding> Remarks => remarks;

    private static EntryId NameOf(BookEntry entry) => EntryId.Checked(entry.Id!, nameof(entry));

    /// <summary>The entry in whose place the last of its corrections stands. Of two corrections of one entry the later name
    /// holds.</summary>
    private BookEntry Latest(BookEntry entry, ILookup<string, BookEntry> corrections, HashSet<BookEntry> reached)
    {
        while (true)
        {
            reached.Add(entry);
            var next = corrections[entry.Id!].OrderBy(NameOf).ToList();
            if (next.Count == 0)
            {
                return entry;
            }

            if (next.Count > 1)
            {
                remarks.Add(
                    FindingCatalog.Create(
                        RecordCodes.CorrectedTwice,
                        ("entry", entry.Id!),
                        ("corrections", string.Join(" and ", next.Select(c => c.Id))),
                        ("held", next[^1].Id!)
                    )
                );
                foreach (var passed in next.SkipLast(1))
                {
                    MarkAll(passed, corrections, reached);
                }
            }

            entry = next[^1];
        }
    }

    private static void MarkAll(BookEntry entry, ILookup<string, BookEntry> corrections, HashSet<BookEntry> reached)
    {
        var open = new Stack<BookEntry>([entry]);
        while (open.TryPop(out var passed))
        {
            if (reached.Add(passed))
            {
                foreach (var further in corrections[passed.Id!])
                {
                    open.Push(further);
                }
            }
        }
    }

    /// <summary>A copied file holds the same entries again; two that differ under one name are a mistake.</summary>
    private BookEntry Once(IGrouping<string?, BookEntry> named)
    {
        if (!named.Skip(1).Any())
        {
            return named.First();
        }

        var texts = named
            .Select(e => (Entry: e, Line: System.Text.Encoding.UTF8.GetString(EntryLine.Of(e))))
            .DistinctBy(e => e.Line)
            .OrderBy(e => e.Line, StringComparer.Ordinal)
            .ToList();
        if (texts.Count > 1)
        {
            remarks.Add(FindingCatalog.Create(RecordCodes.IdTwice, ("entry", named.Key!)));
        }

        return texts[0].Entry;
    }
}
