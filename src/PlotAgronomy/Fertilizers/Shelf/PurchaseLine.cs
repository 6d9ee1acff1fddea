using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>One product of a plan: what to buy, what to spread, what is left.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PurchaseLine
{
    internal PurchaseLine() { }

    /// <summary>Gets the offer.</summary>
    public required Offer<FertilizerProduct> Offer { get; init; }

    /// <summary>Gets the product.</summary>
    public FertilizerProduct Product => Offer.Item;

    /// <summary>Gets the packages to pay for; whole unless everything is weighed.</summary>
    public required double Packages { get; init; }

    /// <summary>Gets the weight to spread on the plot.</summary>
    public required Mass Spread { get; init; }

    /// <summary>Gets the rate it is spread at.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the weight bought and not spread.</summary>
    public required Mass Leftover { get; init; }

    /// <summary>Gets the price of the packages.</summary>
    public required decimal Cost { get; init; }

    /// <summary>Gets the volume to spread of a liquid, or null.</summary>
    public Volume? SpreadVolume => Product.LiquidDensity is { } density ? VolumeOf(Spread, density) : null;

    /// <summary>Invariant text.</summary>
    /// <returns>Text such as <c>2 x 50 lb potash (0-0-60), spread 90 lb, 10 lb left</c>.</returns>
    public override string ToString() =>
        $"{Amounts.Print(Packages, 2)} x {Amounts.Print(Offer.Package.Weight, decimals: 1)} {Product}, spread "
        + $"{Amounts.Print(Spread, decimals: 1)}, {Amounts.Print(Leftover, decimals: 1)} left";

    private static Volume VolumeOf(Mass mass, Density density)
    {
        double pounds = mass.Pounds;
        double poundsPerCubicFoot = density.PoundsPerCubicFoot;
        return Volume.FromCubicFeet(pounds / poundsPerCubicFoot);
    }
}
