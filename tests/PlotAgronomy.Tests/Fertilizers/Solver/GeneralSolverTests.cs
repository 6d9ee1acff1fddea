using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>A few shelves of every awkward kind beside a general-purpose solver; <see cref="GeneralSolverComparison"/> takes thousands.</summary>
public class GeneralSolverTests
{
    private const int NodeLimit = PackageSearch.DefaultNodeLimit;

    [Theory, InlineData(PurchaseForm.BuyWholePackages), InlineData(PurchaseForm.SpreadWholePackages), InlineData(PurchaseForm.WeighExact)]
    public void The_cheapest_set_costs_the_same(PurchaseForm form)
    {
        using var general = new GeneralSolver();
        for (int seed = 0; seed < 44; seed++)
        {
            var problem = RandomShelves.Draw(seed);
            double expected = form == PurchaseForm.WeighExact ? general.Weighed(problem) : general.Cheapest(problem, form == PurchaseForm.SpreadWholePackages);
            var found = PackageSolver.Cheapest(problem, form, Ones(problem), NodeLimit, out bool decided);
            Assert.True(decided);
            AssertSame(expected, found?.Cost ?? double.PositiveInfinity, seed);
            if (found is not null)
            {
                AssertIsPlan(problem, found, seed);
            }
        }
    }

    [Theory, InlineData(false), InlineData(true)]
    public void It_costs_the_same_where_only_so_many_are_there(bool spreadWhole)
    {
        using var general = new GeneralSolver();
        for (int seed = 0; seed < 22; seed++)
        {
            var drawn = RandomShelves.Draw(seed);
            var random = new Random(seed);
            int[] most = [.. drawn.Price.Select(_ => random.Next(3) == 0 ? random.Next(3) : int.MaxValue)];
            double expected = general.Cheapest(drawn, spreadWhole, most);
            var form = spreadWhole ? PurchaseForm.SpreadWholePackages : PurchaseForm.BuyWholePackages;
            AssertSame(expected, PackageSolver.Cheapest(drawn, form, Ones(drawn), NodeLimit, out _, most)?.Cost ?? double.PositiveInfinity, seed);
            var limited = Limited(drawn, most);
            AssertSame(expected, PackageSolver.Cheapest(limited, form, Ones(drawn), NodeLimit, out _)?.Cost ?? double.PositiveInfinity, seed);
            AssertSame(general.Weighed(drawn, most), PackageSolver.Cheapest(limited, PurchaseForm.WeighExact, Ones(drawn), NodeLimit, out _)?.Cost ?? double.PositiveInfinity, seed);
        }
    }

    [Theory, InlineData(PurchaseForm.BuyWholePackages), InlineData(PurchaseForm.SpreadWholePackages)]
    public void The_smallest_miss_is_the_same(PurchaseForm form)
    {
        using var general = new GeneralSolver();
        int misses = 0;
        for (int seed = 0; seed < 44; seed++)
        {
            var problem = RandomShelves.Draw(seed);
            double[] reachable = SmallestMiss.ReachableNeeds(problem, form, NodeLimit, out bool isSmallest, out int[]? nearest);
            double found = problem.Need.Zip(reachable, (need, reached) => need > 0 ? (need - reached) / need : 0).Sum();
            Assert.True(isSmallest);
            AssertSame(general.SmallestMiss(problem, form == PurchaseForm.SpreadWholePackages), found, seed);
            Assert.Equal(form == PurchaseForm.SpreadWholePackages, nearest is not null);
            Assert.NotNull(PackageSolver.Cheapest(problem.With(need: reachable), form, Ones(problem), NodeLimit, out _));
            misses += found > 1e-6 ? 1 : 0;
        }

        Assert.InRange(misses, 8, 40);
    }

    [Theory, InlineData(PurchaseForm.BuyWholePackages), InlineData(PurchaseForm.SpreadWholePackages)]
    public void The_fewest_products_are_the_cheapest_of_the_smallest_choice(PurchaseForm form)
    {
        using var general = new GeneralSolver();
        int fewer = 0;
        for (int seed = 0; seed < 14; seed++)
        {
            var problem = RandomShelves.Draw(new Random(seed), products: 4, nutrients: 1 + (seed % 3), kind: seed);
            var (size, cost) = CheapestOfTheFewest(general, problem, form == PurchaseForm.SpreadWholePackages);
            var found = FewestProductsSearch.Find(problem, form, Ones(problem), NodeLimit);
            AssertSame(cost, found?.Cost ?? double.PositiveInfinity, seed);
            if (found is not null)
            {
                AssertIsPlan(problem, found, seed);
                Assert.Equal(size, found.Bought.Count(b => b > 0));
                fewer += size < PackageSolver.Cheapest(problem, form, Ones(problem), NodeLimit, out _)!.Bought.Count(b => b > 0) ? 1 : 0;
            }
        }

        Assert.InRange(fewer, 2, 14);
    }

    private static (int Size, double Cost) CheapestOfTheFewest(GeneralSolver general, PackageProblem problem, bool spreadWhole)
    {
        double[] costs = [.. Enumerable.Range(0, 1 << problem.Products).Select(choice =>
            general.Cheapest(problem, spreadWhole, [.. Enumerable.Range(0, problem.Products).Select(p => (choice >> p & 1) == 0 ? 0 : int.MaxValue)]))];
        return Enumerable.Range(0, costs.Length).Select(choice => (int.PopCount(choice), costs[choice])).OrderBy(c => double.IsInfinity(c.Item2)).ThenBy(c => c).First();
    }

    private static void AssertIsPlan(PackageProblem problem, SolvedPackages plan, int seed)
    {
        Assert.True(plan.IsProven && Math.Abs(plan.Cost - plan.LowerBound) < 1e-9, $"seed {seed}");
        AssertSame(plan.Cost, plan.Bought.Zip(problem.Price, (packages, price) => packages * price).Sum(), seed);
        for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
        {
            double pounds = problem.Delivered(nutrient, plan.Spread);
            Assert.True(pounds >= problem.Need[nutrient] * (1 - 1e-6) && pounds <= problem.Cap[nutrient] * (1 + 1e-6) + 1e-9, $"seed {seed}: {pounds} of {nutrient}");
        }

        Assert.All(plan.Spread.Zip(plan.Bought), p => Assert.InRange(p.First, 0, p.Second));
    }

    private static PackageProblem Limited(PackageProblem problem, int[] most)
    {
        var limited = new PackageProblem(problem.Nutrients, problem.Products) { Most = most };
        problem.Need.CopyTo(limited.Need, 0);
        problem.Cap.CopyTo(limited.Cap, 0);
        problem.Price.CopyTo(limited.Price, 0);
        for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
        {
            for (int product = 0; product < problem.Products; product++)
            {
                limited[nutrient, product] = problem[nutrient, product];
            }
        }

        return limited;
    }

    private static double[] Ones(PackageProblem problem) => [.. problem.Price.Select(_ => 1.0)];

    private static void AssertSame(double expected, double found, int seed) =>
        Assert.True(double.IsInfinity(expected) ? double.IsInfinity(found) : Math.Abs(expected - found) <= 1e-6 * Math.Max(1, expected), $"seed {seed}: {expected:R} and {found:R}");
}
