using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>What turns a lime rate into an order: the plot, the material, how it is put on, and what is there already.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeOrderRequest
{
    /// <summary>Gets the rate with its four labels, by a method or as printed.</summary>
    public required LimeRate Rate
    {
        get;
        init => field = Guard.NotNull(value, nameof(Rate));
    }

    /// <summary>Gets the material to buy.</summary>
    public required LimingMaterial Material
    {
        get;
        init => field = Guard.NotNull(value, nameof(Material));
    }

    /// <summary>Gets the area; above 0.</summary>
    public required Area Area { get; init; }

    /// <summary>Gets where the lime goes.</summary>
    public LimePlacement Placement { get; init; }

    /// <summary>Gets the depth really worked; null takes the depth of the rate, or of the institution's surface rule.</summary>
    public Length? WorkedDepth { get; init; }

    /// <summary>Gets lime from before the soil that is still at work; leave it out when the rate already has it taken
    /// off.</summary>
    public EarlierLime? EarlierLime { get; init; }

    /// <summary>Gets the soil, for the credit of earlier lime and to say whether it asks for dolomite; null counts it as mineral
    /// and leaves the other out. A report will do.</summary>
    public PlotSoil? Soil { get; init; }

    /// <summary>Gets a value indicating whether urea or an ammonium fertilizer goes on at the same time.</summary>
    public bool WithUreaOrAmmonium { get; init; }

    /// <summary>Gets what has gone on the plot against this rate since the soil was taken.</summary>
    public ImmutableArray<LimeApplication> AlreadyApplied
    {
        get;
        init => field = Guard.Listed(value, nameof(AlreadyApplied));
    } = [];

    /// <summary>Gets the rounding of the recommendation, before it is counted in a product; null keeps it exact.</summary>
    public LimeRounding? Rounding { get; init; }

    /// <summary>Gets the most of the product to put on at once, as the report prints it; null takes the institution's
    /// rule.</summary>
    public ApplicationRate? MostAtOnce { get; init; }

    /// <summary>Gets the months between dressings, at least 1; null takes the institution's rule, else 12.</summary>
    public int? MonthsBetween { get; init; }

    /// <summary>Gets the day of the first dressing, or null.</summary>
    public DateOnly? FirstDressingOn { get; init; }

    /// <summary>Gets the day of sowing, or null. Caustic lime is not ordered for a day near it.</summary>
    public DateOnly? SowingOn { get; init; }

    /// <summary>Gets a value indicating whether what is sown stands for years, so that nothing is worked in after
    /// sowing.</summary>
    public bool StandsForYears { get; init; }

    /// <summary>Gets how the material is packed.</summary>
    /// <value>In bulk unless stated.</value>
    public Package Package
    {
        get;
        init => field = Guard.NotNull(value, nameof(Package));
    } = Package.BulkByTheTon;

    /// <summary>Gets the price of a package, of a ton in bulk, in the one currency of the plan; at least 0; null when it is not
    /// known.</summary>
    public decimal? Price { get; init; }

    internal SoilClass SoilClass => Soil?.SoilClass ?? PlotAgronomy.SoilClass.Mineral;

    /// <summary>The same question for a material on offer, with its bag and price.</summary>
    internal LimeOrderRequest ForOffer(Offer<LimingMaterial> offer) => Copy(Rate, offer.Item, offer.Package, offer.Price);

    /// <summary>The same question for another rate.</summary>
    internal LimeOrderRequest For(LimeRate rate) => Copy(rate, Material, Package, Price);

    private LimeOrderRequest Copy(LimeRate rate, LimingMaterial material, Package package, decimal? price) =>
        new()
        {
            Rate = rate,
            Material = material,
            Area = Area,
            Placement = Placement,
            WorkedDepth = WorkedDepth,
            EarlierLime = EarlierLime,
            Soil = Soil,
            WithUreaOrAmmonium = WithUreaOrAmmonium,
            AlreadyApplied = AlreadyApplied,
            Rounding = Rounding,
            MostAtOnce = MostAtOnce,
            MonthsBetween = MonthsBetween,
            FirstDressingOn = FirstDressingOn,
            SowingOn = SowingOn,
            StandsForYears = StandsForYears,
            Package = package,
            Price = price,
        };

    /// <summary>What is wanted of what on which area.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Rate} of {Material} on {Amounts.Print(Area, decimals: 2)}";
}
