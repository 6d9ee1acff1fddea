using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Plans;

/// <summary>A ladino clover stand in its third year, pH 6.2: nothing is sown.</summary>
/// <remarks>Expected: common practice.</remarks>
public class UpkeepTests
{
    private static SolvedPlan Plan => SolvedPlan.Of("p07-clover-upkeep-mi");

    [Fact]
    public void A_plan_without_seed_keeps_up_what_stands_there()
    {
        var plan = Plan;
        Assert.Empty(plan.Plan.Kinds);
        Assert.Null(plan.Plan.Spreader);
        Assert.Equal(PlotDecision.Upkeep, plan.Verdict.Decision);
        Assert.Empty(plan.Verdict.Kinds);
        Assert.Equal(AnswerState.NoneNeeded, plan.Answers.Seed.State);
        Assert.Equal(AnswerState.NoneNeeded, plan.Answers.Spreading.State);
        plan.Says("No seed is needed. Ladino clover stands there at 0.8 of a full stand", "upkeep of 2026-04-20");
        Assert.DoesNotContain(plan.Bought, b => b.StartsWith("buy.seed", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Sheet.Sections, s => s.Id is "passes" or "seed");
        plan.SaysNothingOf("Pass 1", "Roll the seedbed", "weigh a test run");
    }

    [Fact]
    public void Potash_and_boron_for_clover_are_bought_and_no_nitrogen()
    {
        var plan = Plan;
        var bought = plan.Answers.Fertilizer.Value.Purchase.Value;
        Assert.True(bought.Balance(PlantNutrient.Potash)!.Delivered >= plan.Answers.Need.Value.Find(PlantNutrient.Potash)!.AtLeast);
        Assert.True(bought.Balance(PlantNutrient.Boron)!.Delivered > ApplicationRate.Zero);
        Assert.True(bought.Balance(PlantNutrient.Nitrogen)!.Delivered <= plan.Answers.Need.Value.Find(PlantNutrient.Nitrogen)!.AtMost!.Value);
        Assert.Equal(["buy.fertilizer.0-14-42-with-boron", "buy.fertilizer.triple-superphosphate"], plan.Bought);
    }

    [Fact]
    public void The_standing_kind_sets_the_target_of_the_lime() =>
        Assert.Equal("ladino-clover", Plan.Answers.Lime.Value.Target!.SetBy!.Id);

    [Fact]
    public void Mowing_thickening_and_the_next_test_are_steps_with_dates_where_known()
    {
        string steps = Plan.Work;
        Assert.Contains("Mow to 6 inches", steps, StringComparison.Ordinal);
        Assert.Contains("when less than 0.6 of a full stand is left", steps, StringComparison.Ordinal);
        Assert.Contains("Mar 25 to Apr 25, 2028: Sample again (4 in deep, 10 to 15 cores): same month, same depth, in 2029 at the latest.", steps, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thin_stand_is_told_so_with_the_dates_of_its_region()
    {
        var thin = SolvedPlan.Of("p07-clover-upkeep-mi", json =>
        {
            EditedPlan.Set(json, "plot.standsNow.shareOfFullStand", 0.4);
            EditedPlan.Set(json, "plot.plantingRegion", "Central");
        });
        thin.Says("0.4 of a full stand, which is thin", "plan seed of Ladino clover to thicken it (published days: ", "08-01 to 09-15");
    }

    [Fact]
    public void It_is_written_and_read_back_without_seed()
    {
        string written = PlanFile.Write(Plan.Plan);
        Assert.DoesNotContain("\"growing\"", written, StringComparison.Ordinal);
        Assert.DoesNotContain("\"spreader\"", written, StringComparison.Ordinal);
        var again = PlanFile.Read(written);
        Assert.Empty(again.Problems);
        Assert.Equal(Plan.Sheet.ToText(), FieldSheet.Of(again.Plan!.Solve()).ToText());
    }

    /// <summary>The way of planting is asked, with the seed under each of them.</summary>
    [Fact]
    public void What_is_to_be_sown_without_a_way_of_planting_is_asked_for_it()
    {
        var plan = PlanFile.Read(EditedPlan.Of("fall-blend", plan => plan.AsObject().Remove("method"))).Plan!;
        Assert.Contains(plan.Solve().Questions, q => q.Code == "plan-ask-method");
    }

    /// <summary>Nobody knows what to feed: nothing is asked and nothing is bought, which is not the same as no need.</summary>
    [Fact]
    public void Ground_of_which_nothing_is_sown_and_nothing_stands_has_no_need_asked()
    {
        var plan = Plan.Plan;
        var answers = (plan with { Plot = plan.Plot with { Cover = GroundCover.BareGround, CoverKind = null, CoverShare = 0 } }).Solve();
        Assert.Equal(AnswerState.NoneNeeded, answers.Verdict.State);
        Assert.Equal(AnswerState.NotAsked, answers.Need.State);
        Assert.NotEqual(AnswerState.NoneNeeded, answers.Fertilizer.State);
        Assert.NotEmpty(FieldSheet.Of(answers).Sections);
    }
}
