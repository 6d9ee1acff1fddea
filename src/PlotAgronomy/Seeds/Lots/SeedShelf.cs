using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>Lots of seed on offer, of one kind or of many.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedShelf
{
    private SeedShelf(ImmutableArray<SeedLot> lots) => Lots = lots;

    /// <summary>Gets the lots, in the order they were put there.</summary>
    public ImmutableArray<SeedLot> Lots { get; }

    /// <summary>Puts lots on a shelf.</summary>
    /// <param name="lots">Lots; none is an empty shelf.</param>
    /// <returns>The shelf.</returns>
    public static SeedShelf FromLots(IReadOnlyList<SeedLot> lots)
    {
        ArgumentNullException.ThrowIfNull(lots);
        foreach (var lot in lots)
        {
            ArgumentNullException.ThrowIfNull(lot, nameof(lots));
        }

        return new([.. lots]);
    }

    /// <summary>The lot of a kind to buy: the one whose living pound costs least.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for the kind.</param>
    /// <returns>The choice, with the runners-up and the lots that could not be counted.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative price.</exception>
    /// <remarks>Whole packages are not counted: <see cref="SeedLotComparison"/> and <see cref="RankedLot.CostFor"/> do that for
    /// an area.</remarks>
    public SeedChoice Cheapest(CropKind kind, ViabilityRule? rule = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return new(kind, [.. Lots.Where(l => l.Kind.Id == kind.Id)], rule ?? ViabilityRule.For(kind));
    }
}
