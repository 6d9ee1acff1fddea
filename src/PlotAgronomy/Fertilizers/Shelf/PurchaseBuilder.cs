using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>Makes the plan a person reads from the numbers of the solver.</summary>
internal static class PurchaseBuilder
{
    /// <summary>Naming a conflict and its remedy takes many searches: each gets fewer nodes than the plan itself.</summary>
    private const int QuarrelSearchLimit = 20_000;

    internal static Purchase Build(
        ShelfProblem shelf,
        PlotNeed need,
        Area area,
        PurchaseForm form,
        FieldConditions field,
        int searchLimit
    )
    {
        var solved = PackageSolver.Cheapest(shelf.Packages, form, shelf.Load, searchLimit, out bool decided);
        NutrientConflict? conflict = null;
        bool isProven = solved is { IsProven: true };
        bool isUndecided = false;
        if (solved is null && shelf.Packages.IsBeyondCounting && form != PurchaseForm.WeighExact)
        {
            solved = Nothing(shelf);
            isUndecided = true;
        }
        else if (solved is null)
        {
            conflict = decided ? ConflictOf(shelf, need, area, form, field, Math.Min(searchLimit, QuarrelSearchLimit)) : null;
            double[] reachable = SmallestMiss.ReachableNeeds(
                shelf.Packages,
                form,
                searchLimit,
                out bool isSmallest,
                out int[]? start
            );
            var reached = shelf.Packages.With(need: reachable);
            var nearest = PackageSolver.Cheapest(reached, form, shelf.Load, searchLimit, out _, default, null, start);
            isUndecided = !decided && nearest?.Bought.Any(b => b > 0) != true;
            solved = nearest ?? Nothing(shelf);
            isProven = isSmallest && solved.IsProven && !isUndecided;
        }

        return Build(shelf, area, form, field, solved, isProven, conflict, need, isUndecided);
    }

    internal static Purchase Build(
        ShelfProblem shelf,
        Area area,
        PurchaseForm form,
        FieldConditions field,
        SolvedPackages solved,
        bool isProven,
        NutrientConflict? conflict,
        PlotNeed need,
        bool isUndecided = false
    )
    {
        var lines = Lines(shelf, area, form, solved);
        var balances = Balances(shelf.Targets, lines);
        decimal gap =
            shelf.IsChosen ? (decimal)Math.Max(0, solved.Cost - Math.Min(solved.LowerBound, shelf.LowestCost))
            : solved.IsProven ? 0
            : (decimal)Math.Max(0, solved.Cost - solved.LowerBound);
        return new Purchase(field, need)
        {
            Form = form,
            Area = area,
            Lines = lines,
            Balances = balances,
            TotalCost = lines.Sum(l => l.Cost),
            IsProvenCheapest = isProven && !shelf.IsChosen,
            IsUndecided = isUndecided,
            ProvenGap = gap,
            MarginalCosts = MarginalCosts(shelf),
            Conflict = conflict,
            CountsCompounds = CountsCompounds(shelf.Targets, lines),
        };
    }

    private static ImmutableArray<PurchaseLine> Lines(ShelfProblem shelf, Area area, PurchaseForm form, SolvedPackages solved)
    {
        var lines = ImmutableArray.CreateBuilder<PurchaseLine>();
        for (int i = 0; i < shelf.Offers.Length; i++)
        {
            // What is there for nothing and is not spread stays where it is.
            if (solved.Bought[i] <= 0 || (solved.Spread[i] <= 0 && shelf.Offers[i].Price == 0))
            {
                continue;
            }

            var offer = shelf.Offers[i];
            double packagePounds = offer.Package.Pounds;
            double spread = solved.Spread[i] * packagePounds,
                bought = solved.Bought[i] * packagePounds;
            lines.Add(
                new PurchaseLine
                {
                    Offer = offer,
                    Packages = solved.Bought[i],
                    Spread = Mass.FromPounds(spread),
                    Rate = ApplicationRate.FromMassAndArea(Mass.FromPounds(spread), area),
                    Leftover = Mass.FromPounds(Math.Max(0, bought - spread)),
                    Cost = FertilizerMath.Price(
                        form == PurchaseForm.WeighExact ? (decimal)solved.Bought[i] : (int)solved.Bought[i],
                        offer.Price
                    ),
                }
            );
        }

        return lines.ToImmutable();
    }

    /// <summary>Whether a nutrient is counted that no label states, by the masses of its compound.</summary>
    private static bool CountsCompounds(ImmutableArray<NutrientTarget> targets, ImmutableArray<PurchaseLine> lines) =>
        lines.Any(line => targets.Any(t => line.Product.Counted.Percent(t.Nutrient) > line.Product.Analysis.Percent(t.Nutrient)));

    private static ImmutableArray<NutrientBalance> Balances(
        ImmutableArray<NutrientTarget> targets,
        ImmutableArray<PurchaseLine> lines
    ) => NutrientBalances.Of(targets, [.. lines.Select(line => (line.Product, line.Rate))]);

    private static ImmutableArray<MarginalCost> MarginalCosts(ShelfProblem shelf)
    {
        var simplex = new DualSimplex(shelf.Packages.AsLinearProgram());
        if (simplex.Solve(double.PositiveInfinity, new SearchWork()) != SimplexOutcome.Optimal)
        {
            return [];
        }

        var prices = new double[shelf.Packages.Nutrients];
        simplex.RowPrices(prices);
        return
        [
            .. shelf.Targets.Select(
                (target, row) =>
                    new MarginalCost
                    {
                        Nutrient = target.Nutrient,
                        PerPoundNeeded = (decimal)Math.Max(0, prices[row]),
                        PerPoundOfCap = (decimal)Math.Max(0, -prices[row]),
                    }
            ),
        ];
    }

    private static NutrientConflict ConflictOf(
        ShelfProblem shelf,
        PlotNeed need,
        Area area,
        PurchaseForm form,
        FieldConditions field,
        int searchLimit
    )
    {
        var (needs, caps) = LimitConflict.Find(shelf.Packages, form, searchLimit);
        return new NutrientConflict
        {
            Needs = [.. needs.Select(row => shelf.Targets[row].Nutrient)],
            Caps = [.. caps.Where(row => !shelf.IsSeedRow(row)).Select(row => shelf.Targets[row].Nutrient)],
            IncludesSeedRow = caps.Exists(shelf.IsSeedRow),
            Remedy = ShelfRemedy.Find(shelf, need, area, form, field.SeedRowLimit, searchLimit),
        };
    }

    private static SolvedPackages Nothing(ShelfProblem shelf) =>
        new()
        {
            Bought = new double[shelf.Offers.Length],
            Spread = new double[shelf.Offers.Length],
            Cost = 0,
            LowerBound = 0,
            IsProven = false,
        };
}
