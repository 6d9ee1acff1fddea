using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>A kind's published rates: for a full stand of it alone by way of sowing, and its usual part in a mixture.</summary>
/// <remarks>All are taken as pure live seed. Most bulletins are written for good commercial seed (80-90 % pure live seed),
/// so this over-plants by 10-20 %, the safe side for plots.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class FullStandRates
{
    private const string Figure = "full-rate";

    /// <summary>Gets the rate alone, drilled; null when none is published.</summary>
    public PureLiveSeedRateRange? Drilled { get; init; }

    /// <summary>Gets the rate alone, broadcast on a prepared seedbed; null when the kind should not be broadcast.</summary>
    public PureLiveSeedRateRange? Broadcast { get; init; }

    /// <summary>Gets the usual rate as one of three to six kinds of a broadcast mixture; null when none is published.</summary>
    public PureLiveSeedRateRange? InMixture { get; init; }

    /// <summary>Gets the sources; known as well as the less well known of the two rates alone.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    /// <summary>Gets the sources of the rate alone, drilled; <see cref="Evidence"/> when nothing else is said.</summary>
    public Origin DrilledEvidence
    {
        get => field ?? Evidence;
        init => field = Guard.NotNull(value, nameof(DrilledEvidence));
    }

    /// <summary>Gets the sources of the rate alone, broadcast; <see cref="Evidence"/> when nothing else is said.</summary>
    public Origin BroadcastEvidence
    {
        get => field ?? Evidence;
        init => field = Guard.NotNull(value, nameof(BroadcastEvidence));
    }

    /// <summary>Gets the sources of the rate in a mixture; <see cref="Evidence"/> when nothing else is said.</summary>
    public Origin InMixtureEvidence
    {
        get => field ?? Evidence;
        init => field = Guard.NotNull(value, nameof(InMixtureEvidence));
    }

    /// <summary>The published range for a way of sowing.</summary>
    /// <param name="method">Way of sowing. Seed spread under cover or on frozen ground takes the broadcast range:
    /// published advice is the same rate or slightly more (SEED-S57, SEED-S58).</param>
    /// <returns>The range, or null when none is published.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    public PureLiveSeedRateRange? For(SowingMethod method) =>
        Guard.Defined(method) == SowingMethod.Drilled ? Drilled : Broadcast?.SownBy(method);

    /// <summary>The sources of the range for a way of sowing.</summary>
    /// <param name="method">Way of sowing; see <see cref="For"/>.</param>
    /// <returns>The sources.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    public Origin EvidenceFor(SowingMethod method) =>
        Guard.Defined(method) == SowingMethod.Drilled ? DrilledEvidence : BroadcastEvidence;

    internal static FullStandRates? Of(KindObservations kind)
    {
        var drilled = kind.Find(Figure, "drilled");
        var broadcast = kind.Find(Figure, "broadcast");
        var mixture = kind.Find(Figure, "mixture");
        ImmutableArray<KindObservation> alone = [.. new[] { broadcast, drilled }.OfType<KindObservation>()];
        if (alone.IsEmpty)
        {
            return mixture is null ? null : throw mixture.Problem("method", "a rate in a mixture needs a rate alone beside it");
        }

        var evidence = KindOrigins.LeastKnownOf([.. alone.Select(r => r.Origin)]);
        return new()
        {
            Drilled = Range(drilled, SowingMethod.Drilled),
            Broadcast = Range(broadcast, SowingMethod.Broadcast),
            InMixture = Range(mixture, SowingMethod.Broadcast),
            Evidence = evidence,
            DrilledEvidence = Known(drilled) ?? evidence,
            BroadcastEvidence = Known(broadcast) ?? evidence,
            InMixtureEvidence = Known(mixture) ?? evidence,
        };
    }

    private static Origin? Known(KindObservation? rate) => rate is null ? null : rate.Origin;

    private static PureLiveSeedRateRange? Range(KindObservation? rate, SowingMethod method)
    {
        if (rate is null)
        {
            return null;
        }

        var (low, high) = rate.Range("lb-pls/ac");
        return PureLiveSeedRateRange.Between(Of(low, method), Of(high, method));
    }

    private static PureLiveSeedRate Of(double poundsPerAcre, SowingMethod method) =>
        PureLiveSeedRate.FromRate(ApplicationRate.FromPoundsPerAcre(poundsPerAcre), method);
}
