using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <content>The ways to state a blend by what was weighed and by a tag.</content>
public sealed partial class Blend
{
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
            BlendStatement.Each(kinds, k =>
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
        return FromLive(BlendStatement.Each(kinds, k =>
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

        if (Tolerance.IsAbove(sum, 1))
        {
            throw new ArgumentException(
                $"The pure seed of all kinds must be at most 100 % of the bag, found {Amounts.Print(sum * 100, 4)} %.",
                nameof(kinds)
            );
        }

        var purity = Fraction.FromValue(Math.Min(1, sum));
        return FromLive(BlendStatement.Each(kinds, k =>
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
    /// <param name="tag">Tag of a bag that holds all kinds; several varieties of a kind are joined.</param>
    /// <param name="bagRate">Rate the bag is spread at, above 0.</param>
    /// <param name="method">How it is sown.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for each kind.</param>
    /// <returns>The blend, counted against the published full rates.</returns>
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
                .. tag.ByKind.Select(c =>
                    (
                        BlendComponent.FromKind(c.Kind, method) with
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
}
