using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Several kinds sown together, each known by weight, by seeds, by share of a full stand and by rate at once.</summary>
/// <remarks>Made from any one of these statements; every other follows from it. With r the live rate, R the full rate alone
/// for the same way of sowing, n the seeds per lb and u the pure live part of the bag:
/// share of a full stand f = r / R (SEED-S88); bulk rate = r / u; live seeds per ft2 = r n / 43,560;
/// share of weight, of seeds or of the stand = the kind's amount / the sum over all kinds.
/// It does not consider that seedlings of one kind outgrow another's: see <see cref="CrowdingReport"/>.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class Blend : IWorkedResult
{
    private Blend(ImmutableArray<BlendPart> parts) => Parts = parts;

    /// <summary>Gets the kinds, in the order they were given.</summary>
    public ImmutableArray<BlendPart> Parts { get; }

    /// <summary>Gets the sum of the shares of a full stand, as a range over the published full rates.</summary>
    public StandTotal StandTotal => Parts.Aggregate(default(StandTotal), (sum, p) => sum + p.ShareOfFullStand);

    /// <summary>Gets the pure live seed of all kinds sown per area.</summary>
    public ApplicationRate LiveRate => Parts.Aggregate(ApplicationRate.Zero, (sum, p) => sum + p.LiveRate.Rate);

    /// <summary>Gets what goes through the spreader per area, all kinds together.</summary>
    public ApplicationRate BulkRate => Parts.Aggregate(ApplicationRate.Zero, (sum, p) => sum + p.BulkRate.Rate);

    /// <summary>Gets the live seeds of all kinds sown per ft2, a pure count.</summary>
    public double LiveSeedsPerSquareFoot => Parts.Sum(p => p.LiveSeedsPerSquareFoot);

    /// <summary>Gets the part of the ft2 that no seed falls on when seed is scattered at random: exp(-seeds per ft2).</summary>
    public Fraction EmptySquareFeet => SeedDensity.FromSeedsPerSquareFoot(LiveSeedsPerSquareFoot).EmptySquareFeet;

    /// <summary>Gets the pure live part of the blend's weight.</summary>
    public Fraction PureLiveSeed => Fraction.FromValue(LiveRate / BulkRate);

    /// <summary>Gets each kind with its share of a full stand.</summary>
    public ImmutableArray<KindShare> KindShares => [.. Parts.Select(p => KindShare.FromShare(p.Kind, p.ShareOfFullStand.Chosen))];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(BlendFindings.Of(Parts));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. BlendFormulas
                .ShareSources.Concat(
                    Parts.SelectMany(p => (p.Kind.Rates?.Evidence.Sources ?? []).Concat(p.Kind.SeedCount?.Evidence.Sources ?? []))
                )
                .Distinct(),
        ];

    /// <summary>The part of a kind.</summary>
    /// <param name="kind">Kind in the blend.</param>
    /// <returns>The part.</returns>
    /// <exception cref="ArgumentException">The kind is not in the blend.</exception>
    public BlendPart PartOf(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Parts.FirstOrDefault(p => p.Kind.Id == kind.Id)
            ?? throw new ArgumentException($"{kind.ShortName} is not in the blend.", nameof(kind));
    }

    /// <summary>The same blend sown thicker or thinner: every rate times a factor, no share of the blend changed.</summary>
    /// <param name="factor">Pure number; finite, above 0.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public Blend Times(double factor)
    {
        Guard.Above(factor, 0, "(a pure number)");
        return FromLive(Parts.Select(p => (p.Component, p.LiveRate.PoundsPerAcre * factor)));
    }

    /// <summary>The same blend at the rate whose shares of a full stand sum to a total.</summary>
    /// <param name="total">Sum of shares wanted; 1 is one full stand; finite, above 0.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public Blend AtStandTotal(double total) => Times(Guard.Above(total, 0, "full stands") / StandTotal.Chosen);

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => BlendWork.Of(Parts, StandTotal, BulkRate);

    /// <summary>The kinds with their rates.</summary>
    /// <returns>Text such as <c>Oats 40 lb PLS/ac, broadcast; ...</c>.</returns>
    public override string ToString() => string.Join("; ", Parts.Select(p => $"{p.Kind.ShortName} {p.LiveRate}"));

    internal static Blend FromLive(IEnumerable<(BlendComponent Component, double LivePoundsPerAcre)> kinds) =>
        new(BlendParts.Of(kinds));
}
