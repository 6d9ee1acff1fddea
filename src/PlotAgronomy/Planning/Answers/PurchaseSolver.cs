using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The cheapest honest set of fertilizer on offer.</summary>
internal static class PurchaseSolver
{
    internal static Purchase? Solve(PlanContent plan, PlotNeed need) =>
        plan.FertilizerOffers.IsEmpty || NeedsNothing(need)
            ? null
            : FertilizerShelf.FromProducts(plan.FertilizerOffers).Cheapest(need, plan.Site.Area, field: Field(plan));

    /// <summary>Runner-ups that meet every need and differ from the cheapest set.</summary>
    internal static ImmutableArray<(RunnerUp Is, Purchase Plan)> Alternatives(PlanContent plan, PlotNeed need, Purchase? cheapest)
    {
        if (cheapest is not { MeetsEveryNeed: true })
        {
            return [];
        }

        var shelf = FertilizerShelf.FromProducts(plan.FertilizerOffers);
        var field = Field(plan);
        var others = ImmutableArray.CreateBuilder<(RunnerUp Is, Purchase Plan)>();
        Add(RunnerUp.NextCheapest, shelf.NextCheapest(need, plan.Site.Area, field: field));
        Add(RunnerUp.FewestProducts, shelf.FewestProducts(need, plan.Site.Area, field: field));
        return others.ToImmutable();

        void Add(RunnerUp kind, Purchase? other)
        {
            if (
                other is { MeetsEveryNeed: true }
                && !BuysTheSame(other, cheapest)
                && !others.Any(known => BuysTheSame(known.Plan, other))
            )
            {
                others.Add((kind, other));
            }
        }
    }

    private static bool BuysTheSame(Purchase one, Purchase other) =>
        one.Lines.Select(Bought).SequenceEqual(other.Lines.Select(Bought));

    /// <summary>A thousandth of a package more or less is the same purchase.</summary>
    private static (double Packages, string Product) Bought(PurchaseLine line) =>
        (Math.Round(line.Packages, 3, MidpointRounding.AwayFromZero), line.Product.Name);

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
