using System.Text.Json.Nodes;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>Lime on the field sheet: the printed rate first, a careful start on sand, nothing that is no lime.</summary>
public class LimeSheetTests
{
    private static FieldSheet Sheet(string demo, Action<JsonNode> change)
    {
        var plan = JsonNode.Parse(File.ReadAllText(Repository.PathOf($"samples/data/{demo}.json")))!;
        change(plan);
        var reading = PlanFile.Read(plan.ToJsonString());
        Assert.Empty(reading.Problems);
        return FieldSheet.Of(reading.Plan!.Solve());
    }

    private static void Print(JsonNode plan, string rate, double targetPh, string? institution)
    {
        var recommendation = plan["soilReport"]!["recommendation"] ??= new JsonObject { ["crop"] = "clover plot" };
        recommendation["lime"] = new JsonObject { ["rate"] = rate, ["basis"] = "ag-lime-nv-90", ["targetPh"] = targetPh, ["depth"] = "8 in" };
        if (institution is not null)
        {
            recommendation["lime"]!["institution"] = institution;
        }
    }

    private static bool Has(FieldSheet sheet, string code) => sheet.Findings.Any(f => f.Code == code);

    [Theory]
    // Tri-state E-2567 (1995, memory) by hand at index 66 to pH 6.0: 49.3 - 0.71 x 66 = 2.44; 1.73 to 3.15 with the reading off by 0.1.
    [InlineData("2.4 ton/ac", false)]
    [InlineData("3.1 ton/ac", false)]
    [InlineData("4 ton/ac", true)]
    public void A_printed_rate_is_ordered_and_held_against_the_method(string rate, bool differs)
    {
        var sheet = Sheet("frost-seeding", plan => { Report(plan, 5.5, 6.6); Print(plan, rate, 6.0, "Ohio/Indiana/Michigan 1995"); });
        Assert.Contains(sheet.Figures, f => f.Label == "printed by the laboratory, used first");
        Assert.Contains(sheet.Figures, f => f.Label.StartsWith("beside it, by Tri-State 1995", StringComparison.Ordinal) && f.Value.StartsWith("2.44 ton/ac", StringComparison.Ordinal));
        Assert.Equal(differs, Has(sheet, "lime-printed-differs"));
        Assert.False(Has(sheet, "lime-institution-mixed"));
    }

    [Theory]
    [InlineData("North Carolina"), InlineData("north-carolina"), InlineData("North Carolina Department of Agriculture and Consumer Services")]
    public void Earlier_lime_is_taken_off_a_printed_rate_by_the_rule_of_its_institution(string institution)
    {
        // North Carolina: 1 ton less 0.5 ton x (1 - 0.08 x 5 months) = 0.7; at 6 of 6 2/3 inches 0.63; label 2,080 lb: 0.6552 ton/ac = 1,310 lb/ac.
        var sheet = Sheet("fall-blend", plan =>
        {
            Print(plan, "1 ton/ac", 6.0, institution);
            plan["soilReport"]!["recommendation"]!["lime"]!["basis"] = "north-carolina-standard";
            plan["soilReport"]!["recommendation"]!["lime"]!["depth"] = "6.6666666666666667 in";
            plan["soilReport"]!["sampled"] = "2026-03-14";
            plan["soilReport"]!["earlierLime"] = new JsonObject { ["rate"] = "0.5 ton/ac", ["spread"] = "2025-10-13" };
        });
        var figure = sheet.Figures.Single(f => f.Label == "spread on the plot");
        Assert.Contains("1,310 lb/ac", figure.Value, StringComparison.Ordinal);
        Assert.Contains(figure.ShowWork(), l => l.Label == "Earlier lime taken off");
    }

