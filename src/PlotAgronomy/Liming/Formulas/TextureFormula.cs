using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>A garden table by texture and water pH, for soils whose buffer pH was not read.</summary>
internal sealed class TextureFormula(CsvRow method) : LimeFormula(method)
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

    /// <summary>Rising by pH.</summary>
    private readonly Row[] rows = [.. Table.Rows.OrderBy(r => r.Ph)];

    internal override ImmutableArray<double> Targets { get; } =
    [.. Table.Rows.Select(r => r.Target).Distinct().Order()];

    internal override string Reads => "water pH and a texture that is not sand";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(PlotSoil soil) => ColumnOf(soil) is not null ? soil.PhInWater : null;

    internal override double? PoundsPerAcre(double reading, PlotSoil soil, double targetPh)
    {
        var (low, high) = Around(reading, soil);
        return low == high
            ? low.PoundsPerAcre
            : Interpolation.Line(low.Ph, low.PoundsPerAcre, high.Ph, high.PoundsPerAcre, reading);
    }

    internal override IEnumerable<Finding> Findings(double reading, PlotSoil soil, double targetPh) =>
        [
            .. ColumnOf(soil)!.Value is var column && column == soil.Texture
                ? Array.Empty<Finding>()
                :
                [
                    FindingCatalog.Create(
                        LimingCodes.TextureTakenAs,
                        ("texture", SoilWords.Textures[soil.Texture!.Value]),
                        ("column", SoilWords.Textures[column])
                    ),
                ],
            .. rows.Any(r => r.Texture == column && r.Ph == reading)
                ? Array.Empty<Finding>()
                : [FindingCatalog.Create(LimingCodes.Interpolated)],
        ];

    private static SoilTexture? ColumnOf(PlotSoil soil) =>
        soil.Texture is { } texture && Columns.Value.TryGetValue(texture, out var column) ? column : null;

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        var (low, high) = Around(reading, soil);
        yield return low == high
            ? LimeTableLines.Row(
                LimeTableLines.BaseRate,
                $"pH {LimeText.Ph(low.Ph)}: {LimeText.Tons(low.PoundsPerAcre)} ton/ac",
                low.Origin
            )
            : LimeTableLines.Between((low.Ph, low.PoundsPerAcre), (high.Ph, high.PoundsPerAcre), reading, low.Origin);
    }

    /// <summary>The row at a pH twice, else the rows below and above it; the first row twice below the table.</summary>
    private (Row Low, Row High) Around(double ph, PlotSoil soil)
    {
        var column = ColumnOf(soil)!.Value;
        Row? first = null,
            below = null;
        foreach (var row in rows)
        {
            if (row.Texture != column)
            {
                continue;
            }

            if (row.Ph >= ph)
            {
                return (row.Ph == ph ? row : below ?? row, row);
            }

            first ??= row;
            below = row;
        }

        return (first!, first!);
    }

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
