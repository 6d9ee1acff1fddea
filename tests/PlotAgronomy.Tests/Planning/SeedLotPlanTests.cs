using System.Text.Json.Nodes;
using PlotAgronomy.Blends;
using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>What a tag says of a lot reaches the plan: varieties, the month of test, treatment.</summary>
public class SeedLotPlanTests
{
    private static PlotAnswers Solve(string demo, Action<JsonNode> change)
    {
        var reading = PlanFile.Read(EditedPlan.Of(demo, change));
        Assert.Empty(reading.Problems);
        return reading.Plan!.Solve();
    }

    private const string TwoVarieties = """
        PURE SEED  KIND            VARIETY  GERM  HARD
        49.00%     Crimson clover  Alpha    90%
        49.00%     Crimson clover  Beta     80%
        1.00%  OTHER CROP SEED
        0.90%  INERT MATTER
        0.10%  WEED SEED
        TESTED: JUNE 2025
        """;

    /// <summary>By hand: 49 and 49 % of the bag at 90 and 80 % are 98 % at 85 %.</summary>
    [Fact]
    public void Two_varieties_of_a_kind_on_one_tag_are_one_lot()
    {
        var tag = SeedTag.Read(TwoVarieties).Tag!;
        Assert.Equal(2, tag.Components.Length);
        var joined = Assert.Single(tag.ByKind);
        Assert.Equal(98, joined.Analysis.PureSeed.Percent, 1e-9);
        Assert.Equal(85, joined.Analysis.Germination.Percent, 1e-9);
        Assert.Equal("Alpha; Beta", joined.Variety);
        var blend = Blend.FromTag(tag, ApplicationRate.FromPoundsPerAcre(20), SowingMethod.Broadcast);
        Assert.Equal(20 * 0.98 * 0.85, Assert.Single(blend.Parts).LiveRate.PoundsPerAcre, 1e-9);
        var lot = SeedLot.FromTag(tag, joined.Kind, "both");
        Assert.Equal(0.98 * 0.85, lot.PureLiveSeedPart().Value, 1e-9);
        Assert.Throws<ArgumentException>(() => SeedLot.FromTag(tag, KindCatalog.Standard.Find("ladino"), "none"));
    }

    /// <summary>By hand: 60 % of the bag at 90 % and 20 % at 50 % are 80 % at (54 + 10) / 80 = 80 %.</summary>
    [Fact]
    public void The_larger_variety_counts_by_its_weight()
    {
        string text = TwoVarieties.Replace("49.00%     Crimson clover  Alpha    90%", "60.00%     Crimson clover  Alpha    90%", StringComparison.Ordinal)
            .Replace("49.00%     Crimson clover  Beta     80%", "20.00%     Crimson clover  Beta     50%", StringComparison.Ordinal);
        var joined = Assert.Single(SeedTag.Read(text).Tag!.ByKind);
        Assert.Equal((80, 80), (Math.Round(joined.Analysis.PureSeed.Percent, 9), Math.Round(joined.Analysis.Germination.Percent, 9)));
    }

    /// <summary>7 CFR 201.30b as the library cites it: a test is current for so many months; seven years are beyond all.</summary>
    [Fact]
    public void A_test_of_seven_years_ago_is_told_on_the_plan()
    {
        Assert.Contains(Old("2019-06-01"), f => f.Code == SeedCodes.TestOld);
        Assert.DoesNotContain(Old("2026-05-01"), f => f.Code == SeedCodes.TestOld);

        static IEnumerable<Finding> Old(string tested) =>
            Solve("fall-blend", plan => EditedPlan.Set(plan, "materials.seedLots.2.tested", tested)).Findings.Where(f => f.Subject == "Crimson clover, lot CC-9");
    }

    /// <summary>7 CFR 201.57a: what a tetrazolium test finds alive stands for germination. By hand: 0.98 x 0.80 of the bag lives.</summary>
    [Fact]
    public void A_lot_with_a_tetrazolium_test_alone_is_weighed_out_by_it()
    {
        var answers = Solve("fall-blend", plan =>
        {
            var lot = plan["materials"]!["seedLots"]![1]!.AsObject();
            lot.Remove("germination");
            lot.Remove("hardSeed");
            lot["pureSeed"] = "98 %";
            lot["tetrazolium"] = "80 %";
        });
        var pea = answers.Seed.Value.Kinds[1];
        Assert.Equal(0.98 * 0.80, pea.Bulk.PureLiveSeedPart.Value, 1e-12);
        Assert.Equal(pea.Part.LiveRate.PoundsPerAcre / (0.98 * 0.80), pea.Bulk.Bulk.PoundsPerAcre, 1e-9);
        Assert.DoesNotContain(pea.Bulk.Findings, f => f.Code == "seed-below-floor");
        string written = PlanFile.Write(answers.Plan);
        Assert.Contains("\"tetrazolium\": \"80 %\"", written, StringComparison.Ordinal);
        var both = PlanFile.Read(EditedPlan.Of("fall-blend", plan => EditedPlan.Set(plan, "materials.seedLots.1.tetrazolium", "80 %")));
        Assert.Equal(["$.materials.seedLots[1]", "$.materials.seedLots[1].hardSeed"], both.Problems.Select(p => p.Path));
    }

    [Theory]
    [InlineData("broadcast-then-mown", true)]
    [InlineData("broadcast-then-rolled", true)]
    [InlineData("drilled", false)]
    public void Treated_seed_that_would_lie_on_the_surface_stops_the_seed(string method, bool stops)
    {
        var answers = Solve("fall-blend", plan =>
        {
            plan["method"] = method;
            EditedPlan.Set(plan, "materials.seedLots.1.treated", true);
        });
        Assert.Equal(stops ? 1 : 0, answers.Verdict.Value.Held.Count(v => v.Decision == KindDecision.OtherSeed));
        Assert.Equal(AnswerState.Given, answers.Seed.State);
        Assert.DoesNotContain(answers.Seed.Value.Kinds, k => stops && k.Planned.Offer.Item.IsTreated);
        Assert.Equal(stops, answers.Questions.Any(q => q.Code == SeedCodes.AskUntreated));
        Assert.Equal(stops, answers.Findings.Any(f => f.Code == SeedCodes.TreatedOnSurface));
        Assert.Contains(answers.Findings, f => f.Code == SeedCodes.Treated);
        string sheet = FieldSheet.Of(answers).ToText(FieldSheetWriting.UsualWidth);
        Assert.Equal(stops, sheet.Contains("Not this lot.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1, false)]
    [InlineData(3, true)]
    public void On_a_worked_bed_large_seed_is_covered_and_small_seed_lies_open(int lot, bool stops)
    {
        var answers = Solve("fall-blend", plan => EditedPlan.Set(plan, $"materials.seedLots.{lot}.treated", true));
        Assert.Equal(stops, answers.Verdict.Value.Held.Any(v => v.Reasons.Any(r => r.Code == SeedCodes.TreatedOnSurface)));
    }
}
