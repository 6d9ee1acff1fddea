using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>What is said when a search may not go on, or cannot begin.</summary>
public class SearchLimitTests
{
    [Fact]
    public void The_smallest_miss_is_no_worse_than_package_after_package()
    {
        int stopped = 0;
        for (int seed = 0; seed < 200; seed++)
        {
            var problem = RandomShelves.Draw(new Random(seed), products: 5, nutrients: 1 + (seed % 4), kind: seed);
            SmallestMiss.ReachableNeeds(problem, PurchaseForm.SpreadWholePackages, nodeLimit: 1, out bool isSmallest, out int[]? nearest);
            double found = Missing(problem, nearest!), greedy = Missing(problem, OneAfterTheOther(problem));
            Assert.True(found <= greedy + 1e-9, $"seed {seed}: {found} and {greedy}");
            stopped += isSmallest ? 0 : 1;
        }

        Assert.InRange(stopped, 10, 200);
    }

    /// <summary>The search is not let go farther than its root, whose rounding is worse than the set that was known before.</summary>
    [Theory, InlineData(PurchaseForm.BuyWholePackages), InlineData(PurchaseForm.SpreadWholePackages)]
    public void A_set_that_is_known_is_only_replaced_by_a_better_one(PurchaseForm form)
    {
        int better = 0;
        for (int seed = 0; seed < 200; seed++)
        {
            var problem = RandomShelves.Draw(new Random(seed), products: 5, nutrients: 1 + (seed % 4), kind: seed);
            if (Solve(problem, form, PackageSearch.DefaultNodeLimit, [])?.Bought is not { } bought)
            {
                continue;
            }

            // Every dearer twin of a product stands in its place, so that what is known is also what another replaces.
            var twins = Twins(problem);
            int[] known = [.. bought.Select(_ => 0), .. bought.Select(b => (int)b)];
            double cost = known.Zip(twins.Price, (packages, price) => packages * price).Sum();
            var found = Solve(twins, form, nodeLimit: 1, known);
            Assert.True(found!.Cost <= cost + 1e-9, $"seed {seed}: {found.Cost} and {cost}");
            Assert.Equal(found.Cost, found.Bought.Zip(twins.Price, (packages, price) => packages * price).Sum(), 1e-6);
            better += (Solve(twins, form, nodeLimit: 1, [])?.Cost ?? double.PositiveInfinity) > found.Cost + 1e-9 ? 1 : 0;
        }

        Assert.InRange(better, 5, 200);
    }

    [Fact]
    public void A_set_that_is_no_plan_is_not_taken()
    {
        var problem = OneProduct(need: 100, pounds: 25);
        Assert.Equal(40, Solve(problem, PurchaseForm.SpreadWholePackages, PackageSearch.DefaultNodeLimit, [1])!.Cost);
        Assert.Equal(40, Solve(problem, PurchaseForm.SpreadWholePackages, PackageSearch.DefaultNodeLimit, [9])!.Cost);
    }

    [Fact]
    public void Packages_beyond_counting_decide_nothing()
    {
        Assert.False(OneProduct(need: 1e9, pounds: 1).IsBeyondCounting);
        var problem = OneProduct(need: 1.001e9, pounds: 1);
        Assert.True(problem.IsBeyondCounting);
        Assert.Null(PackageSolver.Cheapest(problem, PurchaseForm.BuyWholePackages, [1], 100, out bool decided));
        Assert.False(decided);
        double[] reachable = SmallestMiss.ReachableNeeds(problem, PurchaseForm.SpreadWholePackages, 100, out bool isSmallest, out int[]? nearest);
        Assert.False(isSmallest);
        Assert.Equal([0], reachable);
        Assert.Equal([0], nearest!);
    }

