using System.Collections.Immutable;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <content>The ways to state a blend.</content>
public sealed partial class Blend
{
    /// <summary>Parts written as shares must sum to one within this, relative: the dust of a spreadsheet, not a missing
    /// kind.</summary>
    private const double SumTolerance = 1e-9;

    /// <summary>A blend stated by shares of a full stand, the way to plan one: 0.5 is half of what the kind would get
    /// alone.</summary>
    /// <param name="kinds">Each kind once, with its share; finite, above 0.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">No kind, or a kind twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share not above 0, NaN or infinite.</exception>
    public static Blend FromSharesOfFullStand(params ReadOnlySpan<(BlendComponent Component, double ShareOfFullStand)> kinds) =>
        FromLive(
            Each(kinds, k =>
                (k.Component, Guard.Above(k.Amount, 0, "of a full stand", nameof(kinds)) * k.Component.FullRate.PoundsPerAcre)
            )
        );

    /// <summary>A blend stated by shares of a full stand, all sown one way, counted against the middle of the published full
    /// rates.</summary>
    /// <param name="method">How all of it is sown.</param>
    /// <param name="kinds">Each kind once, with its share above 0.</param>
    /// <returns>The blend; without tags all seed counts as alive.</returns>
    /// <exception cref="ArgumentException">No kind, or a kind twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share of zero, or an unknown method.</exception>
    /// <exception cref="InvalidOperationException">No rate for this way of sowing, or no seed count, is known for a
    /// kind.</exception>
    public static Blend FromSharesOfFullStand(SowingMethod method, params IEnumerable<KindShare> kinds)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        return FromSharesOfFullStand([.. kinds.Select(k => (BlendComponent.Of(k.Kind, method), k.ShareOfFullStand))]);
    }

    /// <summary>A blend stated by rates of pure live seed.</summary>
    /// <param name="kinds">Each kind once, with its rate above 0, sown as its full rate is.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">No kind, a kind twice, or a rate sown another way than the kind's full
    /// rate.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero.</exception>
    public static Blend FromLiveRates(params ReadOnlySpan<(BlendComponent Component, PureLiveSeedRate Rate)> kinds) =>
        FromLive(Each(kinds, k => (k.Component, SownAlike(k.Component, k.Amount.Method, k.Amount.PoundsPerAcre, nameof(kinds)))));

    /// <summary>A blend stated by rates of bulk seed, as it comes out of the bags.</summary>
    /// <param name="kinds">Each kind once, with its rate above 0, sown as its full rate is.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">No kind, a kind twice, or a rate sown another way than the kind's full
    /// rate.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero.</exception>
    public static Blend FromBulkRates(params ReadOnlySpan<(BlendComponent Component, BulkSeedRate Rate)> kinds) =>
        FromLive(
            Each(kinds, k =>
                (
                    k.Component,
                    SownAlike(k.Component, k.Amount.Method, k.Amount.PoundsPerAcre, nameof(kinds)) * k.Component.PureLiveFraction
                )
            )
        );

    /// <summary>A blend stated by shares of the number of live seeds.</summary>
    /// <param name="liveSeedsPerSquareFoot">Live seeds of all kinds sown per ft2; finite, above 0.</param>
    /// <param name="kinds">Each kind once, with its share above 0; the shares sum to one.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">No kind, a kind twice, or shares that do not sum to one.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    public static Blend FromSeedShares(
        double liveSeedsPerSquareFoot,
        params ReadOnlySpan<(BlendComponent Component, Fraction Share)> kinds
    )
    {
        Guard.Above(liveSeedsPerSquareFoot, 0, "seeds per ft2");
        return FromLive(
            SumToOne(kinds)
                .Select(k =>
                    (k.Component, SeedMath.PoundsPerAcreForDensity(liveSeedsPerSquareFoot * k.Share, k.Component.SeedsPerPound))
                )
        );
    }

    /// <summary>A blend stated by shares of its weight, as most recipes and bags are.</summary>
    /// <param name="bulkRate">Bulk seed of all kinds sown per area, above 0.</param>
    /// <param name="kinds">Each kind once, with its share of the bulk weight above 0; the shares sum to one.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">No kind, a kind twice, or shares that do not sum to one.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    public static Blend FromWeightShares(
        ApplicationRate bulkRate,
        params ReadOnlySpan<(BlendComponent Component, Fraction Share)> kinds
    )
    {
        Guard.Above(bulkRate.PoundsPerAcre, 0, "lb/ac", nameof(bulkRate));
        return FromLive(
            SumToOne(kinds).Select(k => (k.Component, bulkRate.PoundsPerAcre * k.Share * k.Component.PureLiveFraction))
        );
    }

    /// <summary>A blend stated by the bulk weights that went into a batch and the area it is spread on.</summary>
    /// <param name="area">Area the whole batch is spread on; finite, above 0.</param>
    /// <param name="kinds">Each kind once, with its bulk weight above 0.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">No kind, or a kind twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    public static Blend FromBatch(Area area, params ReadOnlySpan<(BlendComponent Component, BulkSeedMass Weight)> kinds)
    {
        double acres = area.Acres;
        Guard.Above(acres, 0, "ac", nameof(area));
        return FromLive(
            Each(kinds, k =>
                (k.Component, Guard.Above(k.Amount.Pounds, 0, "lb", nameof(kinds)) / acres * k.Component.PureLiveFraction)
            )
        );
    }

    /// <summary>A blend stated by what a home scale showed: pail and seed together, less the empty pail.</summary>
    /// <param name="area">Area the whole batch is spread on; finite, above 0.</param>
    /// <param name="emptyPail">What the empty pail weighs; finite, at least 0; zero when the scale was set to zero with
    /// it.</param>
    /// <param name="kinds">Each kind once, with the weight shown for pail and bulk seed, above the empty pail's.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">No kind, or a kind twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    public static Blend FromHomeScale(
        Area area,
        Mass emptyPail,
        params ReadOnlySpan<(BlendComponent Component, Mass Shown)> kinds
    )
    {
        double acres = area.Acres;
        double pailPounds = emptyPail.Pounds;
        Guard.Above(acres, 0, "ac", nameof(area));
        Guard.AtLeast(pailPounds, 0, "lb", nameof(emptyPail));
        return FromLive(Each(kinds, k =>
            {
                double shownPounds = k.Amount.Pounds;
                return (
                    k.Component,
                    (Guard.Above(shownPounds, pailPounds, "lb, the empty pail", nameof(kinds)) - pailPounds)
                        / acres
                        * k.Component.PureLiveFraction
                );
            }));
    }

    /// <summary>A blend stated by the tag of a bag that holds all kinds: pure seed of each in percent of the whole bag.</summary>
    /// <param name="bagRate">Rate the bag is spread at, above 0.</param>
    /// <param name="kinds">Each kind once, with its pure seed as printed, above 0; together at most the whole bag. The viability
    /// is the
    /// component's; its purity is that of the bag and is set here.</param>
    /// <returns>The blend; other crop, weed and inert matter count as carried by all kinds alike.</returns>
    /// <exception cref="ArgumentException">No kind, a kind twice, or more pure seed than the bag holds.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    /// <remarks>live rate = bag rate x pure seed x viability. Reading back the tag of a blend gives the blend.</remarks>
    public static Blend FromTag(ApplicationRate bagRate, params ReadOnlySpan<(BlendComponent Component, Fraction PureSeed)> kinds)
    {
        Guard.Above(bagRate.PoundsPerAcre, 0, "lb/ac", nameof(bagRate));
        double sum = 0;
        foreach (var (_, pureSeed) in kinds)
        {
            sum += pureSeed.Value;
        }

        if (sum > 1 + SumTolerance)
        {
            throw new ArgumentException(
                $"The pure seed of all kinds must be at most 100 % of the bag, found {Amounts.Print(sum * 100, 4)} %.",
                nameof(kinds)
            );
        }

        var purity = Fraction.FromValue(Math.Min(1, sum));
        return FromLive(Each(kinds, k =>
            {
                var inBag = k.Component with { Purity = purity };
                return (
                    inBag,
                    bagRate.PoundsPerAcre
                        * Guard.Above(k.Amount.Value, 0, "(a part of one whole)", nameof(kinds))
                        * (inBag.Viability?.Value ?? 1)
                );
            }));
    }

    /// <summary>A blend stated by a whole tag.</summary>
    /// <param name="tag">Tag of a bag that holds all kinds.</param>
    /// <param name="bagRate">Rate the bag is spread at, above 0.</param>
    /// <param name="method">How it is sown.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for each kind.</param>
    /// <returns>The blend, counted against the middle of the published full rates.</returns>
    /// <exception cref="ArgumentException">No kind, a kind twice, or more pure seed than the bag holds.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero, or a kind of which nothing counts as alive.</exception>
    /// <exception cref="InvalidOperationException">No rate for this way of sowing, or no seed count, is known for a
    /// kind.</exception>
    public static Blend FromTag(SeedTag tag, ApplicationRate bagRate, SowingMethod method, ViabilityRule? rule = null)
    {
        ArgumentNullException.ThrowIfNull(tag);
        return FromTag(
            bagRate,
            [
                .. tag.Components.Select(c =>
                    (
                        BlendComponent.Of(c.Kind, method) with
                        {
                            Viability = (rule ?? ViabilityRule.For(c.Kind)).Viable(c.Analysis),
                            IsTreated = tag.IsTreated,
                        },
                        c.Analysis.PureSeed
                    )
                ),
            ]
        );
    }

    internal static Blend FromLive(IEnumerable<(BlendComponent Component, double LivePoundsPerAcre)> kinds)
    {
        var all = kinds.ToArray();
        if (all.Length == 0)
        {
            throw new ArgumentException("A blend needs at least one kind.", nameof(kinds));
        }

        if (all.GroupBy(k => k.Component.Kind.Id).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new ArgumentException(
                $"{twice.First().Component.Kind.ShortName} stands twice: join its lots first.",
                nameof(kinds)
            );
        }

        double[] live = [.. all.Select(k => k.LivePoundsPerAcre)];
        double[] bulk = [.. all.Select(k => SeedMath.BulkPoundsPerAcre(k.LivePoundsPerAcre, k.Component.PureLiveFraction))];
        double[] seeds = [.. all.Select(k => SeedMath.SeedsPerSquareFoot(k.LivePoundsPerAcre, k.Component.SeedsPerPound))];
        double[] stand =
        [
            .. all.Select(k => BlendMath.ShareOfFullStand(k.LivePoundsPerAcre, k.Component.FullRate.PoundsPerAcre)),
        ];
        double[] liveShares = BlendMath.Shares(live),
            bulkShares = BlendMath.Shares(bulk),
            seedShares = BlendMath.Shares(seeds),
            standShares = BlendMath.Shares(stand);
        return new Blend([
            .. all.Select(
                (k, i) =>
                    new BlendPart
                    {
                        Component = k.Component,
                        LiveRate = PureLiveSeedRate.Of(ApplicationRate.FromPoundsPerAcre(live[i]), k.Component.Method),
                        BulkRate = BulkSeedRate.Of(ApplicationRate.FromPoundsPerAcre(bulk[i]), k.Component.Method),
                        ShareOfFullStand = StandTotal.Of(
                            BlendMath.ShareOfFullStand(live[i], k.Component.FullRange.High.PoundsPerAcre),
                            stand[i],
                            BlendMath.ShareOfFullStand(live[i], k.Component.FullRange.Low.PoundsPerAcre)
                        ),
                        LiveSeedsPerSquareFoot = seeds[i],
                        ShareOfBulkWeight = Fraction.FromValue(bulkShares[i]),
                        ShareOfLiveWeight = Fraction.FromValue(liveShares[i]),
                        ShareOfLiveSeeds = Fraction.FromValue(seedShares[i]),
                        ShareOfStand = Fraction.FromValue(standShares[i]),
                        PureSeedOnTag = Fraction.FromValue(bulkShares[i] * k.Component.PureFraction),
                    }
            ),
        ]);
    }

    private static double SownAlike(BlendComponent component, SowingMethod method, double poundsPerAcre, string name)
    {
        Guard.Above(poundsPerAcre, 0, "lb/ac", name);
        return method == component.Method
            ? poundsPerAcre
            : throw new ArgumentException(
                $"The rate of {component.Kind.ShortName} is {method}, its full rate {component.Method}: a share needs both "
                    + "sown the same way.",
                name
            );
    }

    private static ImmutableArray<(BlendComponent Component, double LivePoundsPerAcre)> Each<T>(
        ReadOnlySpan<(BlendComponent Component, T Amount)> kinds,
        Func<(BlendComponent Component, T Amount), (BlendComponent, double)> toLive
    )
    {
        var all = ImmutableArray.CreateBuilder<(BlendComponent, double)>(kinds.Length);
        foreach (var kind in kinds)
        {
            ArgumentNullException.ThrowIfNull(kind.Component, nameof(kinds));
            all.Add(toLive(kind));
        }

        return all.MoveToImmutable();
    }

    private static ImmutableArray<(BlendComponent Component, double Share)> SumToOne(
        ReadOnlySpan<(BlendComponent Component, Fraction Share)> kinds
    )
    {
        var all = ImmutableArray.CreateBuilder<(BlendComponent, double)>(kinds.Length);
        double sum = 0;
        foreach (var (component, share) in kinds)
        {
            ArgumentNullException.ThrowIfNull(component, nameof(kinds));
            all.Add((component, Guard.Above(share.Value, 0, "(a part of one whole)", nameof(kinds))));
            sum += share.Value;
        }

        return Math.Abs(sum - 1) <= SumTolerance
            ? all.MoveToImmutable()
            : throw new ArgumentException($"The shares must sum to 100 %, found {Amounts.Print(sum * 100, 4)} %.", nameof(kinds));
    }
}
