namespace PlotAgronomy.Seeds;

/// <summary>A kind's published rates: for a full stand of it alone by way of sowing, and its usual part in a mixture.</summary>
/// <remarks>All are taken as pure live seed, also where a publication prints seed as bought (80-90 % pure live seed): this
/// over-plants by 10-20 %, the safe side for plots. <see cref="PureLiveSeedRateRange.InBulk"/> tells how many do.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class FullStandRates
{
    private const string Figure = "full-rate";
    private const string WithoutMethod = "any";

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

    /// <summary>Gets the rate alone, spread under a standing crop, where one is printed for it; else null.</summary>
    public PureLiveSeedRateRange? UnderCover { get; init; }

    /// <summary>Gets the rate alone, frost-seeded, where one is printed for it; else null.</summary>
    public PureLiveSeedRateRange? FrostSeeded { get; init; }

    /// <summary>The published range for a way of sowing.</summary>
    /// <param name="method">Way of sowing. Seed spread under cover or on frozen ground takes the rate that is printed for it;
    /// where none is, the broadcast rate times a factor by name.</param>
    /// <returns>The range, or null when none is published.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    public PureLiveSeedRateRange? For(SowingMethod method) =>
        Guard.Defined(method) switch
        {
            SowingMethod.Drilled => Drilled,
            SowingMethod.Broadcast => Broadcast,
            SowingMethod.BroadcastUnderCover => UnderCover ?? (Broadcast is { } spread ? SurfaceRates.UnderCover(spread) : null),
            _ => FrostSeeded ?? (Broadcast is { } spread ? SurfaceRates.FrostSeeded(spread) : null),
        };

    /// <summary>The sources of the range for a way of sowing.</summary>
    /// <param name="method">Way of sowing; see <see cref="For"/>.</param>
    /// <returns>The sources.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    public Origin EvidenceFor(SowingMethod method) =>
        Guard.Defined(method) switch
        {
            SowingMethod.Drilled => DrilledEvidence,
            SowingMethod.BroadcastUnderCover when UnderCover is not null => OwnEvidence.UnderCover ?? Evidence,
            SowingMethod.FrostSeeded when FrostSeeded is not null => OwnEvidence.FrostSeeded ?? Evidence,
            _ => BroadcastEvidence,
        };

    private (Origin? UnderCover, Origin? FrostSeeded) OwnEvidence { get; init; }

    internal static FullStandRates? Of(KindObservations kind)
    {
        var drilled = Span(kind, "drilled", WithoutMethod);
        var broadcast = Span(kind, "broadcast", WithoutMethod);
        var underCover = Span(kind, "under-cover");
        var frost = Span(kind, "frost");
        var mixture = Span(kind, "mixture");
        PrintedSpan[] alone = [.. new[] { broadcast, drilled }.OfType<PrintedSpan>()];
        if (alone.Length == 0)
        {
            return mixture is null
                ? null
                : throw kind.Every(Figure, "mixture")[0].Problem("method", "a rate in a mixture needs a rate alone beside it");
        }

        double? drilledFull = drilled is { IsWithoutMethod: false } ? Full(drilled) : null;
        var evidence = KindOrigins.LeastKnownOf([.. alone.Select(r => r.Origin)]);
        return new()
        {
            Drilled = Range(drilled, SowingMethod.Drilled),
            Broadcast = Range(broadcast, SowingMethod.Broadcast, drilledFull),
            UnderCover = Range(underCover, SowingMethod.BroadcastUnderCover),
            FrostSeeded = Range(frost, SowingMethod.FrostSeeded),
            InMixture = Range(mixture, SowingMethod.Broadcast),
            Evidence = evidence,
            DrilledEvidence = drilled?.Origin ?? evidence,
            BroadcastEvidence = broadcast?.Origin ?? evidence,
            InMixtureEvidence = mixture?.Origin ?? evidence,
            OwnEvidence = (underCover?.Origin, frost?.Origin),
        };
    }

    private static PrintedSpan? Span(KindObservations kind, string method, string? withoutMethod = null) =>
        PrintedSpan.Of(kind, Figure, method, [KindUnits.PureLive, KindUnits.Bulk], withoutMethod);

    private static double Full(PrintedSpan span) => span.HasMedian ? span.Median : span.Low;

    /// <param name="span">What is printed.</param>
    /// <param name="method">Way of sowing.</param>
    /// <param name="drilled">Full rate that is printed for a drill: spread seed takes no less.</param>
    private static PureLiveSeedRateRange? Range(PrintedSpan? span, SowingMethod method, double? drilled = null) =>
        span is null
            ? null
            : PureLiveSeedRateRange.Printed(
                Of(span.Low, method),
                Of(span.High, method),
                span.HasMedian ? span.Median : null,
                drilled is { } least ? Of(least, SowingMethod.Drilled) : null,
                (span.Publications, span.InBulk)
            );

    private static PureLiveSeedRate Of(double poundsPerAcre, SowingMethod method) =>
        PureLiveSeedRate.FromRate(ApplicationRate.FromPoundsPerAcre(poundsPerAcre), method);

    /// <summary>The rates by way of sowing.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Join(
            "; ",
            new[] { Named("drilled", Drilled), Named("broadcast", Broadcast), Named("in a mixture", InMixture) }.OfType<string>()
        );

    private static string? Named(string way, PureLiveSeedRateRange? rate) => rate is { } known ? $"{way} {known}" : null;
}
