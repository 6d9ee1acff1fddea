using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>A garden table by texture and water pH, for soils whose buffer pH was not read.</summary>
internal sealed class TextureFormula(CsvRow method) : LimeFormulaBy<TableLimeKernel>(method)
{
    private static readonly Table<Row> Table = new("Liming/Data/texture.csv", Row.FromCsv);

    /// <summary>The column that a texture is read in; sand and loamy sand have none, for they hold too little to be limed by a
    /// table.</summary>
    private static readonly Lazy<IReadOnlyDictionary<SoilTexture, SoilTexture>> Columns = Reference.Table.Keyed(
        "Liming/Data/texture-columns.csv",
        r => r.Choice<SoilTexture>("texture"),
        r =>
        {
            _ = r.Origin();
            return r.Choice<SoilTexture>("taken_as");
        }
    );

    /// <summary>By texture, rising by pH; none for a texture that has no column.</summary>
    private readonly Row[][] byTexture = Array.ConvertAll(Enum.GetValues<SoilTexture>(), RowsOf);

    /// <summary>The same as a column of readings and rates.</summary>
    private readonly LimeTableColumn?[] columnByTexture = Array.ConvertAll(Enum.GetValues<SoilTexture>(), ColumnFor);

    internal override ImmutableArray<double> Targets { get; } =
    [.. Table.Rows.Select(r => r.Target).Distinct().Order()];

    internal override string Reads => "water pH and a texture that is not sand";

    internal override bool ReadsPh => true;

    internal override bool ReadsWaterPh => true;

    internal override bool NeedsWaterPh => true;

    internal override LimeRemarks MayRemark => LimeRemarks.Interpolated;

    internal override double? ReadingOf(PlotSoil soil) => TakesTexture(soil.Texture) ? soil.PhInWater : null;

    internal override bool TakesTexture(SoilTexture? texture) => ColumnOf(texture) is not null;

    internal override TableLimeKernel KernelTo(double targetPh, SoilTexture? texture) =>
        new(columnByTexture[(int)ColumnOf(texture)!.Value]!);

    internal override IEnumerable<Finding> AboutTexture(SoilTexture? texture) =>
        texture is { } known && ColumnOf(known) is { } column && column != known
            ?
            [
                FindingCatalog.Create(
                    LimingCodes.TextureTakenAs,
                    ("texture", SoilWords.Textures[known]),
                    ("column", SoilWords.Textures[column])
                ),
            ]
            : [];

    internal override IEnumerable<Finding> Findings(double reading, PlotSoil soil, double targetPh) =>
        Around(reading, soil) is (Row low, Row high) && low != high
            ? AboutTexture(soil.Texture).Append(FindingCatalog.Create(LimingCodes.Interpolated))
            : AboutTexture(soil.Texture);

    private static SoilTexture? ColumnOf(SoilTexture? texture) =>
        texture is { } known && Columns.Value.TryGetValue(known, out var column) ? column : null;

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        if (Around(reading, soil) is not (Row low, Row high))
        {
            yield break;
        }

        yield return low == high
            ? LimeTableLines.Row(
                LimeTableLines.BaseRate,
                $"pH {LimeText.Ph(low.Ph)}: {LimeText.Tons(low.PoundsPerAcre)} ton/ac",
                low.Origin
            )
            : LimeTableLines.Between((low.Ph, low.PoundsPerAcre), (high.Ph, high.PoundsPerAcre), reading, low.Origin);
    }

    /// <summary>The row at a pH twice, else the rows below and above it; null beyond the first and the last.</summary>
    private (Row Low, Row High)? Around(double ph, PlotSoil soil)
    {
        int column = (int)ColumnOf(soil.Texture)!.Value;
        var (below, above) = columnByTexture[column]!.Around(ph);
        return above < 0 ? null : (byTexture[column][below], byTexture[column][above]);
    }

    private static Row[] RowsOf(SoilTexture texture) => [.. Table.Rows.Where(r => r.Texture == texture).OrderBy(r => r.Ph)];

    private static LimeTableColumn? ColumnFor(SoilTexture texture) =>
        RowsOf(texture) is { Length: > 0 } rows ? new([.. rows.Select(r => (r.Ph, r.PoundsPerAcre, false))]) : null;

    private sealed record Row(SoilTexture Texture, double Ph, double PoundsPerAcre, double Target, Origin Origin)
    {
        internal static Row FromCsv(CsvRow row) =>
            new(
                row.Choice<SoilTexture>("texture"),
                row.Number("water_ph"),
                ApplicationRate.FromPoundsPerThousandSquareFeet(10 * row.Number("rate_lb_per_100_ft2")).PoundsPerAcre,
                row.Number("target_ph"),
                row.Origin()
            );
    }
}
