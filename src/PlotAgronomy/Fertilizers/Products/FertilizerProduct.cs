using PlotAgronomy.Fertilizers;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A product as its label describes it: name, guaranteed analysis, what it is made of, density of a liquid.</summary>
/// <remarks>What it is packed in and costs stands in an <see cref="Offer{T}"/>.</remarks>
/// <example>
/// <code>
/// var potash = FertilizerProduct.Create("muriate of potash", FertilizerAnalysis.FromGrade("0-0-60"));
/// Console.WriteLine(potash);
/// // muriate of potash (0-0-60)
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed class FertilizerProduct
{
    private FertilizerProduct(string name, FertilizerAnalysis analysis, FertilizerSubstance substance, Density? density)
    {
        Name = name;
        Analysis = analysis;
        Substance = substance;
        LiquidDensity = density;
        Counted = LabelCompletion.Completed(analysis, substance);
    }

    /// <summary>Gets the name on the shelf.</summary>
    public string Name { get; }

    /// <summary>Gets the guaranteed analysis.</summary>
    public FertilizerAnalysis Analysis { get; }

    /// <summary>Gets what it is made of.</summary>
    public FertilizerSubstance Substance { get; }

    /// <summary>Gets the density when it is a liquid, or null.</summary>
    public Density? LiquidDensity { get; }

    /// <summary>Gets the analysis a plan counts with: the label, and what the compound holds although the label is
    /// silent.</summary>
    internal FertilizerAnalysis Counted { get; }

    /// <summary>A dry product, or a liquid that is only sold by weight.</summary>
    /// <param name="name">Name on the shelf.</param>
    /// <param name="analysis">Guaranteed analysis.</param>
    /// <param name="substance">What it is made of; null takes the straight material of the same grade in the catalog, else a
    /// mixture.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentException">No name, or an analysis its compound cannot have.</exception>
    public static FertilizerProduct Create(string name, FertilizerAnalysis analysis, FertilizerSubstance? substance = null) =>
        Checked(name, analysis, substance, null);

    /// <summary>A liquid.</summary>
    /// <param name="name">Name on the shelf.</param>
    /// <param name="analysis">Guaranteed analysis, percent by weight.</param>
    /// <param name="density">Density from the label; above 0.</param>
    /// <param name="substance">What it is made of; null takes the catalog's material of the same grade, else a mixture.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentException">No name, a density not above 0, or an analysis its compound cannot have.</exception>
    public static FertilizerProduct Liquid(
        string name,
        FertilizerAnalysis analysis,
        Density density,
        FertilizerSubstance? substance = null
    ) => Checked(name, analysis, substance, Guard.Positive(density));

    /// <summary>Offers a liquid in jugs.</summary>
    /// <param name="jug">Volume of a jug; above 0.</param>
    /// <param name="pricePerJug">Price of a jug; at least 0.</param>
    /// <returns>The offer.</returns>
    /// <exception cref="InvalidOperationException">Its density is not known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public Offer<FertilizerProduct> InJugs(Volume jug, decimal pricePerJug) =>
        new()
        {
            Item = this,
            Package = Package.FromVolume(
                jug,
                LiquidDensity ?? throw new InvalidOperationException($"The density of {this} is not known.")
            ),
            Price = Guard.AtLeast(pricePerJug, 0m, "(money)"),
        };

    /// <summary>Volume of a weight of a liquid, such as the gallons of a need.</summary>
    /// <param name="product">Weight of the product; at least 0.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="InvalidOperationException">Its density is not known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Negative weight.</exception>
    public Volume VolumeOf(Mass product)
    {
        double pounds = product.Pounds;
        Guard.AtLeast(pounds, 0, "lb", nameof(product));
        double poundsPerGallon = LiquidDensity?.PoundsPerUSGallon
            ?? throw new InvalidOperationException($"The density of {this} is not known.");
        return Volume.FromUsGallons(pounds / poundsPerGallon);
    }

    /// <summary>A straight material as it is sold.</summary>
    /// <param name="material">Material.</param>
    /// <returns>The product.</returns>
    public static FertilizerProduct FromMaterial(FertilizerMaterial material)
    {
        ArgumentNullException.ThrowIfNull(material);
        return Create(material.Name, material.Analysis, material.Substance);
    }

    /// <summary>Name and grade.</summary>
    /// <returns>Text such as <c>potash (0-0-60)</c>.</returns>
    public override string ToString() => Name == Analysis.ToString() ? Name : $"{Name} ({Analysis})";

    private static FertilizerProduct Checked(
        string name,
        FertilizerAnalysis analysis,
        FertilizerSubstance? substance,
        Density? density
    )
    {
        ArgumentNullException.ThrowIfNull(analysis);
        Guard.NotBlank(name);
        var made = substance is { } said ? Guard.Defined(said) : FertilizerMaterial.SubstanceOf(analysis);
        analysis.RequirePossibleFor(made);
        if (substance is null && FertilizerMaterial.SubstanceNamed(name) is { } named)
        {
            analysis.RequirePossibleFor(named);
        }

        return new FertilizerProduct(name, analysis, made, density);
    }
}
