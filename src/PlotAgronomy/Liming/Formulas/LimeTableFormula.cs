using System.Collections.Immutable;
using System.Runtime.InteropServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A printed table: rows by reading, columns by target. Straight line between rows, nothing between columns.</summary>
internal sealed class LimeTableFormula : LimeFormulaBy<TableLimeKernel>
{
    private static readonly Lazy<ILookup<string, Cell>> Tables = Table.Grouped(
        "Liming/Data/tables.csv",
        r => r.Text("method_id"),
        Cell.FromRow
    );

    private readonly ImmutableArray<SoilBuffer> buffers;
    private readonly Cell[][] cells;
    private readonly LimeTableColumn[] columns;

    internal LimeTableFormula(CsvRow method)
        : base(method)
    {
        buffers = LimeReadings.Buffers(method);
        cells = Columns(Tables.Value[method.Text("id")].ToArray());
        columns = Array.ConvertAll(cells, c => new LimeTableColumn([.. c.Select(cell => cell.AsNumbers)]));
        Targets = ImmutableCollectionsMarshal.AsImmutableArray(Array.ConvertAll(cells, c => c[0].TargetPh));
        CellFinding = cells.SelectMany(c => c).Select(cell => cell.Finding).OfType<string>().Distinct().SingleOrDefault();
    }

    internal override ImmutableArray<double> Targets { get; }

    internal override string? CellFinding { get; }

    internal override LimeRemarks MayRemark => LimeRemarks.Interpolated | LimeRemarks.CellMarked;

    internal override string Reads => buffers.IsEmpty ? "exchangeable acidity" : $"{LimeReadings.InWords(buffers)} buffer pH";

    internal override bool ReadsPh => !buffers.IsEmpty;

    internal override double? ReadingOf(PlotSoil soil) =>
        buffers.IsEmpty ? soil.AcidityPer100Grams : LimeReadings.BufferPh(soil, buffers);

    internal override TableLimeKernel KernelTo(double targetPh, SoilTexture? texture) => new(ColumnTo(targetPh));

    internal LimeTableColumn ColumnTo(double targetPh) => columns[Targets.IndexOf(targetPh)];

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        if (Around(reading, targetPh) is not (Cell low, Cell high))
        {
            yield break;
        }

        yield return low == high
            ? LimeTableLines.Row(
                LimeTableLines.BaseRate,
                $"row {Amounts.Print(reading, 2)}, to pH {LimeText.Ph(targetPh)}: {LimeText.Tons(low.PoundsPerAcre)} ton/ac",
                low.Origin
            )
            : LimeTableLines.Between((low.Reading, low.PoundsPerAcre), (high.Reading, high.PoundsPerAcre), reading, low.Origin);
    }

    internal override IEnumerable<Finding> Findings(double reading, PlotSoil soil, double targetPh)
    {
        if (Around(reading, targetPh) is not (Cell low, Cell high))
        {
            yield break;
        }

        if (low != high)
        {
            yield return FindingCatalog.Create(LimingCodes.Interpolated);
        }

        foreach (string code in new[] { low.Finding, high.Finding }.OfType<string>().Distinct())
        {
            yield return FindingCatalog.Create(code);
        }
    }

    /// <summary>The cells by target, then by reading.</summary>
    private static Cell[][] Columns(Cell[] cells)
    {
        Array.Sort(cells, (one, other) =>
            one.TargetPh.CompareTo(other.TargetPh) is var first && first != 0 ? first : one.Reading.CompareTo(other.Reading)
        );
        var columns = new List<Cell[]>();
        for (int from = 0, to; from < cells.Length; from = to)
        {
            to = from + 1;
            while (to < cells.Length && cells[to].TargetPh.Equals(cells[from].TargetPh))
            {
                to++;
            }

            columns.Add(cells[from..to]);
        }

        return [.. columns];
    }

    private (Cell Low, Cell High)? Around(double reading, double targetPh)
    {
        var column = cells[Targets.IndexOf(targetPh)];
        var (below, above) = ColumnTo(targetPh).Around(reading);
        return above < 0 ? null : (column[below], column[above]);
    }

    private sealed record Cell(double TargetPh, double Reading, double PoundsPerAcre, string? Finding, Origin Origin)
    {
        internal (double Reading, double Rate, bool IsMarked) AsNumbers => (Reading, PoundsPerAcre, Finding is not null);

        internal static Cell FromRow(CsvRow row) =>
            new(
                row.Number("target_ph"),
                row.Number("reading"),
                LimeUnits.PoundsPerAcre(row, "rate"),
                row.TextOrNull("finding"),
                row.Origin()
            );
    }
}