    [Fact]
    public void An_institution_nobody_knows_is_a_placed_problem()
    {
        var plan = JsonNode.Parse(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json")))!;
        Print(plan, "1 ton/ac", 6.0, "North Carolna");
        var problem = Assert.Single(PlanFile.Read(plan.ToJsonString()).Problems);
        Assert.Equal("$.soilReport.recommendation.lime.institution", problem.Path);
        Assert.Contains("north-carolina", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_printed_rate_of_the_laboratory_alone_is_a_mixture()
    {
        var sheet = Sheet("frost-seeding", plan => { Report(plan, 5.5, 6.6); Print(plan, "2.4 ton/ac", 6.2, null); });
        Assert.True(Has(sheet, "lime-institution-mixed"));
        Assert.True(Has(sheet, "lime-printed-other-target"));
        Assert.DoesNotContain(sheet.Figures, f => f.Label.StartsWith("beside it", StringComparison.Ordinal));
    }

    /// <summary>Practice: the buffer's own answer stands on sand, and the rule for such soil is a limit to it only.</summary>
    [Fact]
    public void C23_sand_keeps_the_methods_own_answer_up_to_a_careful_first_dressing()
    {
        FieldSheet Of(double buffer) => Sheet("frost-seeding", plan =>
        {
            Report(plan, 5.4, buffer);
            plan["soilReport"]!["cec"]!["value"] = 4;
            plan["methods"]!["targetPh"] = 6.5;
            plan["plot"]!.AsObject().Remove("sides");
            plan["plot"]!["area"] = "0.25 ac";
        });
        var none = Of(6.9);
        Assert.Contains(none.Figures, f => f.Label == "by Tri-State 1995, SMP buffer" && f.Value == "no lime");
        Assert.DoesNotContain(none.Figures, f => f.Label.StartsWith("spread on", StringComparison.Ordinal) || f.Label.StartsWith("weakly", StringComparison.Ordinal));
        // 60.4 - 0.87 x 62 = 6.46 ton for 8 in, half of it on the surface: 1 ton/ac at first, 500 lb of lime of 90 % on a quarter acre.
        var much = Of(6.2);
        Assert.Contains(much.Figures, f => f.Label.StartsWith("weakly buffered soil", StringComparison.Ordinal) && f.Value.Contains("12 months", StringComparison.Ordinal));
        double pounds = much.Figures.Single(f => f.Label == "spread on the plot").Amount!.Value!.Value;
        Assert.InRange(pounds, 450, 500);
        Assert.True(Has(much, "lime-weakly-buffered-capped"));
        Assert.DoesNotContain(much.Findings, f => f.Text.Contains("Adams-Evans", StringComparison.Ordinal));
    }

    [Fact]
    public void Gypsum_among_the_limes_is_left_out_aloud()
    {
        var sheet = Sheet("frost-seeding", plan =>
        {
            Report(plan, 5.5, 6.6);
            plan["materials"]!["lime"]!.AsArray().Insert(0, new JsonObject { ["name"] = "garden gypsum", ["form"] = "gypsum", ["cce"] = 0, ["package"] = "40 lb", ["price"] = 1 });
        });
        Assert.Contains("garden gypsum", sheet.Findings.Single(f => f.Code == "lime-offer-not-lime").Text, StringComparison.Ordinal);
        Assert.Contains(sheet.Figures, f => f.Label == "spread on the plot" && f.Value.Contains("ground limestone", StringComparison.Ordinal));
    }

    [Fact]
    public void A_dealers_figure_meets_a_rate_in_the_same_terms()
    {
        // Minnesota's food-plot page: 2,500 lb ENP at buffer 6.5; as lime of ENP 1,800 that is 2,778 lb/ac.
        var sheet = Sheet("frost-seeding", plan =>
        {
            Report(plan, 5.5, 6.5);
            plan["methods"]!["lime"] = "minnesota-food-plot-east";
            plan["method"] = "tilled-and-packed";
            plan["materials"]!["lime"]![0]!["labelFigures"] = new JsonArray(new JsonObject { ["index"] = "minnesota-enp", ["value"] = 1800 });
        });
        Assert.Contains(sheet.Figures, f => f.Label == "spread on the plot" && f.Value.Contains("2,778 lb/ac", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2026-08-30", true)]
    [InlineData("2026-08-29", false)]
    public void Lime_within_two_weeks_of_ammonium_is_questioned(string limed, bool questioned) =>
        Assert.Equal(questioned, Has(Sheet("fall-blend", plan => plan["limeDate"] = limed), "lime-with-nitrogen"));

    [Fact]
    public void Later_dressings_stand_on_the_sheet_with_their_days()
    {
        var sheet = Sheet("frost-seeding", plan => { Report(plan, 4.9, 5.5); plan["methods"]!["lime"] = "oregon-em9057-smp"; plan["materials"]!["lime"]![0]!["labelFigures"] = new JsonArray(new JsonObject { ["index"] = "oregon-score", ["value"] = 90 }); });
        var steps = sheet.Sections.Single(s => s.Heading == "Lime").Blocks.OfType<SheetSteps>().Single().Steps;
        Assert.True(steps.Length > 1);
        Assert.StartsWith("2027-10-10", steps[1], StringComparison.Ordinal);
        Assert.Contains(sheet.Sections.SelectMany(s => s.Blocks).OfType<SheetSteps>().SelectMany(s => s.Steps), s => s.Contains("Spread the lime, dressing 1, on the surface", StringComparison.Ordinal));
    }

    private static void Report(JsonNode plan, double waterPh, double bufferPh)
    {
        plan["soilReport"]!["waterPh"] = waterPh;
        plan["soilReport"]!["buffer"]!["ph"] = bufferPh;
        plan["methods"]!["targetPh"] = 6.0;
    }
}
