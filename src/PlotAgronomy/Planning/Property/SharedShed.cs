using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>Plots that are solved in turn, so that each takes first what is in the shed and what those before it left.</summary>
internal sealed class SharedShed
{
    private readonly OfferParts parts = new();
    private readonly SharedShelf<LimingMaterial> lime;
    private readonly SharedShelf<FertilizerProduct> fertilizer;
    private readonly SharedShelf<SeedLot> seed;

    private SharedShed(IReadOnlyList<PlotPlan> plans)
    {
        lime = new(m => m.Name, parts);
        fertilizer = new(p => p.Name, parts);
        seed = new(lot => lot.ToString(), parts);
        lime.Stock(plans.SelectMany(p => p.LimeOffers));
        fertilizer.Stock(plans.SelectMany(p => p.FertilizerOffers));
        seed.Stock(plans.SelectMany(p => p.SeedOffers).Concat(plans.SelectMany(p => p.Kinds).Select(k => k.Offer)));
    }

    internal static (ImmutableArray<PlotAnswers> Plots, OfferParts Parts) Solve(IReadOnlyList<PlotPlan> plans)
    {
        var shed = new SharedShed(plans);
        return ([.. plans.Select(shed.Next)], shed.parts);
    }

    private PlotAnswers Next(PlotPlan plan)
    {
        var answers = Stocked(plan).Solve();
        PlotProduct[] taken = [.. new PlotNeeds(answers, [], parts).All];
        lime.Take(taken);
        fertilizer.Take(taken);
        seed.Take(taken);
        return answers;
    }

    private PlotPlan Stocked(PlotPlan plan)
    {
        var lots = seed.For(
            [.. plan.SeedOffers, .. plan.Kinds.Select(k => k.Offer).Where(o => !plan.SeedOffers.Contains(o))],
            lot => plan.Kinds.Any(k => k.Kind.Id == lot.Kind.Id)
        );
        return plan with
        {
            LimeOffers = lime.For(plan.LimeOffers, _ => !plan.LimeOffers.IsEmpty),
            FertilizerOffers = fertilizer.For(plan.FertilizerOffers, _ => !plan.FertilizerOffers.IsEmpty),
            SeedOffers = lots,
            Kinds = [.. plan.Kinds.Select(k => k with { Offer = First(k, lots) })],
        };
    }

    /// <summary>A lot that is there for nothing goes first, with its tag; else the planned one, as far as it is still
    /// there.</summary>
    private static Offer<SeedLot> First(PlannedKind kind, ImmutableArray<Offer<SeedLot>> lots) =>
        lots.FirstOrDefault(o =>
            o is { Price: 0, Available: > 0, Item.IsUntagged: false }
            && o.Item.Kind.Id == kind.Kind.Id
            && o.Item.IsTreated == kind.Offer.Item.IsTreated
        )
        ?? lots.FirstOrDefault(o => o.Item == kind.Offer.Item && o.Price == kind.Offer.Price)
        ?? kind.Offer;
}
