using UnitsNet;

namespace PlotAgronomy;

/// <summary>A material and its price, delivered, in the one currency of the plan.</summary>
public sealed class LimeOffer
{
    private LimeOffer(LimingMaterial material, Mass? bag, decimal price)
    {
        Material = material;
        Bag = bag;
        Price = price;
    }

    /// <summary>Gets the material.</summary>
    public LimingMaterial Material { get; }

    /// <summary>Gets the mass of a bag; null for lime in bulk.</summary>
    public Mass? Bag { get; }

    /// <summary>Gets the price of a bag, or of a ton in bulk.</summary>
    public decimal Price { get; }

    /// <summary>Gets the price of a pound of material.</summary>
    public decimal PricePerPound
    {
        get
        {
            double pounds = Bag?.Pounds ?? ExactUnits.PoundsPerShortTon;
            return Price / (decimal)pounds;
        }
    }

    /// <summary>Offers bags.</summary>
    /// <param name="material">Material.</param>
    /// <param name="bag">Mass of a bag; above 0.</param>
    /// <param name="pricePerBag">Price of a bag, delivered; at least 0.</param>
    /// <returns>The offer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static LimeOffer InBags(LimingMaterial material, Mass bag, decimal pricePerBag)
    {
        ArgumentNullException.ThrowIfNull(material);
        double pounds = bag.Pounds;
        Guard.Above(pounds, 0, "lb", nameof(bag));
        return new(material, bag, Guard.AtLeast(pricePerBag, 0, "(money)"));
    }

    /// <summary>Offers lime in bulk.</summary>
    /// <param name="material">Material.</param>
    /// <param name="pricePerTon">Price of a ton, delivered; at least 0.</param>
    /// <returns>The offer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative price.</exception>
    public static LimeOffer InBulk(LimingMaterial material, decimal pricePerTon)
    {
        ArgumentNullException.ThrowIfNull(material);
        return new(material, null, Guard.AtLeast(pricePerTon, 0, "(money)"));
    }

    /// <summary>The offer with a figure of its material that the label does not tell.</summary>
    internal LimeOffer WithFigure(LimeFigure figure) => new(Material.WithFigure(figure), Bag, Price);
}
