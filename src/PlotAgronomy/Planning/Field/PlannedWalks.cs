using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Every walk of a plan with the spreader, in the order of the work: lime of the first day, fertilizer, seed.</summary>
internal static class PlannedWalks
{
    /// <summary>None without a spreader.</summary>
    internal static ImmutableArray<PlannedWalk> Of(PlotAnswers answers) =>
        answers.Plan.Spreader is { } spreader
            ? [.. Lime(answers, spreader), .. Fertilizer(answers, spreader), .. Seed(answers, spreader)]
            : [];

    private static IEnumerable<PlannedWalk> Lime(PlotAnswers answers, PlannedSpreader spreader)
    {
        if (answers.Lime.Told is not { Offer: { } offer } lime || lime.Order.OrNull() is not { } order)
        {
            return [];
        }

        var lightest = Density.FromPoundsPerCubicFoot(LimingConstants.All["lightest-bulk"]);
        return order
            .Dressings.Where(d => d.MonthsAfterFirst == 0)
            .Select(dressing => new PlannedWalk
            {
                What = offer.Item.Name,
                Lime = dressing,
                Pass = WalkedPass.For(
                    dressing.Mass,
                    dressing.Rate,
                    SpacingOf(answers, spreader),
                    filling: Filling(spreader, lightest),
                    package: offer.Package.IsWhole ? offer.Package.Weight : null
                ),
            });
    }

    private static IEnumerable<PlannedWalk> Fertilizer(PlotAnswers answers, PlannedSpreader spreader) =>
        (answers.Fertilizer.Told.Purchase.OrNull()?.Lines ?? [])
            .Where(line => line.Product.LiquidDensity is null && line.Spread > Mass.Zero)
            .Select(line => new PlannedWalk
            {
                What = line.Product.Name,
                Pass = WalkedPass.For(
                    line.Spread,
                    line.Rate,
                    SpacingOf(answers, spreader),
                    filling: Filling(spreader, FertilizerBulk.LightestOf(line.Product)),
                    package: line.Offer.Package.IsWhole ? line.Offer.Package.Weight : null
                ),
            });

    /// <summary>A drill is set by its chart and not walked.</summary>
    private static IEnumerable<PlannedWalk> Seed(PlotAnswers answers, PlannedSpreader spreader) =>
        answers.Plan.Method == PlantingMethod.Drilled
            ? []
            : (answers.Spreading.OrNull()?.Passes ?? []).Select(pass => new PlannedWalk
            {
                What = pass.Names,
                Seed = pass,
                Pass = WalkedPass.For(
                    pass.Load,
                    pass.Rate,
                    pass.Laid.OrNull()?.Spacing ?? spreader.Swath,
                    pass.Setting.OrNull(),
                    Filling(spreader, pass.LightestBulk)
                ),
            });

    private static Length SpacingOf(PlotAnswers answers, PlannedSpreader spreader) =>
        SpreadingSolver.Ground(answers.Plan)?.Spacing ?? spreader.Swath;

    private static Mass? Filling(PlannedSpreader spreader, Density? lightest) =>
        spreader.HopperVolume is { } hopper && lightest is { } density ? MeasuredBucket.FromVolume(hopper, density).Holds : null;
}
