using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>A kind's published rates: for a full stand of it alone by way of sowing, and its usual part in a mixture.</summary>
/// <remarks>All are taken as pure live seed. Most bulletins are written for good commercial seed (80-90 % pure live seed),
/// so this over-plants by 10-20 %, the safe side for plots.</remarks>
public sealed class FullStandRates
{
    /// <summary>Gets the rate alone, drilled; null when none is published.</summary>
    public PureLiveSeedRateRange? Drilled { get; init; }

    /// <summary>Gets the rate alone, broadcast on a prepared seedbed; null when the kind should not be broadcast.</summary>
    public PureLiveSeedRateRange? Broadcast { get; init; }

    /// <summary>Gets the usual rate as one of three to six kinds of a broadcast mixture; null when none is published.</summary>
    public PureLiveSeedRateRange? InMixture { get; init; }

    /// <summary>Gets the sources; known as well as the less well known of the two rates alone.</summary>
    public required KindEvidence Evidence { get; init; }

    /// <summary>Gets the sources of the rate alone, drilled; <see cref="Evidence"/> when nothing else is said.</summary>
    public KindEvidence DrilledEvidence
    {
        get => field ?? Evidence;
        init;
    }

    /// <summary>Gets the sources of the rate alone, broadcast; <see cref="Evidence"/> when nothing else is said.</summary>
    public KindEvidence BroadcastEvidence
    {
        get => field ?? Evidence;
        init;
    }

    /// <summary>Gets the sources of the rate in a mixture; <see cref="Evidence"/> when nothing else is said.</summary>
    public KindEvidence InMixtureEvidence
    {
        get => field ?? Evidence;
        init;
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
    public KindEvidence EvidenceFor(SowingMethod method) =>
        Guard.Defined(method) == SowingMethod.Drilled ? DrilledEvidence : BroadcastEvidence;

    internal static FullStandRates FromRow(CsvRow row) =>
        new()
        {
            Drilled = Range(row, "drilled", SowingMethod.Drilled),
            Broadcast = Range(row, "broadcast", SowingMethod.Broadcast),
            InMixture = Range(row, "mixture", SowingMethod.Broadcast),
            Evidence = KindEvidence.FromRow(row),
            DrilledEvidence = Known(row, "drilled"),
            BroadcastEvidence = Known(row, "broadcast"),
            InMixtureEvidence = Known(row, "mixture"),
        };

    private static KindEvidence Known(CsvRow row, string way) =>
        KindEvidence.FromRow(row, row.TextOrNull($"{way}_status") is null ? "status" : $"{way}_status");

    private static PureLiveSeedRateRange? Range(CsvRow row, string way, SowingMethod method) =>
        row.NumberOrNull($"{way}_low_lb_pls_per_ac") is { } low
            ? PureLiveSeedRateRange.Between(Of(low, method), Of(row.Number($"{way}_high_lb_pls_per_ac"), method))
            : null;

    private static PureLiveSeedRate Of(double poundsPerAcre, SowingMethod method) =>
        PureLiveSeedRate.Of(ApplicationRate.FromPoundsPerAcre(poundsPerAcre), method);
}
