using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Whatever a person types has a limit, just inside it is taken, just beyond it is a mistake with its place. Practice.</summary>
public class PlanLimitTests
{
    public static TheoryData<string, string, string> Limits => new()
    {
        { "spreader.swath", "\"100000 ft\"", "\"100001 ft\"" },
        { "spreader.measuredRuns.0.weighed", "\"5000 ton\"", "\"5001 ton\"" },
        { "spreader.measuredRuns.0.gate", "1000", "1000.5" },
        { "materials.lime.0.cce", "185", "186" },
        { "materials.lime.0.price", "1000000", "1000000.5" },
    };

    [Theory, MemberData(nameof(Limits))]
    public void A_limit_is_taken_and_what_lies_beyond_is_a_mistake(string path, string inside, string beyond)
    {
        Assert.DoesNotContain(PlanFile.Read(EditedPlan.With("fall-blend", path, inside)).Problems, p => p.Text.Contains("at most", StringComparison.Ordinal) || p.Text.Contains("from 0 to", StringComparison.Ordinal));
        var problem = Assert.Single(PlanFile.Read(EditedPlan.With("fall-blend", path, beyond)).Problems);
        Assert.EndsWith(path.Split('.')[^1], problem.Path, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_and_a_list_have_a_length()
    {
        Assert.Empty(PlanFile.Read(EditedPlan.With("fall-blend", "plot.name", $"\"{new string('a', 500)}\"")).Problems);
        Assert.Contains("500 characters", Assert.Single(PlanFile.Read(EditedPlan.With("fall-blend", "plot.name", $"\"{new string('a', 501)}\"")).Problems).Text, StringComparison.Ordinal);
        string fixes = string.Join(",", Enumerable.Repeat("[45, -93]", 10_001));
        string many = EditedPlan.Of("fall-blend", plan =>
        {
            plan["plot"]!.AsObject().Remove("sides");
            plan["plot"]!["outline"] = System.Text.Json.Nodes.JsonNode.Parse($"[{fixes}]");
        });
        Assert.Contains(PlanFile.Read(many).Problems, p => p.Text.Contains("10,000 items", StringComparison.Ordinal));
    }

    // A quarter of a quarter section is 40 acres.
    [Theory]
    [InlineData("area", "\"40 ac\"", false)]
    [InlineData("area", "\"40.1 ac\"", true)]
    [InlineData("area", "\"420 ac\"", true)]
    [InlineData("area", "\"26000 ac\"", true)]
    [InlineData("sides", """{ "shape": "rectangle", "length": "4200 ft", "width": "4200 ft" }""", true)]
    [InlineData("outline", "[[45, -93], [45, -92.98], [45.02, -92.98], [45.02, -93]]", true)]
    public void An_area_larger_than_a_food_plot_is_asked_about_however_it_was_given(string field, string json, bool asked)
    {
        string text = EditedPlan.Of("fall-blend", plan =>
        {
            plan["plot"]!.AsObject().Remove("sides");
            plan["plot"]![field] = System.Text.Json.Nodes.JsonNode.Parse(json);
        });
        var answers = PlanFile.Read(text).Plan!.Solve();
        Assert.Equal(asked, answers.Findings.Any(f => f.Code == "land-area-large"));
    }

    [Fact]
    public void A_long_line_is_read_as_fast_as_many()
    {
        // 9,000 wrong lots on one line: each mistake told has its column, and of very many only the first are told.
        string line = "{\"planVersion\":1,\"materials\":{\"seedLots\":[" + string.Join(",", Enumerable.Repeat("{\"label\":7,\"price\":\"x\"}", 9_000)) + "]}}";
        var watch = System.Diagnostics.Stopwatch.StartNew();
        var problems = PlanFile.Read(line).Problems;
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 30);
        Assert.Contains(problems, p => p.Column > 200_000);
    }
}
