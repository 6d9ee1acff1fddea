using UnitsNet;

namespace PlotAgronomy;

/// <summary>What one price pays for: a bag of a weight, a jug of a volume, or a weight of what is sold loose.</summary>
/// <remarks>A package never changes and is only equal to itself.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class Package
{
    private const double LeastPoundsInOunces = 0.001;
    private const double LeastGallonsRounded = 0.01;

    private readonly string text;

    private Package(Mass weight, bool isWhole, Volume? volume, Density? density, string text)
    {
        Weight = weight;
        IsWhole = isWhole;
        Volume = volume;
        Density = density;
        this.text = text;
    }

    /// <summary>Gets what is sold in bulk and priced by the ton of 2,000 lb.</summary>
    public static Package BulkByTheTon { get; } = Loose(ExactUnits.PoundsPerShortTon, "in bulk by the ton");

    /// <summary>Gets what is sold loose and priced by the pound.</summary>
    public static Package LooseByThePound { get; } = Loose(1, "loose by the pound");

    /// <summary>Gets the weight that one price pays for.</summary>
    public Mass Weight { get; }

    /// <summary>Gets a value indicating whether it is sold whole only; what is sold loose is weighed.</summary>
    public bool IsWhole { get; }

    /// <summary>Gets the volume of a jug; null for what is sold by weight.</summary>
    public Volume? Volume { get; }

    /// <summary>Gets the density of what is in a jug; null for what is sold by weight.</summary>
    public Density? Density { get; }

    /// <summary>The weight of one where it is sold whole; null for what is sold loose.</summary>
    internal Mass? WholeWeight => IsWhole ? Weight : null;

    internal double Pounds
    {
        get
        {
            double pounds = Weight.Pounds;
            return pounds;
        }
    }

    /// <summary>A bag, or whatever else holds a weight.</summary>
    /// <param name="weight">Net weight; finite, above 0.</param>
    /// <returns>The package.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public static Package FromWeight(Mass weight) =>
        new(Guard.Positive(weight), true, null, null, OnTheLabel(weight));

    /// <summary>A jug, or whatever else holds a volume.</summary>
    /// <param name="volume">Volume; finite, above 0.</param>
    /// <param name="density">Density from the label; finite, above 0.</param>
    /// <returns>The package.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value not above 0, NaN or infinite.</exception>
    public static Package FromVolume(Volume volume, Density density)
    {
        double cubicFeet = Guard.Positive(volume).CubicFeet;
        double poundsPerCubicFoot = Guard.Positive(density).PoundsPerCubicFoot;
        var weight = Mass.FromPounds(cubicFeet * poundsPerCubicFoot);
        return new(weight, true, volume, density, $"{OnTheLabel(volume)} ({OnTheLabel(weight)})");
    }

    /// <summary>Smallest number of whole packages that holds a weight.</summary>
    /// <param name="needed">Weight needed; finite, at least 0.</param>
    /// <returns>Number of packages; null for what is sold loose.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public int? CountFor(Mass needed) => IsWhole ? Package.RoundUp(needed, Weight) : null;

    /// <summary>Rate that a number of packages comes to on a plot: six bags are on hand, what is that an acre?</summary>
    /// <param name="packages">Packages emptied, whole or not; finite, at least 0.</param>
    /// <param name="area">Area; finite, above 0.</param>
    /// <returns>The rate of the product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>rate = packages x weight / area.</remarks>
    public ApplicationRate RateOf(double packages, Area area) =>
        ApplicationRate.FromMassAndArea(
            Mass.FromPounds(Guard.AtLeast(Guard.AtLeast(packages, 0, "packages") * Pounds, 0, "lb", nameof(packages))),
            area
        );

    /// <summary>Invariant text.</summary>
    /// <returns>Text such as <c>50 lb</c>, <c>2.5 gal (26.7 lb)</c> or <c>in bulk by the ton</c>.</returns>
    public override string ToString() => text;

    /// <summary>A packet of an ounce is no "0.1 lb", and a crumb no "0 lb".</summary>
    private static string OnTheLabel(Mass weight)
    {
        double pounds = weight.Pounds;
        return pounds >= 1 ? Amounts.Print(weight, "lb", 1)
            : pounds >= LeastPoundsInOunces ? Amounts.Print(weight, "oz", 2)
            : Amounts.Print(weight, "g");
    }

    private static string OnTheLabel(Volume volume)
    {
        double gallons = volume.UsGallons;
        return gallons >= LeastGallonsRounded ? Amounts.Print(volume, "gal", 2) : Amounts.Print(volume, "gal");
    }

    private static Package Loose(double pounds, string text) => new(Mass.FromPounds(pounds), false, null, null, text);
}