    [Fact]
    public void Stopped_without_a_set_is_undecided_and_no_set_at_all_is_decided()
    {
        int undecided = 0, none = 0;
        for (int seed = 0; seed < 400; seed++)
        {
            var problem = RandomShelves.Draw(seed);
            double[] load = new double[problem.Products];
            var full = PackageSolver.Cheapest(problem, PurchaseForm.SpreadWholePackages, load, PackageSearch.DefaultNodeLimit, out bool decided);
            var cut = PackageSolver.Cheapest(problem, PurchaseForm.SpreadWholePackages, load, 1, out bool cutDecided);
            Assert.True(decided);
            Assert.True(cut is not null ? cutDecided : full is null || !cutDecided, $"seed {seed}");
            undecided += cutDecided ? 0 : 1;
            none += full is null ? 1 : 0;
        }

        Assert.True(undecided > 5 && none > 20, $"{undecided} and {none}");
    }

    [Theory]
    [InlineData(9, false), InlineData(10, true), InlineData(11, true)]
    public void Work_is_spent_when_all_of_it_is_done(long done, bool isSpent)
    {
        var work = new SearchWork(10);
        work.Add(done);
        Assert.Equal(isSpent, work.IsSpent);
    }

    [Theory]
    [InlineData(10_000, 9_999.995, true), InlineData(10_000, 9_999.9, false), InlineData(0.5, 0.4999995, true), InlineData(0.5, 0.49, false)]
    public void A_set_is_proven_where_nothing_lies_below_but_dust(double cost, double bound, bool isProven)
    {
        var solved = new SolvedPackages { Bought = [1], Spread = [1], Cost = cost, LowerBound = cost, IsProven = true }.BoundedBy(bound);
        Assert.Equal(isProven, solved.IsProven);
        Assert.Equal(bound, solved.LowerBound);
    }

    [Fact]
    public void A_load_is_its_nutrients_and_a_little_for_the_product() => Assert.Equal(5.05, PackageSolver.Load(5, 50), 12);

    private static SolvedPackages? Solve(PackageProblem problem, PurchaseForm form, int nodeLimit, int[] start) =>
        PackageSolver.Cheapest(problem, form, new double[problem.Products], nodeLimit, out _, default, null, start);

    private static PackageProblem OneProduct(double need, double pounds)
    {
        var problem = new PackageProblem(1, 1);
        (problem.Need[0], problem[0, 0], problem.Price[0]) = (need, pounds, 10);
        return problem;
    }

    private static PackageProblem Twins(PackageProblem problem)
    {
        var twins = new PackageProblem(problem.Nutrients, 2 * problem.Products);
        problem.Need.CopyTo(twins.Need, 0);
        problem.Cap.CopyTo(twins.Cap, 0);
        for (int product = 0; product < twins.Products; product++)
        {
            int of = product % problem.Products;
            twins.Price[product] = problem.Price[of] + (product < problem.Products ? 0 : 0.01);
            for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
            {
                twins[nutrient, product] = problem[nutrient, of];
            }
        }

        return twins;
    }

    /// <summary>The rule by hand: the package that takes away most of what is missing, as long as one does and no cap is passed.</summary>
    private static int[] OneAfterTheOther(PackageProblem problem)
    {
        int[] packages = new int[problem.Products];
        while (true)
        {
            double now = Missing(problem, packages);
            var next = Enumerable.Range(0, problem.Products)
                .Select(product => packages.Select((count, place) => place == product ? count + 1 : count).ToArray())
                .Where(more => Enumerable.Range(0, problem.Nutrients).All(n => Pounds(problem, n, more) <= Math.Max(problem.Cap[n], Pounds(problem, n, packages))))
                .MinBy(more => Missing(problem, more));
            if (next is null || Missing(problem, next) >= now - 1e-9)
            {
                return packages;
            }

            packages = next;
        }
    }

    private static double Missing(PackageProblem problem, int[] packages) =>
        Enumerable.Range(0, problem.Nutrients).Sum(n => problem.Need[n] > 0 ? Math.Max(0, problem.Need[n] - Pounds(problem, n, packages)) / problem.Need[n] : 0);

    private static double Pounds(PackageProblem problem, int nutrient, int[] packages) => packages.Select((count, product) => count * problem[nutrient, product]).Sum();
}
