using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>What is left out, by the definition: a product that serves no need, or in whose place some part of one package of another does
/// as much at every need, no more at every cap, for no more money.</summary>
public class DominanceTests
{
    [Theory, InlineData(false), InlineData(true)]
    public void What_is_left_out_is_what_the_definition_leaves_out(bool spreadWhole)
    {
        int left = 0, limits = 0;
        for (int seed = 0; seed < 400; seed++)
        {
            var problem = RandomShelves.Draw(seed);
            var random = new Random(seed);
            int[] most = seed % 2 == 0 ? [] : [.. problem.Price.Select(_ => random.Next(3) == 0 ? random.Next(5) : int.MaxValue)];
            bool[] marks = Dominance.Dominated(problem, spreadWhole, most);
            for (int product = 0; product < problem.Products; product++)
            {
                Assert.True(marks[product] == IsLeftOut(problem, product, most, spreadWhole), $"seed {seed}, product {product}");
                left += marks[product] ? 1 : 0;
                limits += most.Length > 0 && most[product] != int.MaxValue && marks[product] ? 1 : 0;
            }
        }

        Assert.True(left > 200 && limits > 10, $"{left} and {limits}");
    }

    [Theory, InlineData(1), InlineData(2), InlineData(3)]
    public void Of_those_alike_so_many_stay(int copies)
    {
        for (int seed = 0; seed < 40; seed++)
        {
            var drawn = RandomShelves.Draw(new Random(seed), products: 12, nutrients: 2, kind: 5);
            var random = new Random(seed);
            int[] most = [.. drawn.Price.Select(_ => random.Next(4) == 0 ? 1 : int.MaxValue)];
            var problem = new PackageProblem(2, 12) { Most = seed % 2 == 0 ? null : most };
            for (int product = 0; product < 12; product++)
            {
                (problem.Price[product], problem[0, product], problem[1, product]) = (drawn.Price[product], drawn[0, product], drawn[1, product]);
            }

            int[] kept = Dominance.OfEach(problem, copies);
            int[] expected = [.. Enumerable.Range(0, 12)
                .GroupBy(p => problem.Most is not null && most[p] != int.MaxValue ? (p, 0, 0) : (-1, Alike(problem, p), 1))
                .SelectMany(alike => alike.Take(copies))
                .Order()];
            Assert.Equal(expected, kept);
        }
    }

    [Fact]
    public void Where_packages_cannot_be_counted_only_what_is_alike_goes()
    {
        var problem = new PackageProblem(1, 3);
        problem.Need[0] = 1e12;
        (problem[0, 0], problem[0, 1], problem[0, 2]) = (1, 1, 2);
        (problem.Price[0], problem.Price[1], problem.Price[2]) = (10, 10, 5);
        Assert.Equal([false, true, false], Dominance.Dominated(problem, spreadWhole: false));
    }

    /// <summary>The first product with the same price and content.</summary>
    private static int Alike(PackageProblem problem, int product) =>
        Enumerable.Range(0, problem.Products).First(other =>
            problem.Price[other] == problem.Price[product] && problem[0, other] == problem[0, product] && problem[1, other] == problem[1, product]);

    private static bool IsLeftOut(PackageProblem problem, int product, int[] most, bool spreadWhole)
    {
        bool serves = Enumerable.Range(0, problem.Nutrients).Any(n => problem.Need[n] > 0 && problem[n, product] > 0);
        return !serves || Enumerable.Range(0, problem.Products).Any(other =>
            other != product
            && IsUnlimited(other)
            && Replaces(problem, other, product, spreadWhole)
            && (other < product || !IsUnlimited(product) || !Replaces(problem, product, other, spreadWhole)));

        bool IsUnlimited(int place) => most.Length == 0 || most[place] == int.MaxValue;
    }

    /// <summary>Tries all of a package, and the parts at which it does just as much of some nutrient: if any part will do, one of these does.</summary>
    private static bool Replaces(PackageProblem problem, int other, int product, bool spreadWhole)
    {
        var nutrients = Enumerable.Range(0, problem.Nutrients);
        double[] parts = spreadWhole ? [1] : [1, 0, .. nutrients.Where(n => problem[n, other] > 0).Select(n => problem[n, product] / problem[n, other])];
        return problem.Price[other] <= problem.Price[product] && parts.Any(part => part <= 1 && nutrients.All(n =>
            (problem.Need[n] <= 0 || part * problem[n, other] >= problem[n, product] * (1 - 1e-12))
            && (double.IsInfinity(problem.Cap[n]) || part * problem[n, other] <= problem[n, product] * (1 + 1e-12))));
    }
}
