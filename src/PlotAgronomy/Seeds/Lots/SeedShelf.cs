using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>Lots of seed on offer, of one kind or of many.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedShelf
{
    private SeedShelf(ImmutableArray<Offer<SeedLot>> offers) => Offers = offers;

    /// <summary>Gets the offers, in the order they were put there.</summary>
    public ImmutableArray<Offer<SeedLot>> Offers { get; }

    /// <summary>Puts lots on a shelf.</summary>
    /// <param name="offers">Lots on offer; none is an empty shelf.</param>
    /// <returns>The shelf.</returns>
    public static SeedShelf FromOffers(IReadOnlyList<Offer<SeedLot>> offers)
    {
        ArgumentNullException.ThrowIfNull(offers);
        foreach (var offer in offers)
        {
            ArgumentNullException.ThrowIfNull(offer, nameof(offers));
        }

        return new([.. offers]);
    }

    /// <summary>The lot of a kind to buy: the one whose living pound costs least.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for the kind.</param>
    /// <returns>The choice, with the runners-up and the lots that could not be counted.</returns>
    /// <remarks>Whole packages are not counted: <see cref="SeedLotComparison"/> and <see cref="RankedLot.CostFor"/> do that for
    /// an area.</remarks>
    public SeedChoice Cheapest(CropKind kind, ViabilityRule? rule = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return new(kind, [.. Offers.Where(o => o.Item.Kind.Id == kind.Id)], rule ?? ViabilityRule.For(kind));
    }

    /// <summary>The offers.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Offers.IsEmpty ? "no lots" : string.Join("; ", Offers.Select(o => o.ToString()));
}
