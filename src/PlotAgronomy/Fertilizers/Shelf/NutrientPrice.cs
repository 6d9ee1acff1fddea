namespace PlotAgronomy.Fertilizers;

/// <summary>What a pound of a nutrient costs in a product.</summary>
public static class NutrientPrice
{
    /// <summary>Price of one pound of a nutrient when the whole price is put on it.</summary>
    /// <param name="product">Product.</param>
    /// <param name="nutrient">Nutrient, in the label's form.</param>
    /// <returns>Money per lb of the nutrient.</returns>
    /// <exception cref="ArgumentException">The product holds none of the nutrient.</exception>
    /// <remarks>price per lb = price of a package / pounds of the nutrient in it.</remarks>
    public static decimal PerPound(FertilizerProduct product, PlantNutrient nutrient) => Residual(product, nutrient);

    /// <summary>Price of one pound of a nutrient after the other nutrients are credited at their own prices.</summary>
    /// <param name="product">Product.</param>
    /// <param name="nutrient">Nutrient that bears what is left.</param>
    /// <param name="others">Prices per lb of other nutrients it holds, for instance from straight materials; each at least
    /// 0.</param>
    /// <returns>Money per lb of the nutrient; negative when the others are worth more than the product costs.</returns>
    /// <exception cref="ArgumentException">The product holds none of the nutrient, or a price is negative.</exception>
    /// <remarks>price per lb = (price of a package - sum over others of pounds x price) / pounds of the nutrient.</remarks>
    public static decimal Residual(
        FertilizerProduct product,
        PlantNutrient nutrient,
        params IReadOnlyList<(PlantNutrient Nutrient, decimal PricePerPound)> others
    )
    {
        ArgumentNullException.ThrowIfNull(product);
        ArgumentNullException.ThrowIfNull(others);
        decimal pounds = PoundsOf(product, Guard.Defined(nutrient));
        if (pounds <= 0)
        {
            throw new ArgumentException($"{product} holds no {PlantNutrients.Names[nutrient]}.", nameof(product));
        }

        decimal left = product.Price;
        foreach (var (other, pricePerPound) in others)
        {
            left -=
                PoundsOf(product, Guard.Defined(other, nameof(others)))
                * Guard.AtLeast(pricePerPound, 0m, "(money per lb)", nameof(others));
        }

        return left / pounds;
    }

    /// <summary>Price of a product per lb of product.</summary>
    /// <param name="product">Product.</param>
    /// <returns>Money per lb.</returns>
    public static decimal PerPoundOfProduct(FertilizerProduct product)
    {
        ArgumentNullException.ThrowIfNull(product);
        return product.Price / (decimal)product.PackagePounds;
    }

    private static decimal PoundsOf(FertilizerProduct product, PlantNutrient nutrient)
    {
        double pounds = FertilizerRate.Content(product.Analysis, nutrient, product.Package).Pounds;
        return (decimal)pounds;
    }
}
