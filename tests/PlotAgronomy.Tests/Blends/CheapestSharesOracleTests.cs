using Google.OrTools.LinearSolver;
using PlotAgronomy.Blends;

namespace PlotAgronomy.Tests.Blends;

/// <summary>The search against a general solver for mixed integer programs (Google OR-Tools, SCIP), on random lots.</summary>
public class CheapestSharesOracleTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    [Theory, MemberData(nameof(Seeds))]
    public void The_cheapest_shares_are_those_of_a_general_solver(int seed)
    {
        var (candidates, limits) = Problem(new Random(seed), 10);
        double? oracle = SolveByProgram(candidates, limits);
        int[]? found = CheapestShares.Find(candidates, limits, new RecipeWork(int.MaxValue)).Steps;

        Assert.Equal(oracle is null, found is null);
        if (found is not null)
        {
            AssertFeasible(candidates, limits, found);
            Assert.Equal(oracle!.Value, found.Zip(candidates, (steps, c) => steps * c.CostPerStep).Sum(), 1e-6);
        }
    }

    [Fact, Trait("Category", "Slow")]
    public void Forty_lots_for_five_seasons_are_settled_within_seconds()
    {
        var (candidates, limits) = Problem(new Random(7), 40);
        limits = limits with { Lacking = SeasonSteps.Of([5, 5, 5, 5, 5]), MinKinds = 4, MinFamilies = 3, MinTotalSteps = 20, MaxTotalSteps = 25 };
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var found = CheapestShares.Find(candidates, limits, new RecipeWork(int.MaxValue)).Steps;
        Assert.NotNull(found);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(10), clock.Elapsed.ToString());
        Assert.Equal(SolveByProgram(candidates, limits)!.Value, found.Zip(candidates, (steps, c) => steps * c.CostPerStep).Sum(), 1e-6);
    }

    private static (CheapestShares.Candidate[] Candidates, CheapestShares.Limits Limits) Problem(Random random, int lots)
    {
        var candidates = Enumerable.Range(0, lots)
            .Select(_ => new CheapestShares.Candidate(random.Next(1, 4), random.Next(4, 15), Math.Round(0.5 + random.NextDouble() * 6, 2, MidpointRounding.ToEven), random.Next(32), random.Next(4), false))
            .Select(c => c with { InCappedGroup = c.Family == 3 })
            .OrderBy(c => c.InCappedGroup).ThenBy(c => c.Family).ToArray();
        int from = random.Next(12, 22);
        return (candidates, new CheapestShares.Limits(from, from + random.Next(6), SeasonSteps.Of([.. Enumerable.Range(0, 5).Select(_ => random.Next(3) * 3)]), random.Next(6), random.Next(4), random.Next(2, 7)));
    }

    private static double? SolveByProgram(CheapestShares.Candidate[] candidates, CheapestShares.Limits limits)
    {
        using var solver = Solver.CreateSolver("SCIP");
        var steps = candidates.Select((c, i) => solver.MakeIntVar(0, c.MaxSteps, $"steps{i}")).ToArray();
        var used = candidates.Select((_, i) => solver.MakeBoolVar($"used{i}")).ToArray();
        for (int i = 0; i < candidates.Length; i++)
        {
            solver.Add(steps[i] >= candidates[i].MinSteps * used[i]);
            solver.Add(steps[i] <= candidates[i].MaxSteps * used[i]);
        }

        LinearExpr Sum(Func<CheapestShares.Candidate, bool> which) => candidates.Select((c, i) => (c, i)).Where(x => which(x.c)).Aggregate(new LinearExpr(), (sum, x) => sum + steps[x.i]);
        solver.Add(Sum(_ => true) >= limits.MinTotalSteps);
        solver.Add(Sum(_ => true) <= limits.MaxTotalSteps);
        solver.Add(Sum(c => c.InCappedGroup) <= limits.MaxCappedGroupSteps);
        for (int s = 0; s < SeasonSteps.Seasons; s++)
        {
            int season = s;
            solver.Add(Sum(c => (c.SeasonMask & (1 << season)) != 0) >= limits.Lacking[season]);
        }

        solver.Add(used.Aggregate(new LinearExpr(), (sum, u) => sum + u) >= limits.MinKinds);
        var families = Enumerable.Range(0, 4).Select(f => solver.MakeBoolVar($"family{f}")).ToArray();
        for (int f = 0; f < 4; f++)
        {
            solver.Add(used.Where((_, i) => candidates[i].Family == f).Aggregate(new LinearExpr(), (sum, u) => sum + u) >= families[f]);
        }

        solver.Add(families.Aggregate(new LinearExpr(), (sum, v) => sum + v) >= limits.MinFamilies);
        solver.Minimize(candidates.Select((c, i) => steps[i] * c.CostPerStep).Aggregate(new LinearExpr(), (sum, term) => sum + term));
        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? solver.Objective().Value() : null;
    }

    private static void AssertFeasible(CheapestShares.Candidate[] candidates, CheapestShares.Limits limits, int[] steps)
    {
        var used = candidates.Zip(steps).Where(x => x.Second > 0).ToArray();
        Assert.All(used, x => Assert.InRange(x.Second, x.First.MinSteps, x.First.MaxSteps));
        Assert.InRange(steps.Sum(), limits.MinTotalSteps, limits.MaxTotalSteps);
        Assert.True(used.Length >= limits.MinKinds);
        Assert.True(used.Select(x => x.First.Family).Distinct().Count() >= limits.MinFamilies);
        Assert.True(used.Where(x => x.First.InCappedGroup).Sum(x => x.Second) <= limits.MaxCappedGroupSteps);
        for (int s = 0; s < SeasonSteps.Seasons; s++)
        {
            Assert.True(used.Where(x => (x.First.SeasonMask & (1 << s)) != 0).Sum(x => x.Second) >= limits.Lacking[s]);
        }
    }
}
