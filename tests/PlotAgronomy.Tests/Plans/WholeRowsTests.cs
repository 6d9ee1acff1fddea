using PlotAgronomy.Planning;

namespace PlotAgronomy.Tests.Plans;

/// <summary>What else a sheet must and must not say of these plots.</summary>
/// <remarks>Expected: practice.</remarks>
public class WholeRowsTests
{
    /// <summary>Grain at the measured gate would be a crawl: two halves crosswise, each at half the rate, with gate, pace and a test run that fit.</summary>
    [Fact]
    public void Grain_is_walked_in_two_halves_crosswise_with_its_gate_and_pace()
    {
        var plan = SolvedPlan.Of("p09-grains-clover-sc");
        var grain = plan.Answers.Field.Walks.Single(w => w.Pass.IsCrosswise);
        Assert.Equal(grain.Pass.Load.Pounds / 2, grain.HalfWay!.Left.Pounds, 1e-9);
        string spread = plan.Section("spread");
        Assert.Contains("Each way: walk the plot twice, the second time across the first, each time at half the rate", spread, StringComparison.Ordinal);
        Assert.Contains("6, 23 s 2.74 lb each way", spread, StringComparison.Ordinal);
    }

    /// <summary>Both parts of nine tons are worked in before anything is sown; none goes on a standing clover.</summary>
    [Fact]
    public void No_second_dressing_lies_on_a_standing_perennial()
    {
        var plan = SolvedPlan.Of("p03-clay-smp59-oh");
        Assert.All(plan.Answers.Lime.Value.Order.Value.Dressings, d => Assert.Equal(0, d.MonthsAfterFirst));
        Assert.DoesNotContain(plan.Answers.Field.Steps.Where(s => s.IsAfterSowing), s => s.Work.Task.Title.Contains("Spread", StringComparison.Ordinal));
    }

    /// <summary>Limed in September for a sowing in May: day and forecast stand.</summary>
    [Fact]
    public void Lime_has_its_day_and_its_forecast()
    {
        var plan = SolvedPlan.Of("p13-chicory-clover-mn");
        Assert.Contains("Sep 20, 2025: Spread the lime and work it in.", plan.Work, StringComparison.Ordinal);
        Assert.Equal(AnswerState.Given, plan.Answers.Lime.Value.Outlook.State);
        Assert.Contains("pH to expect on planting day", plan.Section("lime"), StringComparison.Ordinal);
    }
}
