using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>An embedded table as objects, read when first asked for.</summary>
/// <remarks>The mapping declares the header: a column that it asks for must be there, and one that it never asks for is an error.
/// An embedded table is the same in every process, so what every row must have is checked by the tests
/// (<see cref="Table.Check"/>) and not again by each first answer.</remarks>
/// <param name="path">Path below the library, such as <c>Liming/Data/bases.csv</c>.</param>
/// <param name="map">Makes one object of a row.</param>
internal sealed class Table<T>(string path, Func<CsvRow, T> map)
{
    private readonly Lazy<ImmutableArray<T>> rows = new(() => Table.Read(path, map));

    /// <summary>The objects, in the order of the table.</summary>
    internal ImmutableArray<T> Rows => rows.Value;

    /// <summary>The objects by a key that no two share.</summary>
    internal Lazy<IReadOnlyDictionary<TKey, T>> By<TKey>(Func<T, TKey> key)
        where TKey : notnull => new(() => Rows.ToDictionary(key));

    /// <summary>The objects by a key that several share.</summary>
    internal Lazy<ILookup<TKey, T>> GroupedBy<TKey>(Func<T, TKey> key) => new(() => Rows.ToLookup(key));
}

/// <summary>Tables whose key does not stand on their objects.</summary>
internal static class Table
{
    private static readonly ImmutableArray<string> OriginColumns = ["source_id", "locator", "status"];

    internal static ImmutableArray<T> Read<T>(string path, Func<CsvRow, T> map) => Read(CsvTable.Embedded(path), map);

    internal static ImmutableArray<T> Read<T>(CsvTable table, Func<CsvRow, T> map)
    {
        ImmutableArray<T> all = [.. table.Rows.Select(map)];
        RequireEveryColumnRead(table);
        return all;
    }

    /// <summary>Every column was asked for by whoever made objects of the rows, or is one that tables are checked by.</summary>
    internal static void RequireEveryColumnRead(CsvTable table)
    {
        string unread = string.Join(", ", table.UnreadColumns.Where(c => c != "id" && !OriginColumns.Contains(c)));
        if (unread.Length > 0)
        {
            throw new DataFormatException(table.Name, 1, unread, "nobody reads the column");
        }
    }

    /// <summary>No id stands twice, and a row that names a source says where in it and how well that is known.</summary>
    internal static void Check(CsvTable table)
    {
        bool hasId = table.Has("id");
        bool hasOrigin = OriginColumns.All(table.Has);
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var row in table.Rows)
        {
            if (hasId && !ids.Add(row.Text("id")))
            {
                throw row.Problem("id", $"'{row.Text("id")}' stands twice");
            }

            if (hasOrigin)
            {
                row.OriginCells();
            }
        }
    }

    /// <summary>Objects by a key that no two rows share.</summary>
    internal static Lazy<IReadOnlyDictionary<TKey, T>> Keyed<TKey, T>(string path, Func<CsvRow, TKey> key, Func<CsvRow, T> map)
        where TKey : notnull => new(() => Pairs(path, key, map).ToDictionary(p => p.Key, p => p.Item));

    /// <summary>Objects by a key that several rows share.</summary>
    internal static Lazy<ILookup<TKey, T>> Grouped<TKey, T>(string path, Func<CsvRow, TKey> key, Func<CsvRow, T> map) =>
        new(() => Pairs(path, key, map).ToLookup(p => p.Key, p => p.Item));

    private static ImmutableArray<Entry<TKey, T>> Pairs<TKey, T>(string path, Func<CsvRow, TKey> key, Func<CsvRow, T> map) =>
        Read(path, row => new Entry<TKey, T>(key(row), map(row)));

    /// <summary>A class, for what works through lists of classes is compiled once for all of them.</summary>
    private sealed class Entry<TKey, T>(TKey key, T item)
    {
        internal TKey Key => key;

        internal T Item => item;
    }
}
