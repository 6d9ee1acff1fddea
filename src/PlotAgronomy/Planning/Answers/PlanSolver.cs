using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Asks the rooms, in the order of the work.</summary>
internal static class PlanSolver
{
    internal static PlanResults Solve(PlanContent plan)
    {
        var blend = BlendOf(plan);
        var batch = blend.WeighFor(plan.Site.Area);
        var sown = plan.Kinds.Select(kind => Sow(kind, blend, plan.Site.Area)).ToImmutableArray();
        var (groups, passes) = SowingPasses.Plan(plan, sown);
        var need = NeedSolver.Solve(plan, blend);
        var purchase = PurchaseSolver.Solve(plan, need);
        return new PlanResults
        {
            Plan = plan,
            Need = need,
            Lime = LimeSolver.Solve(plan, blend, purchase),
            Fertilizer = purchase,
            FertilizerAlternatives = PurchaseSolver.Alternatives(plan, need, purchase),
            Blend = blend,
            Batch = batch,
            Crowding = CrowdingReport.For(blend, Standing(plan)),
            Sown = sown,
            Groups = groups,
            Passes = passes,
        };
    }

    private static Blend BlendOf(PlanContent plan) =>
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
        return new SownKind(kind, part, bulk, weight, WholePackages.RoundUp(weight.ToMass(), kind.Offer.Package));
    }

    /// <summary>What stands there already counts in totals and groups.</summary>
    private static KindShare[] Standing(PlanContent plan) =>
        plan.Site is { CoverKind: { } kind, CoverShare: > 0 } && plan.Method != PlantingMethod.TilledAndPacked
            ? [KindShare.FromShare(kind, plan.Site.CoverShare)]
            : [];
}
