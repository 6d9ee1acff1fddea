using PlotAgronomy.Fertilizers;
using UnitsNet;

namespace PlotAgronomy;

/// <content>From a need in nutrients to pounds of product, and back. Nothing is rounded.</content>
public sealed partial class FertilizerAnalysis
{
    /// <summary>Rate of product that brings a rate of one nutrient.</summary>
    /// <param name="nutrient">Nutrient to bring, in the label's form.</param>
    /// <param name="need">Rate of the nutrient.</param>
    /// <returns>Rate of product.</returns>
    /// <exception cref="ArgumentException">The product holds none of the nutrient.</exception>
    /// <remarks>product = 100 x need / percent. Plain arithmetic.</remarks>
    public ApplicationRate RateFor(PlantNutrient nutrient, ApplicationRate need)
    {
        double percent = Percent(nutrient);
        return percent > 0
            ? ApplicationRate.FromPoundsPerAcre(FertilizerMath.ProductFor(need.PoundsPerAcre, percent))
            : throw new ArgumentException($"{this} holds no {PlantNutrients.Names[nutrient]}.", nameof(nutrient));
    }

    /// <summary>Weight of product that brings a weight of one nutrient, whatever the area.</summary>
    /// <param name="nutrient">Nutrient to bring, in the label's form.</param>
    /// <param name="wanted">Weight of the nutrient; at least 0.</param>
    /// <returns>Weight of product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative weight.</exception>
    /// <exception cref="ArgumentException">The product holds none of the nutrient.</exception>
    /// <remarks>product = 100 x wanted / percent. Plain arithmetic.</remarks>
    public Mass MassFor(PlantNutrient nutrient, Mass wanted)
    {
        double pounds = wanted.Pounds;
        double percent = Percent(nutrient);
        Guard.AtLeast(pounds, 0, "lb", nameof(wanted));
        return percent > 0
            ? Mass.FromPounds(FertilizerMath.ProductFor(pounds, percent))
            : throw new ArgumentException($"{this} holds no {PlantNutrients.Names[nutrient]}.", nameof(nutrient));
    }

    /// <summary>Rate of a nutrient that a rate of product brings.</summary>
    /// <param name="nutrient">Nutrient, in the label's form.</param>
    /// <param name="product">Rate of product.</param>
    /// <returns>Rate of the nutrient.</returns>
    /// <remarks>nutrient = product x percent / 100.</remarks>
    public ApplicationRate Brings(PlantNutrient nutrient, ApplicationRate product) =>
        ApplicationRate.FromPoundsPerAcre(FertilizerMath.NutrientIn(product.PoundsPerAcre, Percent(nutrient)));

    /// <summary>Weight of a nutrient in a weight of product, such as a bag.</summary>
    /// <param name="nutrient">Nutrient, in the label's form.</param>
    /// <param name="product">Weight of product; at least 0.</param>
    /// <returns>Weight of the nutrient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative weight.</exception>
    public Mass Content(PlantNutrient nutrient, Mass product)
    {
        double pounds = product.Pounds;
        return Mass.FromPounds(FertilizerMath.NutrientIn(Guard.AtLeast(pounds, 0, "lb", nameof(product)), Percent(nutrient)));
    }

    /// <summary>Weight of a nutrient in one US gallon of a liquid.</summary>
    /// <param name="nutrient">Nutrient, in the label's form.</param>
    /// <param name="density">Density from the label; above 0.</param>
    /// <returns>Weight in one US gallon.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Density not above 0.</exception>
    /// <remarks>nutrient per gallon = density x percent / 100.</remarks>
    public Mass ContentPerGallon(PlantNutrient nutrient, Density density)
    {
        double poundsPerGallon = density.PoundsPerUSGallon;
        return Mass.FromPounds(
            FertilizerMath.NutrientIn(Guard.Above(poundsPerGallon, 0, "lb/gal", nameof(density)), Percent(nutrient))
        );
    }

    /// <summary>Volume of a liquid that brings a rate of one nutrient to an area.</summary>
    /// <param name="nutrient">Nutrient to bring, in the label's form.</param>
    /// <param name="need">Rate of the nutrient.</param>
    /// <param name="density">Density from the label; above 0.</param>
    /// <param name="area">Area to cover; at least 0.</param>
    /// <returns>Volume of the liquid.</returns>
    /// <exception cref="ArgumentException">The liquid holds none of the nutrient, or a value outside its range.</exception>
    /// <remarks>volume = need x area / (density x percent / 100).</remarks>
    public Volume LiquidFor(PlantNutrient nutrient, ApplicationRate need, Density density, Area area)
    {
        double poundsPerCubicFoot = density.PoundsPerCubicFoot;
        double pounds = RateFor(nutrient, need).Over(area).Pounds;
        return Volume.FromCubicFeet(pounds / Guard.Above(poundsPerCubicFoot, 0, "lb/ft3", nameof(density)));
    }
}
