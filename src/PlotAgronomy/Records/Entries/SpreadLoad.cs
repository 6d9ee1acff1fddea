using System.Collections.Immutable;
using System.Text;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>One load that was spread: bags or a weight, and the area it went on where that was measured.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record SpreadLoad
{
    private readonly double pounds;
    private readonly double? bags;
    private readonly double? acres;

    private SpreadLoad(double pounds, double? bags, Area? on)
    {
        this.pounds = pounds;
        this.bags = bags;
        acres = on is { } area ? Guard.Positive(area, nameof(on)).Acres : null;
    }

    /// <summary>Gets the weight of the load.</summary>
    public Mass Weight => Mass.FromPounds(bags is { } count ? count * pounds : pounds);

    /// <summary>Gets the bags, parts of one too; null where it was weighed.</summary>
    public double? BagCount => bags;

    /// <summary>Gets the area it went on; null where it went over the whole plot.</summary>
    public Area? On => acres is { } known ? Area.FromAcres(known) : null;

    /// <summary>Creates a load that was counted in bags.</summary>
    /// <param name="bags">Bags that were emptied; finite, above 0; half a bag is 0.5.</param>
    /// <param name="bag">Weight of a full bag.</param>
    /// <param name="on">Area it went on; null for the whole plot.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number that is not above 0.</exception>
    public static SpreadLoad FromBags(double bags, Mass bag, Area? on = null) =>
        new(Guard.Positive(bag).Pounds, Guard.Above(bags, 0, "bags"), on);

    /// <summary>Creates a load that was weighed.</summary>
    /// <param name="weight">Weight that left the hopper.</param>
    /// <param name="on">Area it went on; null for the whole plot.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number that is not above 0.</exception>
    public static SpreadLoad FromWeight(Mass weight, Area? on = null) => new(Guard.Positive(weight).Pounds, null, on);

    /// <summary>The load in words.</summary>
    /// <returns>Text such as <c>600 lb</c>.</returns>
    public override string ToString() => Amounts.Print(Weight, "lb", 1);

    private bool PrintMembers(StringBuilder builder)
    {
        builder.Append(ToString());
        return true;
    }

    internal static ImmutableArray<SpreadLoad> AtLeastOne(ImmutableArray<SpreadLoad> loads, string name) =>
        Guard.Listed(loads, name).IsEmpty ? throw new ArgumentException("Must hold a load.", name) : loads;

    internal static Mass WeightOf(ImmutableArray<SpreadLoad> loads) => Mass.FromPounds(loads.Sum(l => l.Weight.Pounds));

    internal void Write(FieldWriter to)
    {
        to.Number("bags", bags);
        to.Quantity(bags is null ? "weight" : "bag", pounds, "lb");
        to.Quantity("area", acres, "ac");
    }

    internal static SpreadLoad Read(FieldReader from)
    {
        Area? on = from.QuantityOrNull("area", "ac") is { } acres ? Area.FromAcres(acres) : null;
        return from.Try("loads", () =>
            from.NumberOrNull("bags") is { } bags
                ? FromBags(bags, Mass.FromPounds(from.Quantity("bag", "lb")), on)
                : FromWeight(Mass.FromPounds(from.Quantity("weight", "lb")), on)
        );
    }
}
