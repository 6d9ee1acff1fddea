using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>From kinds and lots to one blend, its weights and what it makes of the plot.</summary>
internal static class SeedSolver
{
    /// <summary>The kinds as one blend; null where nothing is sown, or a kind has no seed count or no rate for this way of
    /// sowing.</summary>
    internal static Blend? BlendOf(PlotPlan plan) =>
        plan.Kinds.IsEmpty || SeedParts.BeforeBlending(plan).Any()
            ? null
            : Blend.FromSharesOfFullStand([
                .. plan.Kinds.Select(kind =>
                    (Component(kind, plan.SowingMethod!.Value), kind.Share.ShareOfFullStand * kind.SowingFactor)
                ),
            ]);

    /// <param name="plan">Plan.</param>
    /// <param name="blend">The kinds as one blend; null where it cannot be made.</param>
    /// <param name="nitrogen">Nitrogen the purchase brings.</param>
    /// <param name="sown">Ground that is sown: the plot, and what its passes cover beside it.</param>
    internal static Answer<SeedAnswer> Solve(PlotPlan plan, Blend? blend, ApplicationRate? nitrogen, Area sown)
    {
        if (plan.Kinds.IsEmpty)
        {
            return Answers.NoneNeeded<SeedAnswer>();
        }

        if (blend is null)
        {
            ImmutableArray<OpenQuestion> missing = [.. SeedParts.BeforeBlending(plan)];
            return Answers.Open(() => missing, () => Cases(missing, nitrogen, sown, plan));
        }

        if (plan.Kinds.Where(k => k.Offer.Item.IsUntagged).ToList() is { Count: > 0 } untagged)
        {
            return UntaggedSeed.Cases(plan, untagged, tested => Solve(tested, BlendOf(tested), nitrogen, sown));
        }

        var standing = Standing(plan);
        var batch = blend.WeighFor(sown);
        var seed = new SeedAnswer(
            plan,
            seed => BlendFit.For(seed.Batch, Conditions(plan, standing, nitrogen)),
            seed => SeasonCoverage.For(seed.Blend, standing)
        )
        {
            Blend = blend,
            Batch = batch,
            Crowding = CrowdingReport.For(blend, standing),
            Kinds = [.. plan.Kinds.Select(kind => Sow(plan, kind, blend, sown))],
        };
        return Answers.Given(seed, () => seed.Fit.Findings, () => [.. seed.Questions]);
    }

    /// <summary>A kind weighed out by itself for the plot; null where it cannot be.</summary>
    internal static SownKind? WeighAlone(PlotPlan plan, PlannedKind kind) =>
        BlendOf(plan with { Kinds = [kind] }) is { } alone
            ? Sow(plan, kind, alone, SpreadingSolver.SownGround(plan, SpreadingSolver.Ground(plan)))
            : null;

    /// <summary>The seed under each way of planting that its kinds have rates for.</summary>
    private static ImmutableArray<AnswerCase<SeedAnswer>> Cases(
        ImmutableArray<OpenQuestion> missing,
        ApplicationRate? nitrogen,
        Area sown,
        PlotPlan plan
    ) =>
        [
            .. missing
                .OfType<OpenQuestion<PlantingMethod>>()
                .SelectMany(q =>
                    q.Cases(method =>
                    {
                        var planted = plan with { Method = method };
                        return Solve(planted, BlendOf(planted), nitrogen, sown);
                    })
                ),
        ];

    private static BlendComponent Component(PlannedKind kind, SowingMethod method)
    {
        var lot = kind.Offer.Item;
        var counted = lot.WithOwnCount(kind.Kind);
        var component = kind.OwnFullRate(method) is { } own
            ? BlendComponent.FromKind(counted, own)
            : BlendComponent.FromKind(counted, method);
        return component with
        {
            Purity = lot.Analysis.PureSeed,
            Viability = ViabilityRule.For(kind.Kind).Viable(lot.Analysis),
            IsTreated = lot.IsTreated,
            IsInoculated = lot.IsPreinoculated,
        };
    }

    private static SownKind Sow(PlotPlan plan, PlannedKind kind, Blend blend, Area sown)
    {
        var part = blend.PartOf(kind.Kind);
        var bulk = kind.Offer.Item.BulkRate(part.LiveRate);
        var lots = SownLot.For(plan, kind, lot => lot.BulkRate(part.LiveRate).Bulk.Over(sown).ToMass(), out double missing);
        return new SownKind(plan, sown, lots)
        {
            Planned = kind,
            Part = part,
            Bulk = bulk,
            Missing = Fraction.FromValue(Math.Clamp(missing, 0, 1)),
        };
    }

    /// <summary>What stands there already counts in totals and groups.</summary>
    private static KindShare[] Standing(PlotPlan plan) =>
        plan.Plot is { CoverKind: { } kind, CoverShare: > 0 } && plan.Method != PlantingMethod.TilledAndPacked
            ? [KindShare.FromShare(kind, plan.Plot.CoverShare)]
            : [];

    private static BlendFitRequest Conditions(PlotPlan plan, KindShare[] standing, ApplicationRate? nitrogen) =>
        new()
        {
            Soil = plan.Soil,
            Region = plan.Plot.PlantingRegion,
            SowingDay = plan.PlantingDate,
            NitrogenPlanned = nitrogen,
            IsSeedLeftOnSurface = plan.Method is not (PlantingMethod.TilledAndPacked or PlantingMethod.Drilled),
            Standing = [.. standing],
        };
}
