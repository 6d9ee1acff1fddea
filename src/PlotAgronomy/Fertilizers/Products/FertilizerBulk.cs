using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>How light a dry product may lie in a hopper: what was read for its substance, else for any dry material.</summary>
internal static class FertilizerBulk
{
    internal static Density LightestOf(FertilizerProduct product)
    {
        CatalogFigure[] own = [.. LightestOfEach(m => m.Substance == product.Substance)];
        return Density.FromPoundsPerCubicFoot((own.Length > 0 ? own : LightestOfEach(_ => true)).Min(f => f.Value));
    }

    private static IEnumerable<CatalogFigure> LightestOfEach(Func<FertilizerMaterial, bool> isMeant) =>
        FertilizerMaterial.All.Where(isMeant).Select(m => m.Figure(MaterialProperty.BulkDensityLow)).OfType<CatalogFigure>();
}
