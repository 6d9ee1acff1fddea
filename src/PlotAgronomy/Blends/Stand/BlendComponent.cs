using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>One kind as it goes into a blend: how it is sown, its full rate, its seed count and what its tag says.</summary>
/// <remarks>Start from <see cref="FromKind(CropKind, SowingMethod)"/> and change what you know better with <c>with { ...
/// }</c>.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed record BlendComponent
{
    private BlendComponent(CropKind kind, PureLiveSeedRateRange fullRange, PureLiveSeedRate fullRate, double seedsPerPound)
    {
        Kind = kind;
        FullRange = fullRange;
        FullRate = fullRate;
        SeedsPerPound = seedsPerPound;
    }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind { get; }

    /// <summary>Gets the lowest and highest published rate for a full stand of the kind alone, sown this way.</summary>
    public PureLiveSeedRateRange FullRange { get; init; }

    /// <summary>Gets the full rate that shares are counted against; sown the same way as <see cref="FullRange"/>, above
    /// 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public PureLiveSeedRate FullRate
    {
        get;
        init
        {
            Guard.Above(value.PoundsPerAcre, 0, "lb PLS/ac", nameof(FullRate));
            field = value;
        }
    }

    /// <summary>Gets the seeds in a pound of bare, pure seed; finite, above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public double SeedsPerPound
    {
        get;
        init => field = Guard.Above(value, 0, "seeds per lb", nameof(SeedsPerPound));
    }

    /// <summary>Gets the part of the bag's weight that is pure seed of the kind, above 0; null when no tag is at hand.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Zero.</exception>
    public Fraction? Purity
    {
        get;
        init => field = AboveZero(value, nameof(Purity));
    }

    /// <summary>Gets the part of the pure seeds counted as alive, above 0; null when no tag is at hand.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Zero.</exception>
    public Fraction? Viability
    {
        get;
        init => field = AboveZero(value, nameof(Viability));
    }

    /// <summary>Gets a value indicating whether the kind must still stand when the others are gone; biennials and perennials by
    /// default.</summary>
    public bool MustLiveOn { get; init; }

    /// <summary>Gets a value indicating whether the seed is treated with a pesticide.</summary>
    public bool IsTreated { get; init; }

    /// <summary>Gets a value indicating whether a legume's seed comes inoculated and in date.</summary>
    public bool IsInoculated { get; init; }

    /// <summary>Gets the offer it is bought by, or null.</summary>
    public Offer<SeedLot>? Offer { get; init; }

    /// <summary>Gets the lot it comes from, or null.</summary>
    public SeedLot? Lot => Offer?.Item ?? OwnLot;

    /// <summary>Gets how it is sown.</summary>
    public SowingMethod Method => FullRate.Method;

    /// <summary>Gets a value indicating whether a tag says how much of the bag lives; otherwise all of it is counted as
    /// alive.</summary>
    public bool HasTag => Purity is not null && Viability is not null;

    private SeedLot? OwnLot { get; init; }

    internal double PureFraction => Purity?.Value ?? 1;

    internal double PureLiveFraction => PureFraction * (Viability?.Value ?? 1);

    /// <summary>A kind with its published rates, counted against the full rate of them.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="method">How it is sown.</param>
    /// <returns>The component.</returns>
    /// <exception cref="InvalidOperationException">No rate is published for this way of sowing, or no seed count is
    /// known.</exception>
    public static BlendComponent FromKind(CropKind kind, SowingMethod method)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var range = kind.FullRange(method);
        return Create(kind, range, range.Full);
    }

    /// <summary>A kind counted against a full rate of the user's choice.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="fullRate">Rate for a full stand alone, above 0; it says how the kind is sown.</param>
    /// <returns>The component; its range is the published one, or this rate alone where none is published.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero.</exception>
    /// <exception cref="InvalidOperationException">No seed count is known.</exception>
    public static BlendComponent FromKind(CropKind kind, PureLiveSeedRate fullRate)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Create(kind, kind.Rates?.For(fullRate.Method) ?? PureLiveSeedRateRange.Between(fullRate, fullRate), fullRate);
    }

    /// <summary>A lot on offer, counted against the published full rate of its kind.</summary>
    /// <param name="offer">Lot with its analysis, package and price.</param>
    /// <param name="method">How it is sown.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for the kind.</param>
    /// <returns>The component.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Nothing in the lot counts as alive.</exception>
    /// <exception cref="InvalidOperationException">No rate is published for this way of sowing, or no seed count is
    /// known.</exception>
    public static BlendComponent FromOffer(Offer<SeedLot> offer, SowingMethod method, ViabilityRule? rule = null) =>
        FromLot(Guard.NotNull(offer).Item, method, rule) with
        {
            Offer = offer,
        };

    /// <summary>A lot on offer, counted against a full rate of the user's choice.</summary>
    /// <param name="offer">Lot with its analysis, package and price.</param>
    /// <param name="fullRate">Rate for a full stand alone, above 0; it says how the kind is sown.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for the kind.</param>
    /// <returns>The component.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero, or nothing in the lot counts as alive.</exception>
    /// <exception cref="InvalidOperationException">No seed count is known.</exception>
    public static BlendComponent FromOffer(Offer<SeedLot> offer, PureLiveSeedRate fullRate, ViabilityRule? rule = null) =>
        FromLot(Guard.NotNull(offer).Item, fullRate, rule) with
        {
            Offer = offer,
        };

    /// <summary>A lot without a price, counted against the published full rate of its kind.</summary>
    /// <param name="lot">Lot with its analysis.</param>
    /// <param name="method">How it is sown.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for the kind.</param>
    /// <returns>The component.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Nothing in the lot counts as alive.</exception>
    /// <exception cref="InvalidOperationException">No rate is published for this way of sowing, or no seed count is
    /// known.</exception>
    public static BlendComponent FromLot(SeedLot lot, SowingMethod method, ViabilityRule? rule = null) =>
        OfLot(lot, FromKind(KindOf(lot), method), rule);

    /// <summary>A lot without a price, counted against a full rate of the user's choice.</summary>
    /// <param name="lot">Lot with its analysis.</param>
    /// <param name="fullRate">Rate for a full stand alone, above 0; it says how the kind is sown.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for the kind.</param>
    /// <returns>The component.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero, or nothing in the lot counts as alive.</exception>
    /// <exception cref="InvalidOperationException">No seed count is known.</exception>
    public static BlendComponent FromLot(SeedLot lot, PureLiveSeedRate fullRate, ViabilityRule? rule = null) =>
        OfLot(lot, FromKind(KindOf(lot), fullRate), rule);

    /// <summary>The kind and how it is sown.</summary>
    /// <returns>Text such as <c>Alsike clover, broadcast, full rate 6.5 lb PLS/ac</c>.</returns>
    public override string ToString() => $"{Kind.ShortName}, full rate {FullRate}";

    private static BlendComponent Create(CropKind kind, PureLiveSeedRateRange range, PureLiveSeedRate rate) =>
        new(kind, range, rate, kind.RequireSeedCount().SeedsPerPound) { MustLiveOn = kind.LifeCycle != LifeCycle.Annual };

    /// <summary>The kind, with the seed count of the lot where it has one.</summary>
    private static CropKind KindOf(SeedLot lot) => Guard.NotNull(lot).WithOwnCount(lot.Kind);

    private static BlendComponent OfLot(SeedLot lot, BlendComponent component, ViabilityRule? rule) =>
        component with
        {
            Purity = lot.Analysis.PureSeed,
            Viability = (rule ?? ViabilityRule.For(lot.Kind)).Viable(lot.Analysis),
            IsTreated = lot.IsTreated,
            IsInoculated = lot.IsPreinoculated,
            OwnLot = lot,
        };

    private static Fraction? AboveZero(Fraction? fraction, string name)
    {
        if (fraction is { } known)
        {
            Guard.AboveUpTo(known.Value, 0, 1, "(a part of one whole)", name);
        }

        return fraction;
    }
}
