using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>The header of a table, and which of its columns were asked for.</summary>
internal sealed class CsvColumns
{
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);
    private readonly bool[] isRead;

    /// <param name="table">Name of the table, for the messages.</param>
    /// <param name="names">Names of the columns in order.</param>
    /// <param name="line">Line of the header.</param>
    /// <exception cref="DataFormatException">A column stands twice.</exception>
    internal CsvColumns(string table, ImmutableArray<string> names, int line)
    {
        Table = table;
        Names = names;
        isRead = new bool[names.Length];
        for (int i = 0; i < names.Length; i++)
        {
            if (!places.TryAdd(names[i], i))
            {
                throw new DataFormatException(table, line, names[i], "the column stands twice");
            }
        }
    }

    internal string Table { get; }

    internal ImmutableArray<string> Names { get; }

    /// <summary>Gets the columns that no row was asked for yet.</summary>
    internal IEnumerable<string> Unread => Names.Where((_, i) => !isRead[i]);

    internal bool Has(string column) => places.ContainsKey(column);

    /// <summary>The place of a column, which counts as read from now on.</summary>
    internal int Read(string column, int line)
    {
        if (!places.TryGetValue(column, out int place))
        {
            throw new DataFormatException(Table, line, column, "no such column");
        }

        isRead[place] = true;
        return place;
    }
}
