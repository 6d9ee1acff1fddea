using System.Diagnostics;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Tests.Blends;

/// <summary>More lots than the search for a recipe gets through: it stops after so many partial recipes and says so.</summary>
public class StoppedRecipeTests
{
    private static readonly CropKind[] Sowable = [.. KindCatalog.Standard.Kinds.Where(k => k.SeedCount is not null && k.Seasons is not null && k.Rates?.Broadcast is not null)];

    [Fact]
    public void A_search_without_work_left_still_finds_a_recipe_and_says_that_a_cheaper_may_exist()
    {
        var limits = new CheapestShares.Limits(20, 25, SeasonSteps.Of([5, 5, 5, 5, 5]), 4, 3, int.MaxValue);
        CheapestShares.Candidate[] candidates = [.. Enumerable.Range(0, 30).Select(i => new CheapestShares.Candidate(2, 20, 1 + (i * 7 % 11), 1 + (i % 31), i / 8, false))];
        var proven = CheapestShares.Find(candidates, limits, new RecipeWork());
        var stopped = CheapestShares.Find(candidates, limits, new RecipeWork(50, 100_000));
        Assert.True(proven.IsProven);
        Assert.False(stopped.IsProven);
        double Cost(int[] steps) => steps.Zip(candidates, (s, c) => s * c.CostPerStep).Sum();
        Assert.InRange(Cost(stopped.Steps!), Cost(proven.Steps!), Cost(proven.Steps!) * 1.5);
        Assert.InRange(stopped.Steps!.Sum(), limits.MinTotalSteps, limits.MaxTotalSteps);
        Assert.True(stopped.Steps!.Count(s => s > 0) >= limits.MinKinds);
    }

    [Fact]
    public void What_no_lots_can_do_is_not_called_undecided()
    {
        CheapestShares.Candidate[] candidates = [new(2, 20, 1, 0, 0, false)];
        var found = CheapestShares.Find(candidates, new CheapestShares.Limits(1, 20, SeasonSteps.Of([1, 0, 0, 0, 0]), 1, 1, int.MaxValue), new RecipeWork(1));
        Assert.Equal(new FoundShares(null, true), found);
    }

    /// <summary>Every kind of the catalog in the finest steps, and ten times as many as kinds of one's own.</summary>
    [Theory, InlineData(1), InlineData(10)]
    public void Any_number_of_lots_ends_in_time(int times)
    {
        var goals = new RecipeRequest
        {
            Area = Area.FromAcres(0.5),
            Method = SowingMethod.Broadcast,
            Seasons = [.. Enum.GetValues<SeasonOfUse>()],
            MinimumKinds = 6,
            MinimumFamilies = 3,
            Step = 0.01,
        };
        Offer<SeedLot>[] lots = [.. Enumerable.Range(0, times).SelectMany(round => Sowable.Select((kind, i) => RecipeTests.Lot(kind with { Id = $"{kind.Id}-{round}" }, 0.40m + (((i * 13) + (round * 7)) % 57 * 0.11m), 70 + (((i * 7) + round) % 30), $"{kind.Id} {round}")))];
        var clock = Stopwatch.StartNew();
        long before = GC.GetAllocatedBytesForCurrentThread();
        var proposal = RecipeProposal.Find(goals, lots);
        // Two seconds for code that was optimised on a machine at rest; what bounds the search is counted.
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(40), clock.Elapsed.ToString());
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 500_000_000);
        Assert.True(proposal.Recipe is not null || proposal.IsUndecided);
        Assert.Equal(proposal.Recipe is { IsProvenCheapest: false }, proposal.Findings.Any(f => f.Code == BlendCodes.RecipeSearchStopped));
        Assert.Equal(proposal.IsUndecided, proposal.Findings.Any(f => f.Code == BlendCodes.RecipeUndecided));
    }
}
