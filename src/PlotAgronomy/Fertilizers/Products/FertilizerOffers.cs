namespace PlotAgronomy;

/// <summary>What an offer of fertilizer costs for what it holds.</summary>
/// <example>
/// <code>
/// var urea = FertilizerProduct.Create("urea", FertilizerAnalysis.FromGrade("46-0-0"));
/// var offer = Offer.InBags(urea, Mass.FromPounds(50), pricePerBag: 23m);
/// Console.WriteLine(offer.PricePerPoundOf(PlantNutrient.Nitrogen));
/// // 1
/// </code>
/// </example>
public static class FertilizerOffers
{
    /// <summary>Price of one pound of a nutrient after the other nutrients are credited at their own prices; without others the
    /// whole price is put on it.</summary>
    /// <param name="offer">Product on offer.</param>
    /// <param name="nutrient">Nutrient that bears what is left, in the label's form.</param>
    /// <param name="others">Prices per lb of other nutrients it holds, for instance from straight materials; each at least
    /// 0.</param>
    /// <returns>Money per lb of the nutrient; negative when the others are worth more than the product costs.</returns>
    /// <exception cref="ArgumentException">The product holds none of the nutrient, or a price is negative.</exception>
    /// <remarks>price per lb = (price of a package - sum over others of pounds x price) / pounds of the nutrient.</remarks>
    public static decimal PricePerPoundOf(
        this Offer<FertilizerProduct> offer,
        PlantNutrient nutrient,
        params IReadOnlyList<(PlantNutrient Nutrient, decimal PricePerPound)> others
    )
    {
        ArgumentNullException.ThrowIfNull(offer);
        ArgumentNullException.ThrowIfNull(others);
        decimal pounds = PoundsOf(offer, Guard.Defined(nutrient));
        if (pounds <= 0)
        {
            throw new ArgumentException($"{offer.Item} holds no {PlantNutrients.Names[nutrient]}.", nameof(nutrient));
        }

        decimal left = offer.Price;
        foreach (var (other, pricePerPound) in others)
        {
            left -=
                PoundsOf(offer, Guard.Defined(other, nameof(others)))
                * Guard.AtLeast(pricePerPound, 0m, "(money per lb)", nameof(others));
        }

        return left / pounds;
    }

    private static decimal PoundsOf(Offer<FertilizerProduct> offer, PlantNutrient nutrient)
    {
        double pounds = offer.Item.Analysis.Content(nutrient, offer.Package.Weight).Pounds;
        return (decimal)pounds;
    }
}
