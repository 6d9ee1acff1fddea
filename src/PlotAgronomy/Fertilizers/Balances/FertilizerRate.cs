using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>From a need in nutrients to pounds of product, and back. Nothing is rounded.</summary>
public static class FertilizerRate
{
    /// <summary>Rate of product that brings a rate of one nutrient.</summary>
    /// <param name="analysis">Guaranteed analysis.</param>
    /// <param name="nutrient">Nutrient to bring, in the label's form.</param>
    /// <param name="need">Rate of the nutrient.</param>
    /// <returns>Rate of product.</returns>
    /// <exception cref="ArgumentException">The product holds none of the nutrient.</exception>
    /// <remarks>product = 100 x need / percent. Plain arithmetic.</remarks>
    public static ApplicationRate ForNutrient(FertilizerAnalysis analysis, PlantNutrient nutrient, ApplicationRate need)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        double percent = analysis.Percent(nutrient);
        return percent > 0
            ? ApplicationRate.FromPoundsPerAcre(FertilizerMath.ProductFor(need.PoundsPerAcre, percent))
            : throw new ArgumentException($"{analysis} holds no {PlantNutrients.Names[nutrient]}.", nameof(analysis));
    }

    /// <summary>Rate of a nutrient that a rate of product brings.</summary>
    /// <param name="analysis">Guaranteed analysis.</param>
    /// <param name="nutrient">Nutrient, in the label's form.</param>
    /// <param name="product">Rate of product.</param>
    /// <returns>Rate of the nutrient.</returns>
    /// <remarks>nutrient = product x percent / 100.</remarks>
    public static ApplicationRate Brings(FertilizerAnalysis analysis, PlantNutrient nutrient, ApplicationRate product)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return ApplicationRate.FromPoundsPerAcre(FertilizerMath.NutrientIn(product.PoundsPerAcre, analysis.Percent(nutrient)));
    }

    /// <summary>Weight of a nutrient in a weight of product, such as a bag.</summary>
    /// <param name="analysis">Guaranteed analysis.</param>
    /// <param name="nutrient">Nutrient, in the label's form.</param>
    /// <param name="product">Weight of product; at least 0.</param>
    /// <returns>Weight of the nutrient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative weight.</exception>
    public static Mass Content(FertilizerAnalysis analysis, PlantNutrient nutrient, Mass product)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        double pounds = product.Pounds;
        return Mass.FromPounds(
            FertilizerMath.NutrientIn(Guard.AtLeast(pounds, 0, "lb", nameof(product)), analysis.Percent(nutrient))
        );
    }

    /// <summary>Weight of a nutrient in one US gallon of a liquid.</summary>
    /// <param name="analysis">Guaranteed analysis, percent by weight.</param>
    /// <param name="nutrient">Nutrient, in the label's form.</param>
    /// <param name="density">Density from the label; above 0.</param>
    /// <returns>Weight in one US gallon.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Density not above 0.</exception>
    /// <remarks>nutrient per gallon = density x percent / 100.</remarks>
    public static Mass ContentPerGallon(FertilizerAnalysis analysis, PlantNutrient nutrient, Density density)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        double poundsPerGallon = density.PoundsPerUSGallon;
        return Mass.FromPounds(
            FertilizerMath.NutrientIn(Guard.Above(poundsPerGallon, 0, "lb/gal", nameof(density)), analysis.Percent(nutrient))
        );
    }

    /// <summary>Volume of a liquid that brings a rate of one nutrient to an area.</summary>
    /// <param name="analysis">Guaranteed analysis, percent by weight.</param>
    /// <param name="nutrient">Nutrient to bring, in the label's form.</param>
    /// <param name="need">Rate of the nutrient.</param>
    /// <param name="density">Density from the label; above 0.</param>
    /// <param name="area">Area to cover; at least 0.</param>
    /// <returns>Volume of the liquid.</returns>
    /// <exception cref="ArgumentException">The liquid holds none of the nutrient, or a value outside its range.</exception>
    /// <remarks>volume = need x area / (density x percent / 100).</remarks>
    public static Volume LiquidFor(
        FertilizerAnalysis analysis,
        PlantNutrient nutrient,
        ApplicationRate need,
        Density density,
        Area area
    )
    {
        double poundsPerCubicFoot = density.PoundsPerCubicFoot;
        double pounds = ForNutrient(analysis, nutrient, need).Over(area).Pounds;
        return Volume.FromCubicFeet(pounds / Guard.Above(poundsPerCubicFoot, 0, "lb/ft3", nameof(density)));
    }
}
