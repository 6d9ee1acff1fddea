using PlotAgronomy.Planning;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Plans;

/// <summary>Wheat, alfalfa and ladino clover on a poorly drained clay of pH 5.1 in mid September, limed a month ago.</summary>
/// <remarks>Expected: common practice; for the lime the equation of the three states (LIME-S1).</remarks>
public class WetClayTests
{
    private static SolvedPlan Plan => SolvedPlan.Of("p03-clay-smp59-oh");

    [Fact]
    public void Alfalfa_is_left_out_for_the_wet_ground_alone()
    {
        var plan = Plan;
        Assert.Equal(PlotDecision.LimeAndWait, plan.Verdict.Decision);
        var alfalfa = plan.On("alfalfa");
        Assert.Equal(KindDecision.LeaveOut, alfalfa.Decision);
        Assert.Equal(["blend-ground-wet"], alfalfa.Reasons.Select(r => r.Code));
        Assert.Equal(KindDecision.AfterTest, plan.On("winter-wheat").Decision);
        Assert.Equal(KindDecision.AfterTest, plan.On("ladino-clover").Decision);
        plan.Says("too wet for Alfalfa", "This ground does not bear it");
        Assert.True(plan.Has("blend-ground-wet"));
    }

    [Fact]
    public void With_its_place_alfalfa_is_late_too()
    {
        var plan = SolvedPlan.Of("p03-clay-smp59-oh", json => EditedPlan.Set(json, "plot.plantingRegion", "North"));
        Assert.Contains(plan.On("alfalfa").Cautions.Concat(plan.Answers.Findings), f => f.Code is "blend-date-late" or "blend-out-of-season" && f.Text.Contains("Alfalfa", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Answers.Questions, q => q.Code == "seed-ask-region");
        Assert.Contains(Plan.Answers.Questions, q => q.Code == "seed-ask-region");
    }

    [Fact]
    public void Wheat_alone_is_sown_where_the_soil_bears_it()
    {
        var plan = SolvedPlan.Of("p03-clay-smp59-oh", json => EditedPlan.Set(json, "soilReport.waterPh", 5.5));
        Assert.Equal(PlotDecision.SowWithout, plan.Verdict.Decision);
        Assert.Equal(["winter-wheat"], plan.Sown);
        Assert.Equal(0.6, plan.Verdict.ShareMissing, 1e-9);
        Assert.Contains("buy.seed.winter-wheat", plan.Bought);
        Assert.DoesNotContain(plan.Bought, b => b.Contains("alfalfa", StringComparison.Ordinal) || b.Contains("ladino", StringComparison.Ordinal));
    }

    /// <summary>LIME-S1: SMP 5.9 asks for 7.4 ton to pH 6.0, which clover and wheat ask for; alfalfa, for which 9.1 to 6.5 would go on,
    /// never stands here. LIME-S15: above 4 ton in two parts, both worked in before the seed.</summary>
    [Fact]
    public void A_large_need_is_worked_in_in_parts_and_ordered_in_bulk()
    {
        var plan = Plan;
        var order = plan.Answers.Lime.Value.Order.Value;
        Assert.Equal(7.4, plan.Answers.Lime.Value.Rate.Value.OfBasis.ShortTonsPerAcre, 0.05);
        Assert.Equal(2, order.Dressings.Length);
        Assert.All(order.Dressings, d => Assert.True(d.On <= plan.Plan.PlantingDate));
        Assert.True(order.Bags >= 100);
        Assert.True(plan.Has("plan-lime-in-bulk"));
        plan.Says("in bulk, spread by the ton", "work it in");
        Assert.Equal(["buy.lime"], plan.Bought);
    }

    [Fact]
    public void What_stands_wet_sour_ground_is_named_in_their_place()
    {
        var plan = Plan;
        Assert.InRange(plan.Verdict.Substitutes.Length, 1, 3);
        Assert.All(plan.Verdict.Substitutes, s =>
        {
            Assert.True(s.Kind.Drainage!.Stands(plan.Plan.Plot.Drainage!.Value));
            Assert.True(s.LowestPh <= plan.Verdict.Expected!.ExpectedPhHigh);
            Assert.DoesNotContain(s.Kind.Id, plan.Plan.Kinds.Select(k => k.Kind.Id));
        });
    }
}
