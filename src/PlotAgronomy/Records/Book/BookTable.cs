using System.Collections.Immutable;
using System.Text;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>A book as a table: a row an entry, and a row more for each further part, in which the date stays blank.</summary>
internal static class BookTable
{
    private const string PartMark = "part.";

    internal static string Write(ImmutableArray<BookEntry> entries)
    {
        ImmutableArray<FieldWriter> written = [.. entries.Select(EntryKinds.Written)];
        ImmutableArray<string> columns =
        [
            .. new[] { EntryKinds.Id, EntryKinds.On, EntryKinds.Plot, EntryKinds.What, EntryKinds.Corrects }
                .Concat(written.SelectMany(w => w.Fields).Select(f => f.Name))
                .Concat(written.SelectMany(w => w.Parts).SelectMany(p => p.Fields).Select(f => PartMark + f.Name))
                .Distinct(),
        ];
        var text = new StringBuilder();
        text.AppendCsvLine(columns);
        foreach (var entry in written)
        {
            for (int i = 0; i < Math.Max(1, entry.Parts.Length); i++)
            {
                var cells = (i == 0 ? entry.Fields : entry.Fields[..0])
                    .Concat(entry.Parts.Skip(i).Take(1).SelectMany(p => p.Fields).Select(f => (Name: PartMark + f.Name, f.Text)))
                    .ToDictionary(f => f.Name, f => f.Text);
                text.AppendCsvLine(columns.Select(c => cells.GetValueOrDefault(c, "")));
            }
        }

        return text.ToString();
    }

    /// <exception cref="DataFormatException">It is no book: the message names file, line and field. Nothing of it is
    /// taken.</exception>
    internal static ImmutableArray<BookEntry> Read(string text, string file, KindCatalog kinds)
    {
        var table = CsvTable.Parse(file, text);
        var entries = ImmutableArray.CreateBuilder<BookEntry>();
        for (int i = 0; i < table.Rows.Length;)
        {
            int first = i++;
            while (i < table.Rows.Length && table.Rows[i].TextOrNull(EntryKinds.On) is null)
            {
                RefuseHead(table, table.Rows[i], file);
                i++;
            }

            var parts = table
                .Rows[first..i]
                .Select(row => (row.Line, Fields: Cells(table, row, isPart: true)))
                .Where(part => part.Fields.Count > 0)
                .Select(part => new FieldReader(file, part.Line, part.Fields, [], kinds));
            entries.Add(
                EntryKinds.Read(
                    new FieldReader(
                        file,
                        table.Rows[first].Line,
                        Cells(table, table.Rows[first], isPart: false),
                        [.. parts],
                        kinds
                    )
                )
            );
        }

        return entries.ToImmutable();
    }

    private static void RefuseHead(CsvTable table, CsvRow row, string file)
    {
        if (Cells(table, row, isPart: false).Keys.FirstOrDefault() is { } cell)
        {
            throw new DataFormatException(file, row.Line, cell, $"a further part has no '{cell}'; a new entry has a date");
        }
    }

    private static Dictionary<string, string> Cells(CsvTable table, CsvRow row, bool isPart) =>
        table
            .Header.Where(c => c.StartsWith(PartMark, StringComparison.Ordinal) == isPart)
            .Select(c => (Name: isPart ? c[PartMark.Length..] : c, Text: row.TextOrNull(c)))
            .Where(c => c.Text is not null)
            .ToDictionary(c => c.Name, c => c.Text!);
}
