using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>Puts a straight material into packages.</summary>
public static class MaterialPacking
{
    /// <summary>The material as a product of a shelf.</summary>
    /// <param name="material">Material.</param>
    /// <param name="package">Weight of one package; above 0.</param>
    /// <param name="price">Price of one package; at least 0.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static Offer<FertilizerProduct> Packed(this FertilizerMaterial material, Mass package, decimal price)
    {
        ArgumentNullException.ThrowIfNull(material);
        return Offer.InBags(FertilizerProduct.Create(material.Name, material.Analysis, material.Substance), package, price);
    }
}
