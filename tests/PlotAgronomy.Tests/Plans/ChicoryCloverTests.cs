using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

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
        plan.Says("Not sure yet: first answer the region. If that fits, yes. Sow Chicory, Ladino clover, Medium red clover");
    }

    /// <summary>Practice: chicory with clover takes 25 to 30 lb N/ac once it grows; none goes on before the seed. By hand: 25 lb of
    /// urea of 46 % is 54.3 lb/ac, on 0.4996 ac 27 lb: one bag of 50 lb.</summary>
    [Fact]
    public void Nitrogen_comes_once_the_chicory_grows_and_none_on_the_new_stand()
    {
        var plan = Plan;
        var fertilizer = plan.Answers.Fertilizer.Value;
        Assert.Equal(0, fertilizer.Purchase.Value.Lines.Sum(l => l.Rate.PoundsPerAcre * l.Product.Analysis.Percent(PlantNutrient.Nitrogen)), 1e-9);
        Assert.True(fertilizer.Purchase.Value.MeetsEveryNeed);
        var later = fertilizer.LaterNitrogen.Value;
        Assert.Equal(["once the stand grows"], later.Doses.Select(d => d.When));
        Assert.Equal((25, 30), (later.Low.PoundsPerAcre, later.High.PoundsPerAcre));
        var urea = Assert.Single(later.Purchase.Value.Lines);
        Assert.Equal(("urea", 1), (urea.Product.Name, urea.Packages));
        Assert.InRange(urea.Spread.Pounds, 27, 28);
        plan.Says("Nitrogen for the stand, not before the seed: 25 to 30 lb/ac once the stand grows");
        Assert.Contains("buy.nitrogen.urea", plan.Bought);
    }

    /// <summary>No offer of nitrogen alone: the dose stands, and what to buy for it is asked.</summary>
    [Fact]
    public void Without_nitrogen_on_offer_the_later_dose_stays_and_is_open()
    {
        var plan = Plan.Plan;
        var without = SolvedPlan.Of(plan with { FertilizerOffers = [.. plan.FertilizerOffers.Where(o => o.Item.Name != "urea")] });
        var later = without.Answers.Fertilizer.Value.LaterNitrogen.Value;
        Assert.Equal(AnswerState.Open, later.Purchase.State);
        Assert.Equal(25, later.Low.PoundsPerAcre, 1e-9);
        Assert.Contains(without.Answers.Questions, q => q.Code == "fertilizer-ask-offer");
        without.Says("Nothing on offer brings nitrogen alone");
    }

    /// <summary>Where phosphate comes with nitrogen alone, what comes along is no more than is too little to buy (15 lb, practice), and
    /// is not given a second time.</summary>
    [Fact]
    public void Nitrogen_that_comes_along_is_never_given_twice()
    {
        var plan = Plan.Plan;
        var mixed = SolvedPlan.Of(plan with { FertilizerOffers = [.. plan.FertilizerOffers.Where(o => o.Item.Name is "6-24-24" or "urea")] });
        var fertilizer = mixed.Answers.Fertilizer.Value;
        double sown = fertilizer.Purchase.Value.Balance(PlantNutrient.Nitrogen)!.Delivered.PoundsPerAcre;
        Assert.InRange(sown, 10, 15);
        double stand = fertilizer.LaterNitrogen.TryGet(out var later) ? later.High.PoundsPerAcre : 0;
        Assert.InRange(sown + stand, 0, 30);
    }
}
