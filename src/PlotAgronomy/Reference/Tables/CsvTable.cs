using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>A strict comma-separated table: header required, every row as wide as the header, no unknown column.</summary>
internal sealed class CsvTable
{
    private readonly Dictionary<string, int> columns;
    private readonly bool[] isRead;

    private CsvTable(string name, ImmutableArray<string> header, Dictionary<string, int> columns)
    {
        Name = name;
        Header = header;
        this.columns = columns;
        isRead = new bool[header.Length];
    }

    internal string Name { get; }

    internal ImmutableArray<string> Header { get; }

    internal ImmutableArray<CsvRow> Rows { get; private set; } = [];

    /// <summary>Gets the columns that no row was asked for yet.</summary>
    internal IEnumerable<string> UnreadColumns => Header.Where((_, i) => !isRead[i]);

    /// <summary>Gets the paths of all tables embedded in this assembly, such as <c>Liming/Data/methods.csv</c>.</summary>
    internal static IEnumerable<string> EmbeddedNames =>
        typeof(CsvTable).Assembly.GetManifestResourceNames().Where(n => n.EndsWith(".csv", StringComparison.Ordinal));

    /// <summary>Reads a table embedded in this assembly.</summary>
    /// <param name="name">Path below the library, such as <c>Liming/Data/methods.csv</c>.</param>
    internal static CsvTable Embedded(string name)
    {
        using var stream = typeof(CsvTable).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"No embedded table '{name}'.");
        using var reader = new StreamReader(stream);
        return Parse(name, reader.ReadToEnd());
    }

    internal static CsvTable Parse(string name, string text)
    {
        var records = CsvRecords.Split(name, text);
        if (records.Count == 0)
        {
            throw new DataFormatException(name, 1, null, "a header line is required");
        }

        var header = records[0].Fields;
        var columns = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int i = 0; i < header.Length; i++)
        {
            if (!columns.TryAdd(header[i], i))
            {
                throw new DataFormatException(name, records[0].Line, header[i], "the column stands twice");
            }
        }

        var table = new CsvTable(name, header, columns);
        var rows = ImmutableArray.CreateBuilder<CsvRow>(records.Count - 1);
        foreach (var record in records.Skip(1))
        {
            if (record.Fields.Length != header.Length)
            {
                throw new DataFormatException(
                    name,
                    record.Line,
                    null,
                    $"expected {header.Length} fields, found {record.Fields.Length}"
                );
            }

            rows.Add(new CsvRow(table, record.Line, record.Fields));
        }

        table.Rows = rows.ToImmutable();
        return table;
    }

    internal bool Has(string column) => columns.ContainsKey(column);

    internal int IndexOf(string column, int line)
    {
        if (!columns.TryGetValue(column, out int index))
        {
            throw new DataFormatException(Name, line, column, "no such column");
        }

        isRead[index] = true;
        return index;
    }
}
