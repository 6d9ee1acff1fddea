using System.Text.Json.Nodes;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>A field that may be left out may also say that nothing is stated; and the fields of what some reports print.</summary>
public class NotStatedTests
{
    private static PlotPlan Read(Action<JsonNode> change)
    {
        string json = EditedPlan.Of("fall-blend", change);
        var read = PlanFile.Read(json);
        Assert.Empty(read.Problems.Select(p => p.ToString()));
        Assert.True(PlanSchemaTests.IsValid(json));
        return read.Plan!;
    }

    private static JsonNode Report(JsonNode plan) => plan["soilReport"]!;

    [Fact]
    public void Not_stated_is_the_same_as_left_out()
    {
        string[] fields = ["plantingDate", "limeDate", "method", "currency", "tillageDepth"];
        var said = Read(plan => Array.ForEach(fields, f => plan[f] = "not stated"));
        var leftOut = Read(plan => Array.ForEach(fields, f => plan.AsObject().Remove(f)));
        foreach (var plan in new[] { said, leftOut })
        {
            Assert.Null(plan.PlantingDate);
            Assert.Null(plan.LimeDate);
            Assert.Null(plan.Method);
            Assert.Null(plan.TillageDepth);
            Assert.Same(Currency.Unnamed, plan.Currency);
        }
    }

    [Fact]
    public void What_is_required_cannot_be_not_stated() =>
        Assert.NotEmpty(PlanFile.Read(EditedPlan.With("fall-blend", "planVersion", "\"not stated\"")).Problems);

    [Fact]
    public void A_report_may_print_nothing_but_a_recommendation()
    {
        var plan = Read(p =>
        {
            p["soilReport"] = JsonNode.Parse("""{ "recommendation": { "lime": { "rate": "2 ton/ac" }, "nitrogen": "60 lb/ac" } }""");
            p.AsObject().Remove("methods");
        });
        Assert.Null(plan.Printed!.Lime!.Basis);
        Assert.Null(plan.Printed.Lime.Institution);
        Assert.Null(plan.LimeMethod);
        Assert.Null(plan.NutrientSystem);
        Assert.Equal(60, plan.Printed.Nitrogen!.Value.PoundsPerAcre);
        Same(plan);
    }

    [Fact]
    public void No_report_is_no_report()
    {
        var plan = Read(p => p.AsObject().Remove("soilReport"));
        Assert.Null(plan.Report);
        Assert.Null(plan.Printed);
        Same(plan);
    }

    [Fact]
    public void Salt_ph_capacity_and_two_buffers_are_fields_of_a_report()
    {
        var plan = Read(p =>
        {
            var report = Report(p);
            report["saltPh"] = 5.1;
            report["limeBufferCapacity"] = JsonNode.Parse("""{ "value": 150, "afterThirtyMinutes": true }""");
            report["buffer"] = JsonNode.Parse("""{ "name": "SMP", "ph": 6.4 }""");
            report["secondBuffer"] = JsonNode.Parse("""{ "name": "not stated", "ph": 6.2 }""");
            p["homePh"] = JsonNode.Parse("""{ "ph": 5.5, "error": 0.3 }""");
        });
        Assert.Equal(5.1, plan.Report!.SaltPh!.Value);
        Assert.Equal(150, plan.Report.LimeBufferCapacity!.Value.ThirtyMinutes);
        Assert.Equal([SoilBuffer.Smp], plan.Report.BufferPhs.Select(b => b.Buffer));
        Assert.Equal(6.2, plan.Report.UnnamedBufferPh);
        Assert.Equal(0.3, plan.HomePh!.Error);
        Same(plan);
    }

    [Theory]
    [InlineData("weeds", GroundCover.Weeds), InlineData("grass-sod", GroundCover.GrassSod), InlineData("brush", GroundCover.Brush)]
    public void What_stands_there_may_be_what_nobody_sowed(string word, GroundCover cover) =>
        Assert.Equal(cover, Read(p => p["plot"]!["standsNow"] = new JsonObject { ["cover"] = word }).Plot.Cover);

    [Fact]
    public void Earlier_lime_needs_the_day_of_sampling()
    {
        string json = EditedPlan.Of("fall-blend", p =>
        {
            Report(p).AsObject().Remove("sampled");
            Report(p)["earlierLime"] = JsonNode.Parse("""{ "rate": "1 ton/ac", "spread": "2025-10-01" }""");
        });
        Assert.Contains("'sampled' is missing", Assert.Single(PlanFile.Read(json).Problems).Text, StringComparison.Ordinal);
    }

    private static void Same(PlotPlan plan) => Assert.Equal(PlanFile.Write(plan), PlanFile.Write(PlanFile.Read(PlanFile.Write(plan)).Plan!));
}
