using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <content>Sulfur that a soil's organic matter sets free in a year.</content>
/// <remarks>lb S/ac = soil mass x organic matter x 0.56 % x 2.5 %: 2.8 lb for each 1 % in the furrow slice (SOIL-WI2).
/// Nitrogen from organic matter is not offered as a credit: plot rates already count on it.</remarks>
public sealed partial class SecondaryRule
{
    private static readonly Lazy<IReadOnlyDictionary<PlantNutrient, (double Share, double Released)>> ByNutrient = Table.Keyed(
        "Nutrients/Data/organic-matter.csv",
        r => r.Choice<PlantNutrient>("nutrient"),
        r => (r.Number("share_of_organic_matter_pct") / 100, r.Number("released_a_year_pct") / 100)
    );

    private static (double Share, double Released) Sulfur => ByNutrient.Value[PlantNutrient.Sulfur];

    /// <summary>Sulfur set free in a year.</summary>
    /// <param name="organicMatter">Organic matter of the layer.</param>
    /// <param name="layer">Layer; null for the furrow slice.</param>
    /// <returns>The sulfur.</returns>
    public static ApplicationRate SulfurReleased(Fraction organicMatter, SampledLayer? layer = null) =>
        ApplicationRate.FromPoundsPerAcre(
            SecondaryMath.ReleasedPoundsPerAcre(
                (layer ?? SampledLayer.FurrowSlice).SoilMass.PoundsPerAcre,
                organicMatter.Value,
                Sulfur.Share,
                Sulfur.Released
            )
        );
}
