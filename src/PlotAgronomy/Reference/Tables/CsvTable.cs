using System.Collections.Immutable;
using System.Text;

namespace PlotAgronomy.Reference;

/// <summary>A strict comma-separated table: header required, every row as wide as the header, no unknown column.</summary>
internal sealed class CsvTable
{
    private static readonly Lazy<ImmutableArray<string>> Names = new(() =>
        [.. typeof(CsvTable).Assembly.GetManifestResourceNames().Where(n => n.EndsWith(".csv", StringComparison.Ordinal))]
    );

    private readonly CsvColumns columns;

    private CsvTable(CsvColumns columns, ImmutableArray<CsvRow> rows) => (this.columns, Rows) = (columns, rows);

    internal string Name => columns.Table;

    internal ImmutableArray<string> Header => columns.Names;

    internal ImmutableArray<CsvRow> Rows { get; }

    /// <summary>Gets the columns that no row was asked for yet.</summary>
    internal IEnumerable<string> UnreadColumns => columns.Unread;

    /// <summary>Gets the paths of all tables embedded in this assembly, such as <c>Liming/Data/methods.csv</c>.</summary>
    internal static ImmutableArray<string> EmbeddedNames => Names.Value;

    /// <summary>Reads a table embedded in this assembly.</summary>
    /// <param name="name">Path below the library, such as <c>Liming/Data/methods.csv</c>.</param>
    internal static CsvTable Embedded(string name)
    {
        using var stream = Open(name);
        byte[] text = new byte[stream.Length];
        stream.ReadExactly(text);
        return Parse(name, Encoding.UTF8.GetString(text));
    }

    /// <summary>Reads the first rows of an embedded table: those whose first cells are of a sort that stands first.</summary>
    internal static CsvTable EmbeddedHead(string name, Func<string, bool> isOfHead)
    {
        using var lines = new StreamReader(Open(name), Encoding.UTF8);
        var head = new StringBuilder(lines.ReadLine());
        while (lines.ReadLine() is { } line && isOfHead(line.Split(',', 2)[0]))
        {
            head.Append('\n').Append(line);
        }

        return Parse(name, head.ToString());
    }

    private static Stream Open(string name) =>
        typeof(CsvTable).Assembly.GetManifestResourceStream(name)
        ?? throw new InvalidOperationException($"No embedded table '{name}'.");

    internal static CsvTable Parse(string name, string text)
    {
        var records = CsvRecords.Split(name, text);
        if (records.Count == 0)
        {
            throw new DataFormatException(name, 1, null, "a header line is required");
        }

        var columns = new CsvColumns(name, records[0].Fields, records[0].Line);
        int width = columns.Names.Length;
        var rows = ImmutableArray.CreateBuilder<CsvRow>(records.Count - 1);
        foreach (var record in records.Skip(1))
        {
            if (record.Fields.Length != width)
            {
                throw new DataFormatException(name, record.Line, null, $"expected {width} fields, found {record.Fields.Length}");
            }

            rows.Add(new CsvRow(columns, record.Line, record.Fields));
        }

        return new CsvTable(columns, rows.ToImmutable());
    }

    internal bool Has(string column) => columns.Has(column);
}
