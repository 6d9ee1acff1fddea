using PlotAgronomy.Fertilizers;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A product on the shelf: what is printed on it, what a package weighs, what it costs.</summary>
public sealed class FertilizerProduct
{
    private FertilizerProduct(
        string name,
        FertilizerAnalysis analysis,
        Mass package,
        decimal price,
        FertilizerSubstance substance,
        Density? density
    )
    {
        Name = name;
        Analysis = analysis;
        Package = package;
        Price = price;
        Substance = substance;
        LiquidDensity = density;
        Counted = LabelCompletion.Completed(analysis, substance);
    }

    /// <summary>Gets the name on the shelf.</summary>
    public string Name { get; }

    /// <summary>Gets the guaranteed analysis.</summary>
    public FertilizerAnalysis Analysis { get; }

    /// <summary>Gets the weight of one package.</summary>
    public Mass Package { get; }

    /// <summary>Gets the price of one package, in the plan's one currency; at least 0.</summary>
    public decimal Price { get; }

    /// <summary>Gets the price of a pound of product.</summary>
    public decimal PricePerPound => Price / (decimal)PackagePounds;

    /// <summary>Gets what it is made of.</summary>
    public FertilizerSubstance Substance { get; }

    /// <summary>Gets the density when it is a liquid, or null.</summary>
    public Density? LiquidDensity { get; }

    /// <summary>Gets the analysis a plan counts with: the label, and what the compound holds although the label is
    /// silent.</summary>
    internal FertilizerAnalysis Counted { get; }

    internal double PackagePounds
    {
        get
        {
            double pounds = Package.Pounds;
            return pounds;
        }
    }

    /// <summary>Creates a product sold by weight.</summary>
    /// <param name="name">Name on the shelf.</param>
    /// <param name="analysis">Guaranteed analysis.</param>
    /// <param name="package">Weight of one package; above 0.</param>
    /// <param name="price">Price of one package; at least 0.</param>
    /// <param name="substance">What it is made of; null takes the straight material of the same grade in the catalog, else a
    /// mixture.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentException">No name, a value outside its range, or an analysis its compound cannot
    /// have.</exception>
    public static FertilizerProduct Create(
        string name,
        FertilizerAnalysis analysis,
        Mass package,
        decimal price,
        FertilizerSubstance? substance = null
    )
    {
        ArgumentNullException.ThrowIfNull(analysis);
        double pounds = package.Pounds;
        Guard.Above(pounds, 0, "lb", nameof(package));
        return Checked(name, analysis, package, price, substance, null);
    }

    /// <summary>Creates a liquid sold by volume.</summary>
    /// <param name="name">Name on the shelf.</param>
    /// <param name="analysis">Guaranteed analysis, percent by weight.</param>
    /// <param name="package">Volume of one package; above 0.</param>
    /// <param name="density">Density from the label; above 0.</param>
    /// <param name="price">Price of one package; at least 0.</param>
    /// <param name="substance">What it is made of; null takes the catalog's material of the same grade, else a mixture.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentException">No name, a value outside its range, or an analysis its compound cannot
    /// have.</exception>
    public static FertilizerProduct Liquid(
        string name,
        FertilizerAnalysis analysis,
        Volume package,
        Density density,
        decimal price,
        FertilizerSubstance? substance = null
    )
    {
        ArgumentNullException.ThrowIfNull(analysis);
        double cubicFeet = package.CubicFeet;
        double poundsPerCubicFoot = density.PoundsPerCubicFoot;
        Guard.Above(cubicFeet, 0, "ft3", nameof(package));
        Guard.Above(poundsPerCubicFoot, 0, "lb/ft3", nameof(density));
        return Checked(name, analysis, Mass.FromPounds(cubicFeet * poundsPerCubicFoot), price, substance, density);
    }

    /// <summary>A straight material in packages.</summary>
    /// <param name="material">Material.</param>
    /// <param name="package">Weight of one package; above 0.</param>
    /// <param name="price">Price of one package; at least 0.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static FertilizerProduct FromMaterial(FertilizerMaterial material, Mass package, decimal price)
    {
        ArgumentNullException.ThrowIfNull(material);
        return Create(material.Name, material.Analysis, package, price, material.Substance);
    }

    /// <summary>Price of one pound of a nutrient after the other nutrients are credited at their own prices; without others the
    /// whole price is put on it.</summary>
    /// <param name="nutrient">Nutrient that bears what is left, in the label's form.</param>
    /// <param name="others">Prices per lb of other nutrients it holds, for instance from straight materials; each at least
    /// 0.</param>
    /// <returns>Money per lb of the nutrient; negative when the others are worth more than the product costs.</returns>
    /// <exception cref="ArgumentException">The product holds none of the nutrient, or a price is negative.</exception>
    /// <remarks>price per lb = (price of a package - sum over others of pounds x price) / pounds of the nutrient.</remarks>
    public decimal PricePerPoundOf(
        PlantNutrient nutrient,
        params IReadOnlyList<(PlantNutrient Nutrient, decimal PricePerPound)> others
    )
    {
        ArgumentNullException.ThrowIfNull(others);
        decimal pounds = PoundsOf(Guard.Defined(nutrient));
        if (pounds <= 0)
        {
            throw new ArgumentException($"{this} holds no {PlantNutrients.Names[nutrient]}.", nameof(nutrient));
        }

        decimal left = Price;
        foreach (var (other, pricePerPound) in others)
        {
            left -=
                PoundsOf(Guard.Defined(other, nameof(others)))
                * Guard.AtLeast(pricePerPound, 0m, "(money per lb)", nameof(others));
        }

        return left / pounds;
    }

    /// <summary>Name and grade.</summary>
    /// <returns>Text such as <c>potash (0-0-60)</c>.</returns>
    public override string ToString() => Name == Analysis.ToString() ? Name : $"{Name} ({Analysis})";

    private static FertilizerProduct Checked(
        string name,
        FertilizerAnalysis analysis,
        Mass package,
        decimal price,
        FertilizerSubstance? substance,
        Density? density
    )
    {
        Guard.NotBlank(name);
        Guard.AtLeast(price, 0m, "(the price of one package)");
        var made = substance is { } said ? Guard.Defined(said) : FertilizerMaterial.SubstanceOf(analysis);
        analysis.RequirePossibleFor(made);
        return new FertilizerProduct(name, analysis, package, price, made, density);
    }

    private decimal PoundsOf(PlantNutrient nutrient)
    {
        double pounds = Analysis.Content(nutrient, Package).Pounds;
        return (decimal)pounds;
    }
}
