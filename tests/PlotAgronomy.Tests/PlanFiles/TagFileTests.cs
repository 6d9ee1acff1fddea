using System.Text.Json.Nodes;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Lots as their tags stand, every line of a tag, and seed without a tag.</summary>
public class TagFileTests
{
    private static PlanReadResult WithLot(string lot) =>
        PlanFile.Read(EditedPlan.Of("clover-lots", plan => plan["materials"]!["seedLots"] = new JsonArray(JsonNode.Parse(lot))));

    private static PlotPlan Read(string lot)
    {
        var reading = WithLot(lot);
        Assert.True(reading.Problems.IsEmpty, string.Join('\n', reading.Problems));
        return reading.Plan!;
    }

    private static string KindOf() => PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/clover-lots.json"))).Plan!.Kinds[0].Kind.CommonName;

    private static string Tag => $$"""
        { "tag": ["Kind: {{KindOf()}}", "Lot: QX-7", "Pure seed 64.50 %", "Other crop 0.35 %", "Inert matter 35.00 %", "Coating 34.00 %", "Weed seed 0.15 %", "Germination 80 %", "Hard seed 6 %", "Test date 6/26", "Noxious weed seeds: 18 dodder per lb"],
          "package": "25 lb", "price": 60 }
        """;

    [Fact]
    public void Nothing_on_a_tag_is_lost()
    {
        var plan = Read(Tag);
        var lot = plan.SeedOffers[0].Item;
        Assert.Equal("QX-7", lot.Label);
        Assert.Equal(64.5, lot.Analysis.PureSeed.Percent, 1e-9);
        Assert.Equal(34, lot.Analysis.Coating.Percent, 1e-9);
        Assert.Equal(0.35, lot.OtherCrop!.Value.Percent, 1e-9);
        Assert.Equal(35, lot.Inert!.Value.Percent, 1e-9);
        Assert.Equal(0.15, lot.Weed!.Value.Percent, 1e-9);
        Assert.Equal("dodder", Assert.Single(lot.Noxious).Name);
        Assert.Equal(TestMonth.FromYearAndMonth(2026, 6), lot.TestMonth);
        Assert.Contains(lot.Cautions(SowingMethod.Broadcast), f => f.Code == "seed-noxious");
        string written = PlanFile.Write(plan);
        Assert.Null(Difference.Between(plan, PlanFile.Read(written).Plan));
        Assert.True(PlanSchemaTests.IsValid(written));
    }

    [Fact]
    public void What_was_assumed_in_reading_a_tag_is_told() =>
        Assert.Contains(WithLot(Tag).Taken, t => t.Path == "$.materials.seedLots[0].tag");

    [Fact]
    public void A_problem_of_a_tag_stands_at_its_line()
    {
        var reading = WithLot(Tag.Replace("Germination 80 %", "Germination 180 %", StringComparison.Ordinal));
        Assert.Contains(reading.Problems, p => p.Path == "$.materials.seedLots[0].tag[7]");
    }

    [Fact]
    public void What_the_tag_says_is_not_said_again()
    {
        var problem = Assert.Single(WithLot(Tag.Replace("\"package\"", "\"pureSeed\": \"64 %\", \"package\"", StringComparison.Ordinal)).Problems);
        Assert.Equal("$.materials.seedLots[0].pureSeed", problem.Path);
    }

    /// <summary>Source: practice. Weed 0.15, other crop 0.35, coating 35, purity 60.0: the parts sum to 95.5, and 4.5 is
    /// missing.</summary>
    [Fact]
    public void C39_the_missing_part_of_a_tag_is_named()
    {
        string lot(string pure) => $$"""{ "kind": "{{KindOf()}}", "pureSeed": "{{pure}}", "germination": "90 %", "coating": "35 %", "otherCrop": "0.35 %", "weed": "0.15 %", "tested": "6/26", "package": "25 lb", "price": 60 }""";
        var (expected, _) = PracticeCase.Expected("C39", "unexplained");
        var missing = Assert.Single(Read(lot("60 %")).SeedOffers[0].Item.Cautions(SowingMethod.Broadcast), f => f.Code == "seed-tag-part-missing");
        Assert.Contains(Amounts.Print(expected, 2), missing.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Read(lot("64.5 %")).SeedOffers[0].Item.Cautions(SowingMethod.Broadcast), f => f.Code.StartsWith("seed-tag", StringComparison.Ordinal));
    }

    [Fact]
    public void Pure_seed_alone_is_no_sum_to_check() =>
        Assert.DoesNotContain(
            Read($$"""{ "kind": "{{KindOf()}}", "pureSeed": "60 %", "germination": "90 %", "tested": "6/26", "package": "25 lb", "price": 60 }""").SeedOffers[0].Item.Cautions(SowingMethod.Broadcast),
            f => f.Code.StartsWith("seed-tag", StringComparison.Ordinal));

    [Fact]
    public void Seed_without_a_tag_asks_for_a_home_test_and_is_weighed_in_cases_only()
    {
        var plan = Read($$"""{ "kind": "{{KindOf()}}", "untagged": true, "package": "50 lb", "price": 20 }""");
        var seed = plan.Solve().Seed;
        Assert.Equal(AnswerState.Open, seed.State);
        var question = Assert.Single(seed.Questions, q => q.Code == "seed-ask-home-test");
        Assert.Equal(["50 %", "70 %", "90 %"], question.PlausibleTexts);
        Assert.Equal(3, seed.Cases.Length);
        double[] pounds = [.. seed.Cases.Select(c => c.Value.Kinds[0].Weight.Pounds)];
        Assert.True(pounds[0] > pounds[1] && pounds[1] > pounds[2]);
        Assert.Null(Difference.Between(plan, PlanFile.Read(PlanFile.Write(plan)).Plan));
    }

    [Fact]
    public void A_lot_needs_its_kind_and_its_figures()
    {
        Assert.Contains("'pureSeed' is missing", Assert.Single(WithLot($$"""{ "kind": "{{KindOf()}}", "germination": "90 %", "package": "25 lb", "price": 60 }""").Problems).Text, StringComparison.Ordinal);
        Assert.Contains("'kind' is missing", Assert.Single(WithLot("""{ "pureSeed": "98 %", "germination": "90 %", "package": "25 lb", "price": 60 }""").Problems).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_without_its_month_of_test_is_planned_and_asked_about() =>
        Assert.Contains(
            Read($$"""{ "kind": "{{KindOf()}}", "pureSeed": "98 %", "germination": "90 %", "package": "25 lb", "price": 60 }""").Solve().Seed.Questions,
            q => q.Code == "seed-ask-test-month");
}
