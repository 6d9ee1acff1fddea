using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <content>The ways to state a blend by shares and rates.</content>
public sealed partial class Blend
{
    /// <summary>A blend stated by shares of a full stand, the way to plan one: 0.5 is half of what the kind would get
    /// alone.</summary>
    /// <param name="kinds">Each kind once, with its share; finite, above 0.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">No kind, or a kind twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share not above 0, NaN or infinite.</exception>
    public static Blend FromSharesOfFullStand(params ReadOnlySpan<(BlendComponent Component, double ShareOfFullStand)> kinds) =>
        FromLive(
            BlendStatement.Each(kinds, k =>
                (
                    k.Component,
                    BlendMath.LivePoundsPerAcre(
                        Guard.Above(k.Amount, 0, "of a full stand", nameof(kinds)),
                        k.Component.FullRate.PoundsPerAcre
                    )
                )
            )
        );

    /// <summary>A blend stated by shares of a full stand, all sown one way, counted against the published full
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
        KindShare[] listed = [.. kinds];
        Guard.WithoutNulls(listed, nameof(kinds));
        return FromSharesOfFullStand([.. listed.Select(k => (BlendComponent.FromKind(k.Kind, method), k.ShareOfFullStand))]);
    }

    /// <summary>A blend stated by rates of pure live seed.</summary>
    /// <param name="kinds">Each kind once, with its rate above 0, sown as its full rate is.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">No kind, a kind twice, or a rate sown another way than the kind's full
    /// rate.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero.</exception>
    public static Blend FromLiveRates(params ReadOnlySpan<(BlendComponent Component, PureLiveSeedRate Rate)> kinds) =>
        FromLive(
            BlendStatement.Each(kinds, k =>
                (k.Component, BlendStatement.SownAlike(k.Component, k.Amount.Method, k.Amount.PoundsPerAcre, nameof(kinds)))
            )
        );

    /// <summary>A blend stated by rates of bulk seed, as it comes out of the bags.</summary>
    /// <param name="kinds">Each kind once, with its rate above 0, sown as its full rate is.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">No kind, a kind twice, or a rate sown another way than the kind's full
    /// rate.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero.</exception>
    public static Blend FromBulkRates(params ReadOnlySpan<(BlendComponent Component, BulkSeedRate Rate)> kinds) =>
        FromLive(
            BlendStatement.Each(kinds, k =>
                (
                    k.Component,
                    BlendStatement.SownAlike(k.Component, k.Amount.Method, k.Amount.PoundsPerAcre, nameof(kinds))
                        * k.Component.PureLiveFraction
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
            BlendStatement
                .SumToOne(kinds)
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
            BlendStatement
                .SumToOne(kinds)
                .Select(k => (k.Component, bulkRate.PoundsPerAcre * k.Share * k.Component.PureLiveFraction))
        );
    }
}
