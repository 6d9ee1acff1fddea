namespace PlotAgronomy.Record;

/// <summary>Holds the rows of today against the recorded ones, case by case.</summary>
internal sealed class Comparison
{
    private readonly List<Difference> differences = [];

    internal IReadOnlyList<Difference> Differences => differences;

    internal int Equal { get; private set; }

    internal int Renamed { get; private set; }

    /// <summary>Gets how many values the record has no word of, such as an input that a result now keeps.</summary>
    internal int Added { get; private set; }

    internal int Cases { get; private set; }

    internal static Comparison Of(IEnumerable<RecordedRow> old, IEnumerable<RecordedRow> now)
    {
        var comparison = new Comparison();
        var today = now.ToLookup(r => r.Case);
        var before = old.ToLookup(r => r.Case);
        foreach (string name in before.Select(g => g.Key).Union(today.Select(g => g.Key)))
        {
            comparison.Cases++;
            comparison.Compare(name, before[name], today[name]);
        }

        return comparison;
    }

    private void Compare(string name, IEnumerable<RecordedRow> old, IEnumerable<RecordedRow> now)
    {
        var today = now.ToDictionary(r => r.Meaning, r => r.Value);
        var gone = new List<RecordedRow>();
        foreach (var row in old)
        {
            if (!today.Remove(row.Meaning, out string? value))
            {
                gone.Add(row);
            }
            else if (SameValue.Holds(row.Value, value))
            {
                Equal++;
            }
            else
            {
                differences.Add(new Difference(name, row.Meaning, row.Value, value));
            }
        }

        PairByValue(name, InOrder(gone), InOrder(today.Select(t => new RecordedRow(name, t.Key, t.Value))));
    }

    /// <summary>A meaning may have a new name: what is left over on both sides is paired by value.</summary>
    private void PairByValue(string name, List<RecordedRow> gone, List<RecordedRow> added)
    {
        int g = 0, a = 0;
        while (g < gone.Count && a < added.Count)
        {
            if (SameValue.Holds(gone[g].Value, added[a].Value))
            {
                Renamed++;
                g++;
                a++;
            }
            else if (ByValue.Compare(gone[g], added[a]) < 0)
            {
                differences.Add(Gone(name, gone[g++]));
            }
            else
            {
                Added++;
                a++;
            }
        }

        differences.AddRange(gone.Skip(g).Select(r => Gone(name, r)));
        Added += added.Count - a;
    }

    private static Difference Gone(string name, RecordedRow row) => new(name, row.Meaning, row.Value, null);

    private static List<RecordedRow> InOrder(IEnumerable<RecordedRow> rows) => [.. rows.Order(ByValue)];

    private static readonly Comparer<RecordedRow> ByValue = Comparer<RecordedRow>.Create((x, y) =>
        (SameValue.TryNumber(x.Value, out double left), SameValue.TryNumber(y.Value, out double right)) switch
        {
            (true, true) => left.CompareTo(right),
            (true, false) => -1,
            (false, true) => 1,
            _ => string.CompareOrdinal(x.Value, y.Value),
        });
}
