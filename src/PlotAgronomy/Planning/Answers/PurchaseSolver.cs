using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The cheapest honest set of fertilizer on offer.</summary>
internal static class PurchaseSolver
{
    internal static FertilizerAnswer Solve(PlotPlan plan, PlotNeed need)
    {
        bool isNeeded = need.Targets.Any(t => t.AtLeast != ApplicationRate.Zero);
        var cheapest =
            isNeeded && !plan.FertilizerOffers.IsEmpty
                ? FertilizerShelf.FromOffers(plan.FertilizerOffers).Cheapest(need, plan.Plot.Area, field: Field(plan))
                : null;
        return new FertilizerAnswer
        {
            IsNeeded = isNeeded,
            Purchase = cheapest,
            Others = Others(plan, need, cheapest),
        };
    }

    /// <summary>Runner-ups that meet every need and differ from the cheapest set.</summary>
    private static ImmutableArray<OtherPurchase> Others(PlotPlan plan, PlotNeed need, Purchase? cheapest)
    {
        if (cheapest is not { MeetsEveryNeed: true })
        {
            return [];
        }

        var shelf = FertilizerShelf.FromOffers(plan.FertilizerOffers);
        var field = Field(plan);
        var others = ImmutableArray.CreateBuilder<OtherPurchase>();
        Add(RunnerUp.NextCheapest, shelf.NextCheapest(need, plan.Plot.Area, field: field));
        Add(RunnerUp.FewestProducts, shelf.FewestProducts(need, plan.Plot.Area, field: field));
        return others.ToImmutable();

        void Add(RunnerUp kind, Purchase? other)
        {
            if (
                other is { MeetsEveryNeed: true }
                && !BuysTheSame(other, cheapest)
                && !others.Any(known => BuysTheSame(known.Purchase, other))
            )
            {
                others.Add(new OtherPurchase { Is = kind, Purchase = other });
            }
        }
    }

    private static bool BuysTheSame(Purchase one, Purchase other) =>
        one.Lines.Select(Bought).SequenceEqual(other.Lines.Select(Bought));

    /// <summary>A thousandth of a package more or less is the same purchase.</summary>
    private static (double Packages, string Product) Bought(PurchaseLine line) =>
        (Math.Round(line.Packages, 3, MidpointRounding.AwayFromZero), line.Product.Name);

    private static FieldConditions Field(PlotPlan plan) =>
        new()
        {
            IsIncorporated = plan.Method == PlantingMethod.TilledAndPacked,
            IsNearWater = plan.Plot.IsNearWater,
            Soil = plan.Soil,
            IsLegumeStand = plan.Plot.Cover == GroundCover.LegumeStand || plan.Kinds.All(k => k.Kind.IsLegume),
        };

    internal static IEnumerable<Finding> FindingsFor(PlotPlan plan, FertilizerAnswer fertilizer) =>
        plan.FertilizerOffers.IsEmpty && fertilizer.IsNeeded ? [FindingCatalog.Create(PlanningCodes.NoFertilizerOffered)] : [];
}
