using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Sulfur that a soil's organic matter sets free in a year.</summary>
/// <remarks>lb S/ac = soil mass x organic matter x 0.56 % x 2.5 %: 2.8 lb for each 1 % in the furrow slice (SOIL-WI2).
/// Nitrogen from organic matter is not offered as a credit: plot rates already count on it.</remarks>
public static class OrganicMatterSupply
{
    private static readonly Lazy<(double Share, double Released)> Sulfur = new(() =>
    {
        var row = CsvTable
            .Embedded(
                "Nutrients/Data/organic-matter.csv",
                "id",
                "nutrient",
                "of_organic_matter_pct",
                "released_a_year_pct",
                "source_id",
                "locator",
                "status"
            )
            .Rows.Single(r => r.Choice<PlantNutrient>("nutrient") == PlantNutrient.Sulfur);
        return (row.Number("of_organic_matter_pct") / 100, row.Number("released_a_year_pct") / 100);
    });

    /// <summary>Sulfur set free in a year.</summary>
    /// <param name="organicMatter">Organic matter of the layer.</param>
    /// <param name="layer">Layer; null for the furrow slice.</param>
    /// <returns>The sulfur.</returns>
    public static ApplicationRate SulfurReleased(Fraction organicMatter, SampledLayer? layer = null) =>
        ApplicationRate.FromPoundsPerAcre(
            SecondaryMath.ReleasedPoundsPerAcre(
                (layer ?? SampledLayer.FurrowSlice).SoilMass.PoundsPerAcre,
                organicMatter.Value,
                Sulfur.Value.Share,
                Sulfur.Value.Released
            )
        );
}
