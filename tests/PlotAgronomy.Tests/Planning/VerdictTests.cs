using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Planning;

/// <summary>What stops a kind, what is only minded, and what would change it.</summary>
public class VerdictTests
{
    private static PlotPlan Demo => PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))).Plan!;

    private static PlannedKind Planned(string kind, double share = 1)
    {
        var found = KindCatalog.Standard.Find(kind);
        var lot = new SeedLot { Label = "X", Kind = found, Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(90)) };
        return new() { Share = KindShare.FromShare(found, share), Offer = Offer.InBags(lot, Mass.FromPounds(50), 20) };
    }

    private static PlotPlan Plan(double ph, params PlannedKind[] kinds) =>
        Demo with { Kinds = [.. kinds], SeedOffers = [], Report = Demo.Report! with { WaterPh = WaterPh.FromValue(ph) } };

    private static KindVerdict Only(PlotPlan plan) => Assert.Single(plan.Solve().Verdict.Value.Kinds);

    /// <summary>Practice: root poisons of the old stand kill alfalfa seedlings; other families only gather their pests.</summary>
    [Theory]
    [InlineData("alfalfa", "alfalfa", KindDecision.NotThisSeason, "plan-alfalfa-after-alfalfa")]
    [InlineData("forage-turnip", "rape-dwarf-essex", KindDecision.Sow, "plan-brassica-after-brassica")]
    [InlineData("oats-winter", "rape-dwarf-essex", KindDecision.Sow, null)]
    [InlineData("ladino-clover", "medium-red-clover", KindDecision.Sow, "plan-clover-after-clover")]
    public void What_grew_there_is_held_against_its_family(string sown, string before, KindDecision decision, string? code)
    {
        var plan = Plan(6.8, Planned(sown));
        var answers = (plan with { Plot = plan.Plot with { GrewBefore = KindCatalog.Standard.Find(before), PlantingRegion = null, Drainage = DrainageClass.Well } }).Solve();
        Assert.Equal(decision, Assert.Single(answers.Verdict.Value.Kinds).Decision);
        string[] told = [.. answers.Findings.Select(f => f.Code).Where(c => c.Contains("-after-", StringComparison.Ordinal))];
        Assert.Equal(code is null ? [] : [code], told);
    }

    [Fact]
    public void Sod_that_stays_standing_is_no_forerunner()
    {
        var plan = Plan(6.8, Planned("ladino-clover", 0.3));
        var sod = plan with { Plot = plan.Plot with { Cover = GroundCover.LegumeStand, CoverKind = KindCatalog.Standard.Find("ladino-clover"), CoverShare = 0.5, Drainage = DrainageClass.Well } };
        Assert.Contains((sod with { Method = PlantingMethod.TilledAndPacked }).Solve().Findings, f => f.Code == "plan-clover-after-clover");
        Assert.DoesNotContain((sod with { Method = PlantingMethod.BroadcastThenMown }).Solve().Findings, f => f.Code == "plan-clover-after-clover");
    }

    /// <summary>Practice: two acres of soybeans outgrow the deer, a half does not.</summary>
    [Theory]
    [InlineData(0.5, true), InlineData(2.0, false)]
    public void Kinds_that_deer_take_first_are_told_on_a_small_plot(double acres, bool told)
    {
        var plan = Plan(6.8, Planned("soybean-forage"));
        var answers = (plan with { Plot = plan.Plot with { Measured = PlotArea.Stated(Area.FromAcres(acres)) } }).Solve();
        Assert.Equal(told, answers.Findings.Any(f => f.Code == "plan-deer-on-small-plot"));
        Assert.True(Assert.Single(answers.Verdict.Value.Kinds).IsSown);
    }

    /// <summary>The kinds' own limits of drainage, and their own pH at both ends.</summary>
    [Theory]
    [InlineData("alfalfa", 6.8, DrainageClass.Poor, KindDecision.LeaveOut, "blend-ground-wet")]
    [InlineData("ladino-clover", 6.8, DrainageClass.Excessive, KindDecision.LeaveOut, "blend-ground-dry")]
    [InlineData("ladino-clover", 8.9, DrainageClass.Well, KindDecision.LeaveOut, "blend-ph-high")]
    [InlineData("ladino-clover", 5.0, DrainageClass.Well, KindDecision.AfterTest, "lime-kind-hold-back")]
    public void Ground_and_pH_stop_a_kind(string kind, double ph, DrainageClass drainage, KindDecision decision, string code)
    {
        var plan = Plan(ph, Planned(kind));
        var verdict = Only(plan with { Plot = plan.Plot with { Drainage = drainage } });
        Assert.Equal(decision, verdict.Decision);
        Assert.Equal([code], verdict.Reasons.Select(r => r.Code));
        Assert.Equal(decision == KindDecision.AfterTest ? KindCatalog.Standard.Find(kind).Ph!.MinimumPh : null, verdict.TestMustShow);
    }

    /// <summary>Its own published dates: buckwheat on 24 December is out of season, and the next day is one of them.</summary>
    [Fact]
    public void A_kind_out_of_season_is_kept_for_the_next_published_day()
    {
        var plan = Plan(6.8, Planned("buckwheat"));
        plan = plan with { PlantingDate = new DateOnly(2026, 12, 24), Plot = plan.Plot with { PlantingRegion = PlantingRegion.North } };
        var answers = plan.Solve();
        var verdict = Assert.Single(answers.Verdict.Value.Kinds);
        Assert.Equal(KindDecision.NotThisSeason, verdict.Decision);
        Assert.Equal(PlotDecision.NothingThisSeason, answers.Verdict.Value.Decision);
        Assert.Contains(PlantingWindow.Published(KindCatalog.Standard.Find("buckwheat"), PlantingRegion.North), w => w.FirstDay(2027) == verdict.NextDay);
        string sheet = FieldSheet.Of(answers).ToText();
        Assert.Contains("No. Nothing of this blend is sown now.", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("buy.seed", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_pH_the_verdict_is_open_and_asks_for_it()
    {
        var answers = (Plan(6.8, Planned("ladino-clover")) with { Report = Demo.Report! with { WaterPh = null } }).Solve();
        Assert.Equal(AnswerState.Open, answers.Verdict.State);
        Assert.Contains(answers.Verdict.Questions, q => q.Code == "soil-ask-water-ph");
        Assert.StartsWith("Not sure yet: first answer the pH of the soil", FieldSheet.Of(answers).Sections[0].Blocks.OfType<SheetSentence>().First().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_spreader_the_seed_is_weighed_out_and_the_passes_stay_open()
    {
        var answers = (Demo with { Spreader = null }).Solve();
        Assert.Equal(AnswerState.Given, answers.Seed.State);
        Assert.Equal(AnswerState.Open, answers.Spreading.State);
        Assert.Contains("names no spreader", FieldSheet.Of(answers).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Seed_all_of_which_waits_leaves_its_lime_and_nothing_else_to_buy()
    {
        var answers = Plan(4.6, Planned("ladino-clover")).Solve();
        Assert.Equal(PlotDecision.LimeAndWait, answers.Verdict.Value.Decision);
        Assert.True(answers.Fertilizer.Told.Waits);
        Assert.Equal(answers.Lime.Value.Order.Value.Cost, answers.TotalCost);
    }
}
