using System.Diagnostics;
using PlotAgronomy.Fertilizers.Solver;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

public class SolverComparison
{
    [Theory, InlineData(false), InlineData(true)]
    [Trait("Category", "Slow")]
    public void Agrees_with_a_general_solver(bool spreadWhole)
    {
        using var general = new GeneralSolver();
        var wrong = new List<string>();
        long theirs = 0, ours = 0;
        int infeasible = 0;
        for (int seed = 0; seed < 2600; seed++)
        {
            var problem = RandomShelves.Draw(seed);
            long t0 = Stopwatch.GetTimestamp();
            double expected = general.Cheapest(problem, spreadWhole);
            long t1 = Stopwatch.GetTimestamp();
            var reduced = PackageReduction.Of(problem, spreadWhole);
            var answer = PackageSearch.Cheapest(reduced.Problem, spreadWhole);
            ours += Stopwatch.GetTimestamp() - t1;
            theirs += t1 - t0;
            infeasible += double.IsInfinity(expected) ? 1 : 0;
            if (!answer.IsProven || !(Math.Abs(answer.Cost - expected) <= 1e-6 * Math.Max(1, expected) || (double.IsInfinity(answer.Cost) && double.IsInfinity(expected))))
            {
                wrong.Add($"seed {seed}: {expected} {answer.Cost} {answer.Nodes}");
            }
        }

        Assert.True(wrong.Count == 0, $"{infeasible} infeasible; {theirs / (double)Stopwatch.Frequency} {ours / (double)Stopwatch.Frequency}\n" + string.Join("\n", wrong));
        Assert.Fail($"{infeasible} infeasible; {theirs / (double)Stopwatch.Frequency} {ours / (double)Stopwatch.Frequency}\n");
    }
}
