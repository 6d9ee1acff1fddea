using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>What the README says was checked against print is what was.</summary>
public class CheckedCountTests
{
    [Fact]
    public void The_readme_counts_what_was_checked()
    {
        string readme = File.ReadAllText(Repository.PathOf("README.md"));
        int limes = LimeMethod.All.Length;
        int systems = RecommendationSystem.All.Length;
        var rates = KindCatalog.Standard.Kinds.Select(k => k.Rates).Where(r => r?.Broadcast is not null).ToList();
        int seen = rates.Count(r => DataStatuses.IsSeen(r!.BroadcastEvidence.Status));
        Assert.Contains(
            $"{limes} of {limes + LimeMethod.Unchecked.Length} lime methods, {systems} of {systems + RecommendationSystem.Unchecked.Length} recommendation systems, "
                + $"and the full broadcast rates of {seen} of {rates.Count} kinds of seed",
            readme,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void No_method_in_the_open_list_has_memory_in_its_path()
    {
        Assert.All(LimeMethod.All, m => Assert.NotEqual(DataStatus.Memory, m.Basis.Status));
        Assert.All(LimeMethod.All, m => Assert.NotEqual(DataStatus.Memory, m.Status));
        Assert.All(RecommendationSystem.All, s => Assert.NotEqual(DataStatus.Memory, s.Status));
    }
}
