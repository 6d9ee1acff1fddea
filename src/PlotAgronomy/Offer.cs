using System.Globalization;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>Something that can be bought: what it is, how it is packed, and what a package costs.</summary>
/// <typeparam name="T">What is bought.</typeparam>
/// <remarks>
/// <para>It is only equal to itself; <c>offer with { Price = 7 }</c> makes another one. <see cref="Offer.InBags"/> and
/// <see cref="Offer.InBulk"/> are the short way to make one.</para>
/// <para>All prices of a plan are in its one currency, and they are prices of what is delivered.</para>
/// </remarks>
/// <example>
/// <code>
/// var lime = LimingMaterial.FromLabel("lime pellets", LimingForm.Pelletized, LimeFigure.FromPoundsEqualToOneTon(2080));
/// var offer = Offer.InBags(lime, Mass.FromPounds(40), pricePerBag: 6.50m);
/// int bags = Package.RoundUp(needed: Mass.FromPounds(1000), package: Mass.FromPounds(40));
/// Console.WriteLine($"{bags} bags, {bags * offer.Price}");
/// // 25 bags, 162.50
/// </code>
/// </example>
public sealed record Offer<T>
    where T : class
{
    /// <summary>Gets what is bought.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required T Item
    {
        get;
        init => field = Guard.NotNull(value, nameof(Item));
    }

    /// <summary>Gets how it is packed.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required Package Package
    {
        get;
        init => field = Guard.NotNull(value, nameof(Package));
    }

    /// <summary>Gets the price of one package, or of the weight that what is sold loose is priced by; at least 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public required decimal Price
    {
        get;
        init => field = Guard.AtLeast(value, 0m, "(money)", nameof(Price));
    }

    /// <summary>Gets the packages there are of it, such as those in the shed; null when there is no end of it.</summary>
    /// <value>No end of it, unless stated. An open bag is one package of what is left in it.</value>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int? Available
    {
        get;
        init => field = value is { } there ? Guard.AtLeast(there, 0, "packages", nameof(Available)) : null;
    }

    /// <summary>Whether nothing is paid for it: it lies in the shed already.</summary>
    internal bool IsThere => Price == 0;

    /// <summary>Whether there are as many packages as a need takes.</summary>
    internal bool IsEnough(int? packages) => Available is not { } there || packages is not { } needed || needed <= there;

    /// <summary>Gets the price of a pound, unrounded.</summary>
    public decimal PricePerPound => Price / (decimal)Package.Pounds;

    /// <summary>What a number of packages costs.</summary>
    /// <param name="packages">Packages; at least 0.</param>
    /// <returns>The cost.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public decimal CostOf(int packages) => Guard.AtLeast(packages, 0, "packages") * Price;

    /// <summary>Whether this is the very same offer.</summary>
    /// <param name="other">Other offer.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(Offer<T>? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The item, its package and the price.</summary>
    /// <returns>Text such as <c>potash (0-0-60), 50 lb for 26</c>.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Item}, {Package} for {Price}");
}

/// <summary>Makes offers.</summary>
public static class Offer
{
    /// <summary>Offers bags of a weight.</summary>
    /// <typeparam name="T">What is bought.</typeparam>
    /// <param name="item">What is bought.</param>
    /// <param name="bag">Net weight of a bag; finite, above 0.</param>
    /// <param name="pricePerBag">Price of a bag; at least 0.</param>
    /// <returns>The offer.</returns>
    /// <exception cref="ArgumentException">Nothing offered, or a value outside its range.</exception>
    public static Offer<T> InBags<T>(T item, Mass bag, decimal pricePerBag)
        where T : class => Of(item, Package.FromWeight(Guard.Positive(bag)), Guard.AtLeast(pricePerBag, 0m, "(money)"));

    /// <summary>Offers something in bulk.</summary>
    /// <typeparam name="T">What is bought.</typeparam>
    /// <param name="item">What is bought.</param>
    /// <param name="pricePerTon">Price of a ton of 2,000 lb; at least 0.</param>
    /// <returns>The offer.</returns>
    /// <exception cref="ArgumentException">Nothing offered, or a negative price.</exception>
    public static Offer<T> InBulk<T>(T item, decimal pricePerTon)
        where T : class => Of(item, Package.BulkByTheTon, Guard.AtLeast(pricePerTon, 0m, "(money)"));

    /// <summary>Offers something that is weighed out of a bin.</summary>
    /// <typeparam name="T">What is bought.</typeparam>
    /// <param name="item">What is bought.</param>
    /// <param name="pricePerPound">Price of a pound; at least 0.</param>
    /// <returns>The offer.</returns>
    /// <exception cref="ArgumentException">Nothing offered, or a negative price.</exception>
    public static Offer<T> ByThePound<T>(T item, decimal pricePerPound)
        where T : class => Of(item, Package.LooseByThePound, Guard.AtLeast(pricePerPound, 0m, "(money)"));

    private static Offer<T> Of<T>(T item, Package package, decimal price)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(item);
        return new()
        {
            Item = item,
            Package = package,
            Price = price,
        };
    }
}
