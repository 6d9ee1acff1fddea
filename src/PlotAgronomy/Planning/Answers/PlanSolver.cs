using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>Asks the rooms about a plan, in the order of the work.</summary>
public static class PlanSolver
{
    /// <summary>Asks every room about the plan.</summary>
    /// <param name="plan">Plan.</param>
    /// <returns>What the rooms answer.</returns>
    /// <exception cref="ArgumentNullException">Null.</exception>
    /// <exception cref="InvalidOperationException">A kind without a known seed count, or for which nobody publishes a rate for
    /// this way of sowing; the message names it.</exception>
    public static PlotAnswers Solve(this PlotPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var blend = BlendOf(plan);
        var sown = plan.Kinds.Select(kind => Sow(kind, blend, plan.Plot.Area)).ToImmutableArray();
        var need = NeedSolver.Solve(plan, blend);
        var fertilizer = PurchaseSolver.Solve(plan, need);
        return new PlotAnswers
        {
            Plan = plan,
            Need = need,
            Lime = LimeSolver.Solve(plan, blend, fertilizer.Purchase),
            Fertilizer = fertilizer,
            Seed = new SeedAnswer
            {
                Blend = blend,
                Batch = blend.WeighFor(plan.Plot.Area),
                Crowding = CrowdingReport.For(blend, Standing(plan)),
                Kinds = sown,
            },
            Spreading = SpreadingSolver.Solve(plan, sown),
        };
    }

    private static Blend BlendOf(PlotPlan plan) =>
        Blend.FromSharesOfFullStand([
            .. plan.Kinds.Select(kind => (Component(kind, plan.SowingMethod), kind.Share.ShareOfFullStand)),
        ]);

    private static BlendComponent Component(PlannedKind kind, SowingMethod method)
    {
        var lot = kind.Offer.Lot;
        return BlendComponent.FromKind(kind.Kind, method) with
        {
            Purity = lot.Analysis.PureSeed,
            Viability = ViabilityRule.For(kind.Kind).Viable(lot.Analysis),
            IsTreated = lot.IsTreated,
            IsInoculated = lot.IsPreinoculated,
        };
    }

    private static SownKind Sow(PlannedKind kind, Blend blend, Area area)
    {
        var part = blend.PartOf(kind.Kind);
        var bulk = kind.Offer.Lot.BulkRate(part.LiveRate);
        var weight = bulk.Bulk.Over(area);
        return new SownKind(area)
        {
            Planned = kind,
            Part = part,
            Bulk = bulk,
            Weight = weight,
            Packages = WholePackages.RoundUp(weight.ToMass(), kind.Offer.Package),
        };
    }

    /// <summary>What stands there already counts in totals and groups.</summary>
    private static KindShare[] Standing(PlotPlan plan) =>
        plan.Plot is { CoverKind: { } kind, CoverShare: > 0 } && plan.Method != PlantingMethod.TilledAndPacked
            ? [KindShare.FromShare(kind, plan.Plot.CoverShare)]
            : [];
}
