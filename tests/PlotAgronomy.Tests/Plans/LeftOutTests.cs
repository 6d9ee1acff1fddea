using PlotAgronomy.Planning;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Plans;

/// <summary>What is not done says so where the owner looks for it.</summary>
/// <remarks>Expected: practice; figures by hand.</remarks>
public class LeftOutTests
{
    /// <summary>9.8 to 13 lb/ac after emergence and as much in December, less the 15 that come along with the phosphate: 5 to 11 are left, below the 10 that are bought.</summary>
    [Fact]
    public void Nitrogen_that_is_too_little_to_buy_is_named_where_it_is_not_bought()
    {
        var plan = SolvedPlan.Of("p09-grains-clover-sc");
        Assert.Equal(AnswerState.NoneNeeded, plan.Answers.Fertilizer.Value.LaterNitrogen.Value.Purchase.State);
        Assert.Contains("Not bought: nitrogen for the stand, 5 to 11 lb/ac in December; too little for a bag of its own.", plan.Section("buy"), StringComparison.Ordinal);
    }

    /// <summary>Where nitrogen for the stand is bought nothing is said to be left out.</summary>
    [Fact]
    public void Nitrogen_that_is_bought_is_not_said_to_be_left_out() =>
        Assert.DoesNotContain("Not bought: nitrogen", SolvedPlan.Of("p13-chicory-clover-mn").Section("buy"), StringComparison.Ordinal);
}
