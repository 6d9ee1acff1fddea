using PlotAgronomy.Planning;

namespace PlotAgronomy.Tests.Plans;

/// <summary>Oats, wheat, rye, crimson and arrowleaf clover on a Piedmont sandy loam of pH 5.5, 0.9 acre.</summary>
/// <remarks>Expected: common practice; South Carolina's grid for small grain asks for 80-60 (SOIL-SC1), Adams-Evans for 0.65 ton.</remarks>
public class GrainsAndCloverTests
{
    private static SolvedPlan Plan => SolvedPlan.Of("p09-grains-clover-sc");

    [Fact]
    public void Grain_and_crimson_are_sown_and_arrowleaf_only_with_a_test_of_5_8()
    {
        var plan = Plan;
        Assert.Equal(PlotDecision.SowWithout, plan.Verdict.Decision);
        Assert.Equal(["oats-winter", "winter-wheat", "cereal-rye", "crimson-clover"], plan.Sown);
        Assert.Equal(5.8, plan.On("arrowleaf-clover").TestMustShow);
        Assert.Equal(0.1, plan.Verdict.ShareMissing, 1e-9);
        plan.Says("Yes, without Arrowleaf clover", "Buy it when a test shows pH 5.8 or more", "until a test shows pH 5.8 or more, then 1.18 lb of it is sown");
        Assert.DoesNotContain(plan.Bought, b => b.Contains("arrowleaf", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Answers.Spreading.Value.Passes, p => p.Names.Contains("Arrowleaf", StringComparison.Ordinal));
    }

    /// <summary>By hand: 0.65 ton for 6 2/3 in is 0.59 for 6 in, over 0.9 ac 1,060 lb: 22 bags of 50 lb, not 33.</summary>
    [Fact]
    public void About_21_bags_of_lime_are_bought() => Assert.InRange(Plan.Answers.Lime.Value.Order.Value.Bags!.Value, 20, 22);

    [Fact]
    public void Eighty_sixty_is_bought_in_about_six_bags_and_not_alfalfas_200_200()
    {
        var plan = Plan;
        Assert.Equal(80, plan.Answers.Need.Value.Find(PlantNutrient.Phosphate)!.AtLeast.PoundsPerAcre, 1e-9);
        Assert.Equal(60, plan.Answers.Need.Value.Find(PlantNutrient.Potash)!.AtLeast.PoundsPerAcre, 1e-9);
        Assert.InRange(plan.Answers.Fertilizer.Value.Purchase.Value.Lines.Sum(l => l.Packages), 5, 7);
        Assert.Contains(plan.Answers.Fertilizer.Value.Others, o => o.Purchase.Lines is [{ Packages: 6, Product.Name: "6-24-24" }]);
        plan.SaysNothingOf("the row for alfalfa");
    }

    /// <summary>Mississippi's page (SOIL-MS1): 30 to 40 lb of nitrogen for grain, half after emergence, half in December; by its share
    /// of 0.65 that is 19.5 to 26 lb. What comes along with phosphate is a part of it.</summary>
    [Fact]
    public void Nitrogen_comes_by_the_season_and_boron_is_no_warning()
    {
        var plan = Plan;
        plan.Says("after emergence, then", "in December");
        var fertilizer = plan.Answers.Fertilizer.Value;
        double sown = fertilizer.Purchase.Value.Balance(PlantNutrient.Nitrogen)!.Delivered.PoundsPerAcre;
        double stand = fertilizer.LaterNitrogen.TryGet(out var later) ? later.Low.PoundsPerAcre : 0;
        Assert.InRange(sown, 0, 22);
        plan.Says("Nitrogen for the stand, not before the seed:", "in December. That is too little to buy: 15 lb/ac come along");
        Assert.InRange(sown + stand, 0, 26);
        Assert.DoesNotContain(plan.Answers.Findings, f => f.Severity == FindingSeverity.Warning && f.Text.Contains("boron", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void The_inoculant_is_named_and_bait_and_bloat_are_said()
    {
        var plan = Plan;
        plan.Says("Take the inoculant for crimson and berseem clover (R)", "within 24 hours", "Bloat in Crimson clover");
        // Grain is covered here; thrown on the surface the warning of bait comes.
        var thrown = SolvedPlan.Of(plan.Plan with { Method = PlantingMethod.BroadcastThenMown });
        Assert.True(thrown.Has("blend-grain-on-surface"));
    }

    [Fact]
    public void Load_passes_and_test_run_agree()
    {
        foreach (var pass in Plan.Answers.Spreading.Value.Passes)
        {
            Assert.Equal(pass.Load.Pounds, pass.Kinds.Sum(k => k.Weight.Pounds), 1e-9);
            double walked = pass.Laid.Value.Path.Feet;
            Assert.Equal(pass.Load.Pounds, pass.TestRunCatch.Pounds * walked / SowingPass.TestRun.Feet, pass.Load.Pounds * 0.01);
        }
    }

    /// <summary>Mississippi's page dresses grain after emergence and in December (SOIL-MS1): urea is no step before the seed.</summary>
    [Fact]
    public void What_brings_nitrogen_alone_is_spread_on_the_stand_and_not_before_the_seed()
    {
        var plan = Plan.Plan;
        var salts = SolvedPlan.Of(plan with { FertilizerOffers = [.. plan.FertilizerOffers.Where(o => o.Item.Name is "urea" or "triple superphosphate" or "muriate of potash")] });
        var fertilizer = salts.Answers.Fertilizer.Value;
        Assert.DoesNotContain(fertilizer.Purchase.Value.Lines, l => l.Product.Name == "urea");
        var later = fertilizer.LaterNitrogen.Value;
        Assert.Equal(["after emergence", "in December"], later.Doses.Select(d => d.When));
        Assert.Equal(19.5, later.Low.PoundsPerAcre, 1e-9);
        Assert.Equal(26, later.High.PoundsPerAcre, 1e-9);
        Assert.Equal("urea", Assert.Single(later.Purchase.Value.Lines).Product.Name);
        string steps = salts.Work;
        Assert.DoesNotContain("of urea", steps[..steps.IndexOf("Sow ", StringComparison.Ordinal)], StringComparison.Ordinal);
        Assert.Contains("Top-dress nitrogen, after emergence: ", steps, StringComparison.Ordinal);
        var doses = salts.Answers.SeasonWork.Where(w => w.Task.Id.StartsWith("nitrogen", StringComparison.Ordinal)).ToList();
        Assert.True(doses.Count > 1);
        Assert.Equal(fertilizer.Later.Sum(l => l.Spread.Pounds), doses.SelectMany(w => w.Materials).Sum(m => m.Mass.Pounds), 1e-9);
    }
}
