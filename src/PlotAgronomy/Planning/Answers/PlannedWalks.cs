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
    internal static ImmutableArray<PlannedWalk> Of(
        PlotPlan plan,
        LimeAnswer lime,
        FertilizerAnswer fertilizer,
        SpreadingAnswer? spreading
    ) =>
        plan.Spreader is { } spreader
            ?
            [
                .. Lime(lime, spreader, SpreadingSolver.Ground(plan)),
                .. Fertilizer(fertilizer, spreader, SpreadingSolver.Ground(plan)),
                .. Seed(plan, spreading, spreader),
            ]
            : [];

    private static IEnumerable<PlannedWalk> Lime(LimeAnswer answer, PlannedSpreader spreader, FieldPasses? ground)
    {
        if (answer is not { Offer: { } offer } lime || lime.Order.OrNull() is not { } order)
        {
            return [];
        }

        var lightest = Density.FromPoundsPerCubicFoot(LimingConstants.All["lightest-bulk"]);
        return order
            .Dressings.Where(d => d.MonthsAfterFirst == 0)
            .Select(dressing =>
                Walk(
                    offer.Item.Name,
                    WalkedPass.For(
                        dressing.Mass,
                        OverThePasses(dressing.Rate, ground),
                        ground?.Spacing ?? spreader.Swath,
                        filling: Filling(spreader, lightest),
                        package: offer.Package.WholeWeight
                    ),
                    ground,
                    lime: dressing
                )
            );
    }

    private static IEnumerable<PlannedWalk> Fertilizer(
        FertilizerAnswer fertilizer,
        PlannedSpreader spreader,
        FieldPasses? ground
    ) =>
        (fertilizer.Purchase.OrNull()?.Lines ?? [])
            .Where(line => line.Product.LiquidDensity is null && line.Spread > Mass.Zero)
            .Select(line =>
                Walk(
                    line.Product.Name,
                    WalkedPass.For(
                        line.Spread,
                        OverThePasses(line.Rate, ground),
                        ground?.Spacing ?? spreader.Swath,
                        filling: Filling(spreader, FertilizerBulk.LightestOf(line.Product)),
                        package: line.Offer.Package.WholeWeight
                    ),
                    ground
                )
            );

    /// <summary>A drill is set by its chart and not walked.</summary>
    private static IEnumerable<PlannedWalk> Seed(PlotPlan plan, SpreadingAnswer? spreading, PlannedSpreader spreader) =>
        plan.Method == PlantingMethod.Drilled
            ? []
            : (spreading?.Passes ?? []).Select(pass =>
                Walk(
                    pass.Names,
                    WalkedPass.For(
                        pass.Load,
                        pass.Rate,
                        pass.Laid.OrNull()?.Spacing ?? spreader.Swath,
                        pass.Setting.OrNull(),
                        Filling(spreader, pass.LightestBulk)
                    ),
                    pass.Laid.OrNull(),
                    seed: pass
                )
            );

    private static PlannedWalk Walk(
        string what,
        WalkedPass pass,
        FieldPasses? laid,
        SowingPass? seed = null,
        LimeDressing? lime = null
    ) =>
        new()
        {
            What = what,
            Pass = pass,
            HalfWay = HalfWay.Of(pass, laid),
            Seed = seed,
            Lime = lime,
        };

    /// <summary>The load was weighed for the plot alone and must last over all that the passes cover.</summary>
    private static ApplicationRate OverThePasses(ApplicationRate rate, FieldPasses? ground) =>
        rate * (1 / (1 + (ground?.OutsideShare ?? 0)));

    private static Mass? Filling(PlannedSpreader spreader, Density? lightest) =>
        spreader.HopperVolume is { } hopper && lightest is { } density ? MeasuredBucket.FromVolume(hopper, density).Holds : null;
}
