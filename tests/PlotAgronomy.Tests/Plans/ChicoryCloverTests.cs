using PlotAgronomy.Planning;

namespace PlotAgronomy.Tests.Plans;

/// <summary>Chicory, ladino and red clover in May on a loam of pH 5.8 that was limed the September before.</summary>
/// <remarks>Expected: common practice.</remarks>
public class ChicoryCloverTests
{
    private static SolvedPlan Plan => SolvedPlan.Of("p13-chicory-clover-mn");

    [Fact]
    public void It_is_sown_after_the_lime_has_had_its_time()
    {
        var plan = Plan;
        Assert.Equal(PlotDecision.Sow, plan.Verdict.Decision);
        Assert.Equal(3, plan.Sown.Count());
        var outlook = plan.Answers.Lime.Value.Outlook.Value;
        Assert.True(outlook.FullEffectOn <= plan.Plan.PlantingDate);
        Assert.True(outlook.ExpectedPhHigh >= 6.0);
        Assert.False(plan.Has("lime-too-young"));
        plan.Says("Yes. Sow Chicory, Ladino clover, Medium red clover");
    }

    [Fact]
    public void What_stands_against_nitrogen_on_so_much_clover_is_said()
    {
        var plan = Plan;
        Assert.True(plan.Has("blend-nitrogen-against-legumes"));
        plan.Says("30 to 45 days later");
    }
}
