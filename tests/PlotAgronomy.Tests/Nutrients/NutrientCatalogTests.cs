using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Nutrients;

public class NutrientCatalogTests
{
    [Fact]
    public void What_is_from_memory_stands_apart()
    {
        Assert.Equal(["soybean", "red-clover-plowdown"], LegumeCredit.Unchecked.Select(c => c.Id));
        Assert.Equal(["NC", "NE", "MT", "NI"], RecommendationSystem.All.Select(s => s.Id));
        Assert.Contains(RecommendationSystem.Unchecked, s => s.Id == "TS-2020");
        Assert.Contains(RatingSystem.Unchecked, s => s.Id == "GA");
        Assert.Contains(RemovalFigure.Unchecked, f => f.Id == "tri-state-2020-soybean");
        Assert.Contains(SecondaryRule.Unchecked, r => r.Id == "kansas-zinc-corn");
        Assert.Empty(NitrogenRule.Unchecked);
        Assert.Empty(RetainedShare.Unchecked);
        Assert.All(
            LegumeCredit.All.Select(c => c.Status)
                .Concat(RecommendationSystem.All.Select(s => s.Status))
                .Concat(RatingSystem.All.Select(s => s.Status))
                .Concat(RemovalFigure.All.Select(f => f.Status))
                .Concat(SecondaryRule.All.Select(r => r.Status)),
            s => Assert.NotEqual(DataStatus.Memory, s)
        );
    }

    [Fact]
    public void An_id_finds_its_entry_in_capitals_or_not_and_an_unknown_one_lists_all()
    {
        Assert.True(LegumeCredit.TryFind(" Tennessee-Cover ", out var credit, out string none));
        Assert.Same(LegumeCredit.Find("tennessee-cover"), credit);
        Assert.Empty(none);
        Assert.False(NitrogenRule.TryFind(null, out var rule, out string problem));
        Assert.Null(rule);
        Assert.Contains("oklahoma-corn", problem, StringComparison.Ordinal);
        Assert.Contains("soybean", Missing(() => LegumeCredit.Find("any")), StringComparison.Ordinal);
        Assert.Contains("kentucky-alfalfa-hay", Missing(() => RemovalFigure.Find("any")), StringComparison.Ordinal);
        Assert.Contains("dairy", Missing(() => RetainedShare.Find("any")), StringComparison.Ordinal);
        Assert.Contains("plot-boron", Missing(() => SecondaryRule.Find("any")), StringComparison.Ordinal);
        Assert.False(RatingSystem.TryFind("XX", out _, out string ratings));
        Assert.Contains("SALT", ratings, StringComparison.Ordinal);
        Assert.False(RecommendationSystem.TryFind("XX", out _, out string systems));
        Assert.Contains("ND-2017", systems, StringComparison.Ordinal);
    }

    [Fact]
    public void The_everyday_ones_have_a_property()
    {
        Assert.Equal(0, NitrogenRule.Find("inoculated-legume").Answer().High!.Value.PoundsPerAcre);
        Assert.Equal("north-carolina-plot", NitrogenRule.Find("north-carolina-plot").Id);
        Assert.Equal("clover-hay", RemovalFigure.Find("clover-hay").Id);
        Assert.True(RetainedShare.Find("dairy").Phosphate > RetainedShare.Find("cattle").Phosphate);
    }

    [Fact]
    public void Every_system_states_the_depths_it_was_made_for() =>
        Assert.All(RecommendationSystem.Everything, s => Assert.True(s.ShallowestSample.Inches <= s.DeepestSample.Inches, s.Id));

    private static string Missing(Func<object> find) => Assert.Throws<KeyNotFoundException>(find).Message;
}
