using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The cheapest honest set of fertilizer on offer.</summary>
internal static class PurchaseSolver
{
    internal static PurchasePlan? Solve(PlanContent plan, PlotNeed need) =>
        plan.FertilizerOffers.IsEmpty || NeedsNothing(need)
            ? null
            : FertilizerShelf.Of(plan.FertilizerOffers).Cheapest(need, plan.Site.Area, field: Field(plan));

    /// <summary>Runner-ups that meet every need and differ from the cheapest set.</summary>
    internal static ImmutableArray<(string Name, PurchasePlan Plan)> Alternatives(
        PlanContent plan,
        PlotNeed need,
        PurchasePlan? cheapest
    )
    {
        if (cheapest is not { MeetsEveryNeed: true })
        {
            return [];
        }

        var shelf = FertilizerShelf.Of(plan.FertilizerOffers);
        (string Name, PurchasePlan? Plan)[] others =
        [
            ("next cheapest", shelf.NextCheapest(need, plan.Site.Area, field: Field(plan))),
            ("with the fewest products", shelf.FewestProducts(need, plan.Site.Area, field: Field(plan))),
        ];
        return
        [
            .. others
                .Where(o => o.Plan is { MeetsEveryNeed: true } other && Products(other) != Products(cheapest))
                .DistinctBy(o => Products(o.Plan!))
                .Select(o => (o.Name, o.Plan!)),
        ];
    }

    private static string Products(PurchasePlan plan) =>
        string.Join('|', plan.Lines.Select(l => $"{Amounts.Print(l.Packages, 3)} {l.Product.Name}"));

    private static FieldConditions Field(PlanContent plan) =>
        new()
        {
            IsIncorporated = plan.Method == PlantingMethod.TilledAndPacked,
            IsLegumeStand = plan.Site.Cover == GroundCover.LegumeStand || plan.Kinds.All(k => k.Kind.IsLegume),
        };

    internal static bool NeedsNothing(PlotNeed need) => need.Targets.All(t => t.AtLeast == ApplicationRate.Zero);

    internal static IEnumerable<Finding> FindingsFor(PlanResults results) =>
        results.Plan.FertilizerOffers.IsEmpty && !NeedsNothing(results.Need)
            ? [FindingCatalog.Create(PlanningCodes.NoFertilizerOffered)]
            : [];
}
