using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Plans;

/// <summary>After the seed no ground is worked: lime lies on top until the next tillage, and is counted so.</summary>
/// <remarks>Expected: practice; the depths and the cap on the surface are rows with their sources.</remarks>
public class LimeAfterSeedTests
{
    private static SolvedPlan Limed(string day) => SolvedPlan.Of("p09-grains-clover-sc", json => EditedPlan.Set(json, "limeDate", day));

    [Fact]
    public void Lime_after_the_seed_is_not_worked_in()
    {
        var late = Limed("2026-11-15");
        Assert.Equal(LimePlacement.Surface, LimePlacing.Of(late.Plan));
        string step = late.Answers.Field.Steps.Select(s => s.Work).Single(w => w.Task.Id == "lime-after-seed").ToString()!;
        Assert.NotEmpty(step);
        Assert.Contains("on top: it comes after the seed", late.Work, StringComparison.Ordinal);
        Assert.DoesNotContain("6 in deep. Wear goggles and a dust mask", late.Work, StringComparison.Ordinal);
    }

    /// <summary>On the surface the top 4 in count: 4 of 6.7 in of the rate, or of the 6 in that are worked.</summary>
    [Fact]
    public void Less_of_it_goes_on_for_less_soil()
    {
        double early = Limed("2026-06-01").Answers.Lime.Value.Order.Value.Product.Pounds, late = Limed("2026-11-15").Answers.Lime.Value.Order.Value.Product.Pounds;
        Assert.Equal(4 / 6.0, late / early, 0.01);
    }

    /// <summary>The ground is worked, only not after the seed: the plan is not told that its way of planting works none.</summary>
    [Fact]
    public void The_way_of_planting_is_not_blamed() => Assert.False(Limed("2026-11-15").Has("plan-tillage-unused"));

    [Fact]
    public void Lime_before_the_seed_is_worked_in_as_before() =>
        Assert.Contains("6 in deep. Wear goggles and a dust mask", Limed("2026-06-01").Work, StringComparison.Ordinal);
}
