using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Columns;

/// <summary>Reads a table of soil tests.</summary>
internal sealed class ReportTableReader(string file, SoilReport alike, IReadOnlyList<ReportColumn> columns)
{
    private static readonly char[] Separators = [',', ';', '\t'];

    private readonly ImmutableArray<TabledReport>.Builder rows = ImmutableArray.CreateBuilder<TabledReport>();
    private readonly ImmutableArray<CellProblem>.Builder problems = ImmutableArray.CreateBuilder<CellProblem>();
    private readonly Dictionary<string, int> lineOfSample = new(StringComparer.OrdinalIgnoreCase);

    internal ImmutableArray<TabledReport> Rows => rows.ToImmutable();

    internal ImmutableArray<CellProblem> Problems => problems.ToImmutable();

    internal ImmutableArray<string> UnreadHeaders { get; private set; } = [];

    internal void Read(string text)
    {
        var records = CsvRecords.Split(file, text, SeparatorOf(text));
        if (records.Count == 0)
        {
            throw new DataFormatException(file, 1, null, "a header line is required");
        }

        ImmutableArray<string> headers = [.. records[0].Fields.Select(h => h.Trim())];
        int[] places = [.. columns.Select(c => PlaceOf(c, headers, records[0].Line))];
        UnreadHeaders = [.. headers.Where((_, place) => !places.Contains(place))];
        foreach (var record in records.Skip(1))
        {
            if (record.Fields.Length == headers.Length)
            {
                rows.Add(Row(record, places));
            }
            else if (record.Fields.Any(f => !string.IsNullOrWhiteSpace(f)))
            {
                string wanted = Amounts.PrintCount(headers.Length, "field"),
                    found = Amounts.Print(record.Fields.Length, 0);
                problems.Add(new(record.Line, headers[0], $"expected {wanted}, found {found}: the line is left out"));
            }
        }
    }

    private TabledReport Row(CsvRecords.Record record, int[] places)
    {
        var draft = new ReportDraft();
        for (int i = 0; i < places.Length; i++)
        {
            if (columns[i].Take(record.Fields[places[i]].Trim(), draft) is { } problem)
            {
                problems.Add(new(record.Line, columns[i].Header, problem));
            }
        }

        var row = new TabledReport(record.Line, draft, alike);
        if (row.Sample.Length > 0 && !lineOfSample.TryAdd(row.Sample, row.Line))
        {
            string first = Amounts.Print(lineOfSample[row.Sample], 0),
                header = columns.First(c => c.IsSample).Header;
            problems.Add(new(row.Line, header, $"sample '{row.Sample}' stands on line {first} already"));
        }

        return row;
    }

    private int PlaceOf(ReportColumn column, ImmutableArray<string> headers, int line)
    {
        var places = Enumerable.Range(0, headers.Length).Where(i => Is(column, headers[i])).Take(2).ToArray();
        return places.Length switch
        {
            1 => places[0],
            0 => throw Refused($"no such column; there are {string.Join(", ", headers)}"),
            _ => throw Refused("the column stands twice"),
        };

        DataFormatException Refused(string problem) => new(file, line, column.Header, problem);
    }

    /// <summary>The sign that parts the header line into most of the stated headers.</summary>
    private char SeparatorOf(string text)
    {
        int end = text.IndexOf('\n', StringComparison.Ordinal);
        string header = (end < 0 ? text : text[..end]).TrimStart('\uFEFF');
        return Separators.MaxBy(sign =>
        {
            string[] parts = header.Split(sign, StringSplitOptions.TrimEntries);
            return columns.Count(c => parts.Any(p => Is(c, p.Trim('"'))));
        });
    }

    private static bool Is(ReportColumn column, string header) =>
        column.Header.Equals(header, StringComparison.OrdinalIgnoreCase);
}
