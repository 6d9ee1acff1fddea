using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>A garden table by texture and water pH, for soils whose buffer pH was not read.</summary>
internal sealed class TextureFormula(CsvRow method) : LimeFormula(method)
{
    private static readonly Lazy<ILookup<SoilTexture, Row>> Rows = Table.Grouped(
        "Liming/Data/texture.csv",
        r => r.Choice<SoilTexture>("texture"),
        Row.FromCsv
    );

    /// <summary>The column that a texture is read in; sand and loamy sand have none, for they hold too little to be limed by a
    /// table.</summary>
    private static readonly Lazy<IReadOnlyDictionary<SoilTexture, SoilTexture>> Columns = Table.Keyed(
        "Liming/Data/texture-columns.csv",
        r => r.Choice<SoilTexture>("texture"),
        r =>
        {
            _ = r.Origin();
            return r.Choice<SoilTexture>("taken_as");
        }
    );

    /// <summary>Rising by pH.</summary>
    private readonly IReadOnlyDictionary<SoilTexture, ImmutableArray<Row>> byTexture = Rows.Value.ToDictionary(
        rows => rows.Key,
        rows => rows.OrderBy(r => r.Ph).ToImmutableArray()
    );

    internal override ImmutableArray<double> Targets { get; } =
    [.. Rows.Value.SelectMany(rows => rows).Select(r => r.Target).Distinct().Order()];

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
            .. byTexture[column].Any(r => r.Ph == reading)
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
        var rows = byTexture[ColumnOf(soil)!.Value];
        int above = 0;
        while (above < rows.Length && rows[above].Ph < ph)
        {
            above++;
        }

        above = above == rows.Length ? 0 : above;
        return above == 0 || rows[above].Ph == ph ? (rows[above], rows[above]) : (rows[above - 1], rows[above]);
    }

    private sealed record Row(double Ph, double PoundsPerAcre, double Target, Origin Origin)
    {
        internal static Row FromCsv(CsvRow row) =>
            new(
                row.Number("water_ph"),
                ApplicationRate.FromPoundsPerThousandSquareFeet(10 * row.Number("rate_lb_per_100_ft2")).PoundsPerAcre,
                row.Number("target_ph"),
                row.Origin()
            );
    }
}
