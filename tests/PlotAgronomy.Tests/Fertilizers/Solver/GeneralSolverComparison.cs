using System.Diagnostics;
using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>The room's solver beside a general-purpose mixed-integer solver.</summary>
public class GeneralSolverComparison(ITestOutputHelper output)
{
    private const int Shelves = 5200;

    [Fact]
    [Trait("Category", "Slow")]
    public void The_cost_is_the_same_on_random_shelves()
    {
        using var general = new GeneralSolver();
        var wrong = new List<string>();
        int without = 0;
        for (int seed = 0; seed < Shelves; seed++)
        {
            // Every kind of awkward shelf comes in both forms.
            bool spreadWhole = (seed / 40) % 2 == 0;
            var problem = RandomShelves.Draw(seed);
            double expected = general.Cheapest(problem, spreadWhole);
            without += double.IsInfinity(expected) ? 1 : 0;
            Compare(problem, spreadWhole, expected, $"seed {seed}", wrong);
        }

        Assert.Empty(wrong);
        Assert.InRange(without, Shelves / 50, Shelves / 2);
        output.WriteLine($"{Shelves} shelves, {without} without a plan");
    }

    [Theory, InlineData(false), InlineData(true)]
    [Trait("Category", "Slow")]
    public void The_cost_is_the_same_for_forty_products(bool spreadWhole)
    {
        using var general = new GeneralSolver();
        var wrong = new List<string>();
        for (int seed = 0; seed < 12; seed++)
        {
            var problem = RandomShelves.Draw(new Random(seed), products: 40, nutrients: 8, kind: seed);
            Compare(problem, spreadWhole, general.Cheapest(problem, spreadWhole), $"seed {seed}", wrong);
        }

        Assert.Empty(wrong);
    }

    [Theory, InlineData(PurchaseForm.BuyWholePackages), InlineData(PurchaseForm.SpreadWholePackages)]
    [Trait("Category", "Slow")]
    public void The_smallest_miss_is_the_same_where_nothing_fits(PurchaseForm form)
    {
        using var general = new GeneralSolver();
        var wrong = new List<string>();
        int compared = 0;
        for (int seed = 0; compared < 300; seed++)
        {
            var problem = RandomShelves.Draw(seed);
            if (LimitConflict.Fits(problem, form, PackageSearch.DefaultNodeLimit, new SearchWork()) != false)
            {
                continue;
            }

            compared++;
            double[] reachable = SmallestMiss.ReachableNeeds(problem, form, PackageSearch.DefaultNodeLimit, out bool isSmallest, out _);
            double found = problem.Need.Zip(reachable, (need, reached) => need > 0 ? (need - reached) / need : 0).Sum();
            double expected = general.SmallestMiss(problem, form == PurchaseForm.SpreadWholePackages);
            if (Math.Abs(found - expected) > 1e-6 || !isSmallest || PackageSolver.Cheapest(problem.With(need: reachable), form, new double[problem.Products], PackageSearch.DefaultNodeLimit, out _) is null)
            {
                wrong.Add($"seed {seed}: expected {expected:R}, got {found:R}");
            }
        }

        Assert.Empty(wrong);
    }

    /// <summary>Shelves that hold a plan, half spread whole, half in part. The times are written out for the record.</summary>
    [Theory]
    [InlineData(4, 3), InlineData(8, 3), InlineData(12, 3), InlineData(12, 8), InlineData(20, 8), InlineData(40, 8)]
    [Trait("Category", "Slow")]
    public void It_is_fast_enough(int products, int nutrients)
    {
        using var general = new GeneralSolver();
        List<double> ours = [], theirs = [];
        for (int seed = 0; ours.Count < 600; seed++)
        {
            // Every kind of awkward shelf comes in both forms.
            bool spreadWhole = (seed / 2) % 2 == 0;
            var problem = RandomShelves.Draw(new Random(seed), products, nutrients, kind: seed);
            if (Solve(problem, spreadWhole).Packages is null)
            {
                continue;
            }

            ours.Add(Milliseconds(() => Solve(problem, spreadWhole)));
            if (theirs.Count < 40)
            {
                theirs.Add(Milliseconds(() => general.Cheapest(problem, spreadWhole)));
            }
        }

        ours.Sort();
        theirs.Sort();
        double median = ours[ours.Count / 2], percentile99 = ours[(int)(0.99 * ours.Count)];
        output.WriteLine($"{products} products x {nutrients} nutrients: median {median:0.000} ms, 99th percentile {percentile99:0.00} ms, worst {ours[^1]:0.00} ms, general solver median {theirs[theirs.Count / 2]:0.00} ms, ratio {theirs[theirs.Count / 2] / median:0}");
        if (products <= 12)
        {
            Assert.True(median < 1, $"median {median} ms");
            Assert.True(percentile99 < 20, $"99th percentile {percentile99} ms");
        }
    }

    private static void Compare(PackageProblem problem, bool spreadWhole, double expected, string name, List<string> wrong)
    {
        var answer = Solve(problem, spreadWhole);
        bool same = double.IsInfinity(expected) ? double.IsInfinity(answer.Cost) : Math.Abs(answer.Cost - expected) <= 1e-6 * Math.Max(1, expected);
        if (!same || !answer.IsProven)
        {
            wrong.Add($"{name}: expected {expected:R}, got {answer.Cost:R} after {answer.Nodes} nodes");
        }
    }

    private static PackageAnswer Solve(PackageProblem problem, bool spreadWhole)
    {
        var reduced = PackageReduction.Of(problem, spreadWhole);
        return PackageSearch.Cheapest(reduced.Problem, spreadWhole);
    }

    private static double Milliseconds(Action action)
    {
        // The best of three: what a busy machine takes away is not the solver's time.
        double best = double.PositiveInfinity;
        for (int round = 0; round < 3; round++)
        {
            long start = Stopwatch.GetTimestamp();
            action();
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        return best;
    }
}
