using System.Collections.Immutable;
using System.Text.Json.Nodes;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Mistakes of sense, each at its field, and all mistakes at once.</summary>
public class PlanSenseTests
{
    private static void Acres(JsonNode plan, double acres)
    {
        plan["plot"]!.AsObject().Remove("sides");
        EditedPlan.Set(plan, "plot.area", FormattableString.Invariant($"{acres} ac"));
    }

    private static ImmutableArray<PlanProblem> Of(Action<JsonNode> change)
    {
        string json = EditedPlan.Of("fall-blend", change);
        return PlanSense.Of(PlanFile.Read(json).Plan!, json);
    }

    [Theory]
    [InlineData("fall-blend")]
    [InlineData("frost-seeding")]
    [InlineData("clover-lots")]
    [InlineData("store-blend")]
    public void The_demo_plans_make_sense(string demo)
    {
        string json = File.ReadAllText(Repository.PathOf($"samples/data/{demo}.json"));
        Assert.Empty(PlanSense.Of(PlanFile.Read(json).Plan!, json));
    }

    [Fact]
    public void Four_hundred_acres_are_told_at_the_area()
    {
        var problem = Assert.Single(Of(plan => Acres(plan, 420)));
        Assert.Equal("$.plot.area", problem.Path);
        Assert.True(problem.Line > 1);
    }

    [Fact]
    public void A_day_out_of_season_is_told_at_the_planting_date() =>
        Assert.Contains(
            Of(plan =>
            {
                EditedPlan.Set(plan, "plantingDate", "2026-12-24");
                EditedPlan.Set(plan, "plot.place", "North Carolina");
            }),
            p => p.Path == "$.plantingDate");

    [Fact]
    public void A_water_pH_that_contradicts_the_buffer_is_told_at_the_pH() =>
        Assert.Contains(
            Of(plan => EditedPlan.Set(plan, "soilReport.buffer", new JsonObject { ["name"] = "Mehlich", ["ph"] = 4.6 })),
            p => p.Path == "$.soilReport.waterPh");

    [Fact]
    public void Mistakes_of_form_and_of_sense_are_told_in_one_reading()
    {
        var problems = PlanFile.Read(EditedPlan.Of("fall-blend", plan =>
        {
            Acres(plan, 420);
            EditedPlan.Set(plan, "growing.kinds.0", new JsonObject { ["kind"] = "crimson clover", ["rate"] = "10 lb" });
        })).Problems;
        Assert.Contains(problems, p => p.Path == "$.plot.area");
        Assert.Contains(problems, p => p.Text.Contains("a rate needs 'rateIs'", StringComparison.Ordinal));
        Assert.Contains(problems, p => p.Path.EndsWith(".rate", StringComparison.Ordinal) && !p.Text.Contains("rateIs", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_row_names_a_finding_and_fields_of_a_plan()
    {
        string schema = PlanSchema.ToJson();
        foreach (var row in CsvTable.Embedded("PlanFiles/Data/sense.csv").Rows)
        {
            Assert.Contains(row.Text("code"), FindingCatalog.Codes);
            Assert.All(row.List("fields").SelectMany(f => f.Split('.')), name => Assert.Contains($"\"{name}\"", schema, StringComparison.Ordinal));
        }
    }
}
