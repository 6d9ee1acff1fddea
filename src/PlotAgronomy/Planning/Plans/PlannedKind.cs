using System.Runtime.CompilerServices;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;

namespace PlotAgronomy;

/// <summary>One kind to be grown and the lot it is taken from.</summary>
/// <remarks>It is only equal to itself; <c>kind with { ... }</c> makes another one.</remarks>
/// <example>
/// <code>
/// var clover = KindCatalog.Standard.Find("crimson clover");
/// var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(98.5), germination: Fraction.FromPercent(85));
/// var lot = new SeedLot { Kind = clover, Label = "C-3", Analysis = tag };
/// var planned = new PlannedKind
/// {
///     Share = KindShare.FromShare(clover, 1),
///     Offer = Offer.InBags(lot, Mass.FromPounds(25), pricePerBag: 68),
/// };
/// Console.WriteLine(planned);
/// // 1 of a full stand of Crimson clover, lot C-3
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record PlannedKind
{
    /// <summary>Gets the kind and its share of a full stand.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required KindShare Share
    {
        get;
        init => field = Guard.NotNull(value, nameof(Share));
    }

    /// <summary>Gets the lots that were on offer, the one taken first; null when no other was considered.</summary>
    public SeedChoice? Choice { get; init; }

    /// <summary>Gets the lot that is sown, as it is bought; of the same kind.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required Offer<SeedLot> Offer
    {
        get;
        init => field = Guard.NotNull(value, nameof(Offer));
    }

    /// <summary>Gets what is expected to be carried off; null for a browsed crop.</summary>
    public CropYield? Yield { get; init; }

    /// <summary>Gets the part of the living seed that comes up on this plot, by one's own counts; null sows the usual
    /// rate.</summary>
    /// <value>Above 0 and at most 1; the rate is multiplied by what usually comes up over this, at most by half as much
    /// again.</value>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public Fraction? OwnEmergence
    {
        get;
        init
        {
            if (value is { } part)
            {
                Guard.AboveUpTo(part.Value, 0, 1, "of the living seed", nameof(OwnEmergence));
            }

            field = value;
        }
    }

    /// <summary>Gets the rate for a full stand alone that the tag or a guide prints, for the way of sowing it names; null goes by
    /// the publications that were read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero.</exception>
    public PureLiveSeedRate? FullRate
    {
        get;
        init
        {
            if (value is { } stated)
            {
                Guard.Above(stated.PoundsPerAcre, 0, "lb/ac", nameof(FullRate));
            }

            field = value;
        }
    }

    /// <summary>By how much more than usual is sown, for what comes up here.</summary>
    internal double SowingFactor => OwnEmergence is { } own ? Records.NextYear.FactorOf(own.Value) : 1;

    /// <summary>The owner's rate for a full stand, if it is for this way of sowing.</summary>
    internal PureLiveSeedRate? OwnFullRate(SowingMethod? method) => FullRate is { } own && own.Method == method ? own : null;

    /// <summary>Gets the kind.</summary>
    public CropKind Kind => Share.Kind;

    /// <summary>Whether this is the very same entry.</summary>
    /// <param name="other">Other entry.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(PlannedKind? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The share and the lot.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Share}, lot {Offer.Item.Label}";
}
