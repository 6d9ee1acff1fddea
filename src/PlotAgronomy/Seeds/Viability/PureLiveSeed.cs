namespace PlotAgronomy.Seeds;

/// <summary>Pure live seed: the part of a bag's weight that is the named kind and alive.</summary>
/// <remarks>PLS = pure seed x viable seed, both as parts of one. A weight part times a count part treats live and dead seeds as
/// equal in weight, which is accepted everywhere. Nothing is rounded. Sources SEED-S01 to SEED-S05.</remarks>
public static class PureLiveSeed
{
    /// <summary>Part of the bag's weight that is pure live seed.</summary>
    /// <param name="analysis">Analysis of the seed.</param>
    /// <param name="rule">Which seeds count as alive.</param>
    /// <returns>The part.</returns>
    public static Fraction PartOf(SeedAnalysis analysis, ViabilityRule rule)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(rule);
        return Fraction.FromValue(rule.PureLivePart(analysis));
    }

    /// <summary>Bulk rate that delivers a rate of pure live seed.</summary>
    /// <param name="target">Rate of pure live seed; the method of sowing stays the same and no factor is applied.</param>
    /// <param name="analysis">Analysis of the seed.</param>
    /// <param name="rule">Which seeds count as alive.</param>
    /// <param name="kind">The kind, when its germination floor is to be looked up.</param>
    /// <returns>The bulk rate with its range and findings.</returns>
    /// <exception cref="ArgumentException">Nothing in the bag counts as alive.</exception>
    /// <remarks>bulk = PLS rate / PLS.</remarks>
    public static BulkSeeding BulkRate(PureLiveSeedRate target, SeedAnalysis analysis, ViabilityRule rule, CropKind? kind = null)
    {
        double part = Living(analysis, rule);
        return new BulkSeeding(target, analysis, rule, part, kind);
    }

    /// <summary>Pure live seed delivered by a bulk rate.</summary>
    /// <param name="bulk">Bulk rate.</param>
    /// <param name="analysis">Analysis of the seed.</param>
    /// <param name="rule">Which seeds count as alive.</param>
    /// <returns>The rate of pure live seed.</returns>
    /// <remarks>PLS rate = bulk x PLS.</remarks>
    public static PureLiveSeedRate Delivered(BulkSeedRate bulk, SeedAnalysis analysis, ViabilityRule rule) =>
        PureLiveSeedRate.FromRate(bulk.Rate * PartOf(analysis, rule).Value, bulk.Method);

    /// <summary>Pure live seed in a weight of bulk seed.</summary>
    /// <param name="bulk">Bulk seed.</param>
    /// <param name="analysis">Analysis of the seed.</param>
    /// <param name="rule">Which seeds count as alive.</param>
    /// <returns>The pure live seed.</returns>
    public static PureLiveSeedMass Held(BulkSeedMass bulk, SeedAnalysis analysis, ViabilityRule rule) =>
        PureLiveSeedMass.FromPounds(bulk.Pounds * PartOf(analysis, rule).Value);

    /// <summary>Bulk seed that holds a weight of pure live seed.</summary>
    /// <param name="living">Pure live seed.</param>
    /// <param name="analysis">Analysis of the seed.</param>
    /// <param name="rule">Which seeds count as alive.</param>
    /// <returns>The bulk seed.</returns>
    /// <exception cref="ArgumentException">Nothing in the bag counts as alive.</exception>
    public static BulkSeedMass BulkHolding(PureLiveSeedMass living, SeedAnalysis analysis, ViabilityRule rule) =>
        BulkSeedMass.FromPounds(living.Pounds / Living(analysis, rule));

    /// <summary>Part of a lot to buy beyond its living weight, as a pure number: 0.235 for a lot of 81 %.</summary>
    /// <param name="analysis">Analysis of the seed.</param>
    /// <param name="rule">Which seeds count as alive.</param>
    /// <returns>Extra bulk seed for each unit of pure live seed.</returns>
    /// <exception cref="ArgumentException">Nothing in the bag counts as alive.</exception>
    /// <remarks>extra = 1 / PLS - 1, not 1 - PLS.</remarks>
    public static double ExtraToBuy(SeedAnalysis analysis, ViabilityRule rule) => 1 / Living(analysis, rule) - 1;

    /// <summary>Price of a pound of pure live seed.</summary>
    /// <param name="pricePerBulkPound">Price of a pound out of the bag; at least 0.</param>
    /// <param name="analysis">Analysis of the seed.</param>
    /// <param name="rule">Which seeds count as alive.</param>
    /// <returns>The price, in the same currency.</returns>
    /// <exception cref="ArgumentException">Nothing in the bag counts as alive.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Negative price.</exception>
    /// <remarks>price per PLS lb = price per bulk lb / PLS.</remarks>
    public static decimal PricePerLivingPound(decimal pricePerBulkPound, SeedAnalysis analysis, ViabilityRule rule) =>
        SeedMath.PricePerLivingPound(
            Guard.Within(pricePerBulkPound, 0m, (decimal)SeedConstants.All["price-high"], "per lb"),
            Living(analysis, rule)
        );

    /// <summary>Price of another lot at which its living pound costs the same.</summary>
    /// <param name="price">Price of the lot on offer, for any weight; at least 0.</param>
    /// <param name="offered">Analysis of the lot on offer.</param>
    /// <param name="other">Analysis of the other lot.</param>
    /// <param name="rule">Which seeds count as alive in both.</param>
    /// <returns>The price of the same weight of the other lot.</returns>
    /// <exception cref="ArgumentException">Nothing in the lot on offer counts as alive.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Negative price.</exception>
    /// <remarks>price x PLS of the other / PLS of the offered; plain arithmetic on the price of a living pound.</remarks>
    public static decimal BreakEvenPrice(decimal price, SeedAnalysis offered, SeedAnalysis other, ViabilityRule rule) =>
        PricePerLivingPound(price, offered, rule) * (decimal)PartOf(other, rule).Value;

    private static double Living(SeedAnalysis analysis, ViabilityRule rule)
    {
        double part = PartOf(analysis, rule).Value;
        return part > 0
            ? part
            : throw new ArgumentException($"By the rule '{rule.Name}' nothing in this bag counts as alive.", nameof(analysis));
    }
}
