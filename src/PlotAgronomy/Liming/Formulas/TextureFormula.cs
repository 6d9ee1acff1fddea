using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>A garden table by texture and water pH, to pH 6.5 (PRACTICE), for soils whose buffer pH was not read.</summary>
internal sealed class TextureFormula : LimeFormula
{
    private static readonly Lazy<ILookup<SoilTexture, (double Ph, double PoundsPerAcre, double Target)>> Rows = Table.Grouped(
        "Liming/Data/texture.csv",
        r => r.Choice<SoilTexture>("texture"),
        r =>
            (
                r.Number("water_ph"),
                ApplicationRate.FromPoundsPerThousandSquareFeet(10 * r.Number("rate_lb_per_100_ft2")).PoundsPerAcre,
                r.Number("target_ph")
            )
    );

    internal override ImmutableArray<double> Targets =>
        [.. Rows.Value.SelectMany(rows => rows).Select(r => r.Target).Distinct().Order()];

    internal override string Reads => "water pH and a texture of sandy loam, loam or clay loam";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(LimeSample sample) =>
        sample.Report.Texture is { } texture && Rows.Value.Contains(texture) ? sample.WaterPh : null;

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh)
    {
        var rows = Rows.Value[sample.Report.Texture!.Value].OrderBy(r => r.Ph).ToList();
        int above = rows.FindIndex(r => r.Ph >= reading);
        return above <= 0
            ? rows[0].PoundsPerAcre
            : Interpolation.Line(
                rows[above - 1].Ph,
                rows[above - 1].PoundsPerAcre,
                rows[above].Ph,
                rows[above].PoundsPerAcre,
                reading
            );
    }

    internal override IEnumerable<Finding> Findings(double reading, LimeSample sample, double targetPh) =>
        Rows.Value[sample.Report.Texture!.Value].Any(r => r.Ph == reading) ? [] : [FindingCatalog.Create("lime-interpolated")];

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        yield return new(
            "Base rate",
            "table by texture, straight line between rows",
            $"pH {LimeText.Ph(reading)}: {LimeText.Tons(PoundsPerAcre(reading, sample, targetPh)!.Value)} ton/ac",
            "PRACTICE"
        );
    }
}
