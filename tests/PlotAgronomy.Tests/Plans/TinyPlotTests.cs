using PlotAgronomy.Fertilizers;
using PlotAgronomy.Planning;

namespace PlotAgronomy.Tests.Plans;

/// <summary>Oats, white Dutch and alsike clover on a log landing of 0.08 acre, pH 5.3; the laboratory prints 0-80-100.</summary>
/// <remarks>Expected: common practice.</remarks>
public class TinyPlotTests
{
    private static SolvedPlan Plan => SolvedPlan.Of("p05-tiny-vt");

    [Fact]
    public void Oats_and_alsike_are_sown_now_and_white_Dutch_when_a_test_shows_its_pH()
    {
        var plan = Plan;
        Assert.Equal(PlotDecision.SowWithout, plan.Verdict.Decision);
        Assert.Equal(["oats-spring", "alsike-clover"], plan.Sown);
        var white = plan.On("white-dutch-clover");
        Assert.Equal(5.8, white.TestMustShow);
        Assert.Equal(["white-dutch-clover"], plan.Verdict.WithinReach.Select(v => v.Planned.Kind.Id));
        plan.Says("50 % of a full stand is not sown; the rates of the others are not raised");
        // The forecast of more than 5.8 and the hold-back until 5.8 are joined.
        Assert.True(plan.Verdict.Expected!.ExpectedPhHigh > 5.8);
        Assert.Contains("Within reach of that test: White Dutch clover", plan.Section("verdict"), StringComparison.Ordinal);
        Assert.Contains("Test the pH again, before the bags of seed are opened. It decides on White Dutch clover (pH 5.8 or more: then buy it, and sow 0.16 lb of it with the seed of its size).", plan.Work, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rates_of_what_is_sown_are_those_of_the_whole_blend()
    {
        var plan = Plan;
        foreach (var sown in plan.Answers.Seed.Value.Kinds)
        {
            Assert.Equal(sown.Planned.Share.ShareOfFullStand, sown.Part.ShareOfFullStand.Chosen, 1e-9);
        }
    }

    [Fact]
    public void The_test_run_is_walked_over_a_tarp_or_short_and_half_as_much_again_is_bought()
    {
        var plan = Plan;
        Assert.True(plan.Has("spread-test-run-much"));
        plan.Says("over a tarp and put the seed back, or walk 70 ft", "half as much seed again");
    }

    [Fact]
    public void The_ceiling_of_nitrogen_holds_whatever_the_shelf_offers()
    {
        var plan = Plan.Plan;
        foreach (var alone in plan.FertilizerOffers)
        {
            var fertilizer = (plan with { FertilizerOffers = [alone] }).Solve().Fertilizer.Told;
            var brought = fertilizer.Brought.Single(b => b.Target.Nutrient == PlantNutrient.Nitrogen);
            Assert.True(brought.Balance is not { } balance || balance.Delivered.PoundsPerAcre <= brought.Target.AtMost!.Value.PoundsPerAcre + 1e-9, alone.Item.Name);
        }
    }

    [Fact]
    public void A_balanced_grade_is_no_equal_choice() =>
        Assert.DoesNotContain(Plan.Answers.Fertilizer.Value.Others, o => o.Purchase.Lines.Any(l => l.Product.Analysis.Percent(PlantNutrient.Nitrogen) > 0));
}
