using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Plans;

/// <summary>Grain and crimson clover on a coastal-plain loamy sand of pH 4.8, limed five weeks before sowing.</summary>
/// <remarks>Expected: common practice, and for the lime North Carolina's own equation (LIME-S7).</remarks>
public class SourSandTests
{
    private static SolvedPlan Plan => SolvedPlan.Of("p01-sand-nc");

    [Fact]
    public void It_is_limed_now_and_every_kind_waits_for_a_test_with_its_number()
    {
        var plan = Plan;
        Assert.Equal(PlotDecision.LimeAndWait, plan.Verdict.Decision);
        Assert.All(plan.Verdict.Kinds, v => Assert.Equal(KindDecision.AfterTest, v.Decision));
        Assert.All(plan.Verdict.Kinds, v => Assert.Equal(v.Planned.Kind.Ph!.MinimumPh, v.TestMustShow));
        plan.Says("Not yet. Lime, wait and test", "Crimson clover (pH 5.5 or more)");
        Assert.StartsWith("May it be sown?", plan.Section("verdict"), StringComparison.Ordinal);
        Assert.Equal("verdict", plan.Sheet.Sections[0].Id);
    }

    [Fact]
    public void A_tolerant_grain_is_named_with_the_test_that_lets_it_in()
    {
        var plan = Plan;
        var grain = Assert.Single(plan.Verdict.Substitutes, s => s.Kind.Group == FunctionalGroup.Cereal);
        Assert.True(grain.LowestPh < plan.Verdict.Kinds.Min(v => v.TestMustShow));
        Assert.InRange(grain.TestMustShow!.Value, 4.8, plan.Verdict.Expected!.ExpectedPhHigh);
        plan.Says($"{grain.Kind.ShortName} in place of");
    }

    /// <summary>By hand (LIME-S7): 1.1 ton, 5 of 6 2/3 in, 2,080 lb of this lime to the ton: 1.1 x 0.75 x 2,080 = 1,716 lb/ac.</summary>
    [Fact]
    public void The_states_own_lime_is_counted_in_the_labels_pounds_and_forecast_by_the_same_need()
    {
        var lime = Plan.Answers.Lime.Value;
        Assert.Equal(1716, lime.Order.Value.ProductRate.PoundsPerAcre, 1e-6);
        Assert.Equal(lime.Need!.OfBasis, lime.Outlook.Value.Request.Rate.OfBasis);
        Assert.Equal(Fraction.One, lime.Outlook.Value.Request.ShareDelivered);
    }

    [Fact]
    public void Only_lime_is_bought_and_nothing_is_weighed_out_or_walked()
    {
        var plan = Plan;
        Assert.Equal(["buy.lime"], plan.Bought);
        Assert.Equal(plan.Answers.Lime.Value.Order.Value.Cost, plan.Answers.TotalCost);
        Assert.Equal(AnswerState.NoneNeeded, plan.Answers.Seed.State);
        Assert.Equal(AnswerState.NoneNeeded, plan.Answers.Spreading.State);
        Assert.DoesNotContain(plan.Sheet.Sections, s => s.Id == "passes");
        plan.Says("Not bought now: Crimson clover, lot CC. Buy it when a test shows pH 5.5 or more", "nothing is bought; the need is told for the day it is");
    }

    /// <summary>Common practice: a soil of 3 meq/100 g does not hold potash; Mississippi's page dresses grain after emergence.</summary>
    [Fact]
    public void Potash_goes_on_in_two_dressings_grain_nitrogen_after_emergence_and_no_phosphate_at_all()
    {
        var plan = Plan;
        Assert.True(plan.Answers.Need.Value.IsPotashSplit);
        Assert.True(plan.Has("nutrient-potash-split"));
        plan.Says("after emergence", "By that rule none of it goes on before or with the seed");
        Assert.Equal(ApplicationRate.Zero, plan.Answers.Fertilizer.Told.Brought.Single(b => b.Target.Nutrient == PlantNutrient.Phosphate).Balance?.Delivered ?? ApplicationRate.Zero);
        Assert.Equal(AnswerState.NoneNeeded, plan.Answers.Fertilizer.Told.Purchase.State);
    }

    [Fact]
    public void The_forecast_and_the_hold_back_stand_in_one_sentence()
    {
        var plan = Plan;
        Assert.Empty(plan.Verdict.WithinReach);
        Assert.Contains("That is a forecast and sows nothing", plan.Section("verdict"), StringComparison.Ordinal);
        Assert.Contains("Out of reach by then", plan.Section("verdict"), StringComparison.Ordinal);
        Assert.Single(plan.Answers.Findings, f => f.Code == "lime-kind-hold-back" && f.Subject == "Crimson clover");
        Assert.False(plan.Has("blend-ph-low"));
    }
}
