using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

public class PackageSearchTests
{
    [Theory, InlineData(false), InlineData(true)]
    public void Agrees_with_trying_every_count_on_small_shelves(bool spreadWhole)
    {
        for (int seed = 0; seed < 120; seed++)
        {
            var problem = RandomShelves.Draw(new Random(seed), products: 3, nutrients: 1 + (seed % 3), kind: seed);
            double expected = TryEveryCount(problem, spreadWhole);
            double found = PackageSearch.Cheapest(problem, spreadWhole).Cost;
            Assert.True(Math.Abs(expected - found) <= 1e-6 || (double.IsInfinity(expected) && double.IsInfinity(found)), $"seed {seed}: {expected} and {found}");
        }
    }

    [Fact]
    public void At_the_node_limit_it_answers_with_the_best_set_and_its_proven_gap()
    {
        int stopped = 0;
        for (int seed = 0; seed < 60; seed++)
        {
            var problem = RandomShelves.Draw(new Random(seed), products: 12, nutrients: 8, kind: 1 + (6 * seed));
            var full = PackageSearch.Cheapest(problem, spreadWhole: false);
            var cut = PackageSearch.Cheapest(problem, spreadWhole: false, default, nodeLimit: 3);
            if (full.Packages is null)
            {
                continue;
            }

            Assert.True(full.IsProven);
            Assert.True(cut.Nodes <= 3 && cut.LowerBound <= full.Cost + 1e-9 && full.Cost <= cut.Cost + 1e-9, $"seed {seed}");
            stopped += cut.IsProven ? 0 : 1;
        }

        Assert.True(stopped > 5);
    }

    /// <summary>The promise is 20 ms at the 99th percentile for 12 products and 8 nutrients. A linear program of this size takes
    /// microseconds: 1,000 of them leave each 20. Counting them instead of the time fails alike on every machine.</summary>
    [Fact]
    public void The_search_solves_few_linear_programs()
    {
        List<int> nodes = [];
        for (int seed = 0; seed < 600; seed++)
        {
            bool spreadWhole = (seed / 2) % 2 == 0;
            var reduced = PackageReduction.Of(RandomShelves.Draw(new Random(seed), products: 12, nutrients: 8, kind: seed), spreadWhole);
            nodes.Add(PackageSearch.Cheapest(reduced.Problem, spreadWhole).Nodes);
        }

        nodes.Sort();
        Assert.InRange(nodes[nodes.Count / 2], 1, 50);
        Assert.InRange(nodes[(int)(0.99 * nodes.Count)], 1, 1000);
        Assert.InRange(nodes.Sum(), 1, 6700); // 6394 when written
    }

    [Fact]
    public void Leaving_out_dominated_products_never_changes_the_cost()
    {
        int left = 0;
        for (int seed = 0; seed < 400; seed++)
        {
            bool spreadWhole = seed % 2 == 0;
            var problem = RandomShelves.Draw(seed);
            var reduced = PackageReduction.Of(problem, spreadWhole);
            left += problem.Products - reduced.Problem.Products;
            double all = PackageSearch.Cheapest(problem, spreadWhole).Cost, kept = PackageSearch.Cheapest(reduced.Problem, spreadWhole).Cost;
            Assert.True(Math.Abs(all - kept) <= 1e-6 || (double.IsInfinity(all) && double.IsInfinity(kept)), $"seed {seed}: {all} and {kept}");
        }

        Assert.True(left > 100);
    }

    [Fact]
    public void A_limit_on_packages_is_kept()
    {
        var problem = new PackageProblem(1, 2);
        (problem.Need[0], problem[0, 0], problem[0, 1]) = (100, 25, 20);
        (problem.Price[0], problem.Price[1]) = (10, 12);
        Assert.Equal(40, PackageSearch.Cheapest(problem, spreadWhole: true).Cost, 9);
        Assert.Equal([2, 3], PackageSearch.Cheapest(problem, spreadWhole: true, [2, 9]).Packages!);
    }

    [Theory]
    [InlineData(new double[] { 24, 36, 26 }, 2)]
    [InlineData(new double[] { 23.99, 19.99 }, 0.01)]
    [InlineData(new double[] { 0, 15 }, 15)]
    [InlineData(new double[] { 0, 0 }, 0)]
    [InlineData(new double[] { 1.00001 }, 0)]
    [InlineData(new double[] { 1e9 }, 1e9)]
    [InlineData(new double[] { 1.000_001e9 }, 0)]
    public void Price_step_is_the_common_divisor(double[] prices, double step) => Assert.Equal(step, PriceStep.Of(prices), 9);

    private static double TryEveryCount(PackageProblem problem, bool spreadWhole)
    {
        double best = double.PositiveInfinity;
        int[] most = [.. Enumerable.Range(0, 3).Select(problem.MostUseful)];
        for (int a = 0; a <= most[0]; a++)
        {
            for (int b = 0; b <= most[1]; b++)
            {
                for (int c = 0; c <= most[2]; c++)
                {
                    double cost = (a * problem.Price[0]) + (b * problem.Price[1]) + (c * problem.Price[2]);
                    if (cost < best - 1e-9 && Fits(problem, [a, b, c], spreadWhole))
                    {
                        best = cost;
                    }
                }
            }
        }

        return best;
    }

    private static bool Fits(PackageProblem problem, double[] packages, bool spreadWhole)
    {
        if (spreadWhole)
        {
            return Enumerable.Range(0, problem.Nutrients).All(n => problem.Delivered(n, packages) is var d && d >= problem.Need[n] - 1e-7 && d <= problem.Cap[n] + 1e-7);
        }

        var program = problem.AsLinearProgram();
        packages.CopyTo(program.ColumnHigh, 0);
        return new DualSimplex(program).Solve() == SimplexOutcome.Optimal;
    }
}
