using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>What the price of a lot pays for.</summary>
/// <remarks>A pound out of the bag is split by weight: living seed (pure seed x viable), dead seed (the rest of the pure seed),
/// coating, and filler (inert matter, other crops and weeds). Plain arithmetic; nothing is rounded.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class LotValue
{
    private const decimal Million = 1_000_000m;

    private LotValue(Offer<SeedLot> offer, double living, double dead, double coating)
    {
        Offer = offer;
        decimal price = PricePerPound = offer.PricePerPound;
        PricePerLivingPound = SeedMath.PricePerLivingPound(price, living);
        PricePerMillionLiveSeeds = Lot.SeedCount is { } count
            ? PricePerLivingPound / (decimal)count.SeedsPerPound * Million
            : null;
        ForLivingSeed = price * (decimal)living;
        ForDeadSeed = price * (decimal)dead;
        ForCoating = price * (decimal)coating;
    }

    /// <summary>Gets the offer.</summary>
    public Offer<SeedLot> Offer { get; }

    /// <summary>Gets the lot.</summary>
    public SeedLot Lot => Offer.Item;

    /// <summary>Gets the price of a pound out of the bag.</summary>
    public decimal PricePerPound { get; }

    /// <summary>Gets the price of a pound of pure live seed.</summary>
    public decimal PricePerLivingPound { get; }

    /// <summary>Gets the price of a million live seeds; null when no seed count is known.</summary>
    public decimal? PricePerMillionLiveSeeds { get; }

    /// <summary>Gets what of the price of a pound pays for living seed.</summary>
    public decimal ForLivingSeed { get; }

    /// <summary>Gets what of the price of a pound pays for dead seed of the kind, or seed that does not count as alive.</summary>
    public decimal ForDeadSeed { get; }

    /// <summary>Gets what of the price of a pound pays for coating.</summary>
    public decimal ForCoating { get; }

    /// <summary>Gets what of the price of a pound pays for inert matter, other crops and weeds: the rest.</summary>
    public decimal ForFiller => PricePerPound - ForLivingSeed - ForDeadSeed - ForCoating;

    /// <summary>Gets the finding that the price of a million seeds carries while the kind's seed count is from memory.</summary>
    public ImmutableArray<Finding> Findings =>
        Lot.SeedCount?.Evidence.FindingFor($"the seed count of {Lot.Kind.ShortName}") is { } memory ? [memory] : [];

    /// <summary>Splits the price of a lot.</summary>
    /// <param name="offer">Lot on offer.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for the kind.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentException">Nothing in the lot counts as alive.</exception>
    public static LotValue For(Offer<SeedLot> offer, ViabilityRule? rule = null)
    {
        ArgumentNullException.ThrowIfNull(offer);
        var lot = offer.Item;
        double pure = lot.Analysis.PureSeed.Value;
        double living = lot.PureLiveSeedPart(rule).Value;
        return living > 0
            ? new(offer, living, pure - living, Math.Min(lot.Analysis.Coating.Value, 1 - pure))
            : throw new ArgumentException($"Nothing in the lot '{lot.Label}' counts as alive.", nameof(offer));
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Lot.Label}: {Amounts.Print((double)PricePerLivingPound, 2)} for a living pound";
}
