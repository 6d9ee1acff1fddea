using PlotAgronomy.Planning;

namespace PlotAgronomy.Tests.Plans;

/// <summary>Red clover, ladino and Korean lespedeza frost-seeded into standing wheat in February, pH 5.8.</summary>
/// <remarks>Expected: common practice, as Missouri prints it for frost seeding.</remarks>
public class FrostSeededTests
{
    private static SolvedPlan Plan => SolvedPlan.Of("p11-frost-clover-mo");

    [Fact]
    public void Every_kind_is_sown()
    {
        var plan = Plan;
        Assert.Equal(PlotDecision.Sow, plan.Verdict.Decision);
        Assert.Equal(["medium-red-clover", "ladino-clover", "korean-lespedeza"], plan.Sown);
        Assert.Empty(plan.Verdict.Substitutes);
        plan.Says("yes. Sow Medium red clover, Ladino clover, Korean lespedeza");
        Assert.False(plan.Has("blend-warm-and-cool"));
    }

    [Fact]
    public void The_steps_are_those_of_frost_seeding_with_light_for_the_seedlings()
    {
        string steps = Plan.Work;
        Assert.Contains("frozen, snow-free ground", steps, StringComparison.Ordinal);
        Assert.Contains("only after green-up", steps, StringComparison.Ordinal);
        Assert.Contains("Mow or graze what stands above the seedlings", steps, StringComparison.Ordinal);
    }

    /// <summary>The method knows pH 7.0 alone, a whole unit above what is asked: it is refused, and no bag is bought on it.</summary>
    [Fact]
    public void Nothing_is_limed_to_7()
    {
        var plan = Plan;
        Assert.Equal(6.0, plan.Answers.Lime.Told.TargetPh);
        Assert.Equal(AnswerState.Open, plan.Answers.Lime.State);
        Assert.Contains(plan.Answers.Questions, q => q.Code == "lime-ask-method");
        Assert.DoesNotContain("buy.lime", plan.Bought);
    }

    /// <summary>Missouri's tables by target were not seen; all of the acidity bounds them. By hand: 3.0 meq x 400 lb ENM (LIME-S17).</summary>
    [Fact]
    public void The_nearest_target_is_named_with_its_rate_as_the_most()
    {
        var question = Assert.Single(Plan.Answers.Questions, q => q.Code == "lime-ask-nearest");
        Assert.Contains("to pH 7 alone", question.Text, StringComparison.Ordinal);
        Assert.Contains("1,200 lb", question.Text, StringComparison.Ordinal);
    }

    /// <summary>Missouri (LIME-S17): not worked in, 2 ton at once and the rest 2 to 3 years later. By hand: 1,200 lb ENM of 480 lb to the ton
    /// are 2.5 ton.</summary>
    [Fact]
    public void Whoever_wants_7_all_the_same_spreads_no_more_than_2_tons_on_the_surface()
    {
        var plan = SolvedPlan.Of(Plan.Plan with { StatedTargetPh = 7.0 });
        var order = plan.Answers.Lime.Value.Order.Value;
        Assert.Equal(5000, order.ProductRate.PoundsPerAcre, 1);
        double acres = plan.Plan.Plot.Area.Acres;
        Assert.Equal([0, 24], order.Dressings.Select(d => d.MonthsAfterFirst));
        Assert.Equal(4000 * acres, order.Dressings[0].Mass.Pounds, 1);
        Assert.Equal(1000 * acres, order.Dressings[1].Mass.Pounds, 1);
    }

    /// <summary>Practice: no ground freezes in July, whatever region the plot lies in.</summary>
    [Fact]
    public void Nothing_is_frost_seeded_in_July()
    {
        var plan = SolvedPlan.Of(Plan.Plan with { PlantingDate = new DateOnly(2027, 7, 15) });
        Assert.Equal(PlotDecision.NothingThisSeason, plan.Verdict.Decision);
        Assert.All(plan.Verdict.Kinds, v => Assert.Equal("plan-no-frost", v.Reasons[0].Code));
        Assert.DoesNotContain(plan.Bought, b => b.StartsWith("buy.seed", StringComparison.Ordinal));
    }
}
