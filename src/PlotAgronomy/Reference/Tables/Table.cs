using System.Collections.Frozen;
using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>An embedded table as objects, read when first asked for.</summary>
/// <remarks>The mapping declares the header: a column that it asks for must be there, and one that it never asks for is an
/// error.</remarks>
/// <param name="path">Path below the library, such as <c>Liming/Data/bases.csv</c>.</param>
/// <param name="map">Makes one object of a row.</param>
internal sealed class Table<T>(string path, Func<CsvRow, T> map)
{
    private readonly Lazy<ImmutableArray<T>> rows = new(() => Read(CsvTable.Embedded(path), map));

    /// <summary>The objects, in the order of the table.</summary>
    internal ImmutableArray<T> Rows => rows.Value;

    internal static ImmutableArray<T> Read(CsvTable table, Func<CsvRow, T> map)
    {
        ImmutableArray<T> all = [.. table.Rows.Select(map)];
        string unread = string.Join(", ", table.UnreadColumns);
        return unread.Length == 0 ? all : throw new DataFormatException(table.Name, 1, unread, "nobody reads the column");
    }

    /// <summary>The objects by a key that no two share.</summary>
    internal Lazy<FrozenDictionary<TKey, T>> By<TKey>(Func<T, TKey> key)
        where TKey : notnull => new(() => Rows.ToFrozenDictionary(key));

    /// <summary>The objects by a key that several share.</summary>
    internal Lazy<ILookup<TKey, T>> GroupedBy<TKey>(Func<T, TKey> key) => new(() => Rows.ToLookup(key));
}
