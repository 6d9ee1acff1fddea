using System.Diagnostics;
using System.Globalization;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Tests.Fertilizers.Solver;

namespace PlotAgronomy.Benchmarks;

/// <summary>The search for the cheapest whole packages on many shelves of a size: how long it takes, and how far from proven it
/// ends where it is stopped.</summary>
internal static class SolverTimes
{
    private const int Shelves = 400;

    internal static void Print()
    {
        foreach (var (products, nutrients) in new[] { (4, 3), (8, 3), (12, 3), (12, 8), (20, 8), (40, 8) })
        {
            foreach (bool spreadWhole in new[] { false, true })
            {
                Print(products, nutrients, spreadWhole);
            }
        }
    }

    private static void Print(int products, int nutrients, bool spreadWhole)
    {
        List<double> times = [], gaps = [];
        for (int seed = 0; times.Count < Shelves; seed++)
        {
            var problem = RandomShelves.Draw(new Random(seed), products, nutrients, kind: seed);
            var answer = Solve(problem, spreadWhole);
            if (answer.Packages is null && answer.IsProven)
            {
                continue;
            }

            times.Add(Milliseconds(problem, spreadWhole));
            if (!answer.IsProven)
            {
                gaps.Add(answer.Packages is null ? 1 : (answer.Cost - answer.LowerBound) / answer.Cost);
            }
        }

        times.Sort();
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{products,3} x {nutrients}, {(spreadWhole ? "emptied" : "in part"),-8} median {times[Shelves / 2],7:0.000} ms, 99 % {times[(int)(0.99 * Shelves)],8:0.00} ms, worst {times[^1],8:0.00} ms, stopped {gaps.Count}, greatest gap {gaps.DefaultIfEmpty().Max():0.0 %}"
            )
        );
    }

    /// <summary>The best of three: what a busy machine takes away is not the solver's time.</summary>
    private static double Milliseconds(PackageProblem problem, bool spreadWhole)
    {
        double best = double.PositiveInfinity;
        for (int round = 0; round < 3; round++)
        {
            long start = Stopwatch.GetTimestamp();
            Solve(problem, spreadWhole);
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        return best;
    }

    private static PackageAnswer Solve(PackageProblem problem, bool spreadWhole) =>
        PackageSearch.Cheapest(PackageReduction.Of(problem, spreadWhole).Problem, spreadWhole);
}
