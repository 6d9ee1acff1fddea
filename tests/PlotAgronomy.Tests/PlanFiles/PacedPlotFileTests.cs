using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>The plot as it was paced: sides and diagonals, pieces, and an outline in a file of its own.</summary>
public class PacedPlotFileTests
{
    private const string FiveSides = """{ "shape": "sides-and-diagonals", "around": ["57 paces", "34 paces", "43 paces", "45 paces", "30 paces"], "diagonals": ["73 paces", "64 paces"] }""";

    private static string Plan(string sides, string? pace = "\"100 ft in 40 paces\"") =>
        EditedPlan.Of("fall-blend", plan =>
        {
            EditedPlan.Set(plan, "plot.sides", System.Text.Json.Nodes.JsonNode.Parse(sides));
            if (pace is not null)
            {
                EditedPlan.Set(plan, "pace", System.Text.Json.Nodes.JsonNode.Parse(pace));
            }
        });

    private static PlotPlan Read(string json)
    {
        var reading = PlanFile.Read(json);
        Assert.True(reading.Problems.IsEmpty, string.Join('\n', reading.Problems));
        return reading.Plan!;
    }

    /// <summary>Source: hand algebra, 0.418 ac (see the tests of the plot's area).</summary>
    [Fact]
    public void Five_paced_sides_have_a_shape_that_passes_are_planned_over()
    {
        var plan = Read(Plan(FiveSides));
        Assert.Equal(0.418, plan.Plot.Area.Acres, 0.0005);
        Assert.All(plan.Solve().Spreading.Value.Passes, p => Assert.Equal(AnswerState.Given, p.Laid.State));
        Assert.Contains(plan.Solve().Findings, f => f.Code == "land-pace-single-walk");
    }

    [Theory]
    [InlineData("\"100 ft in 40 paces\"")]
    [InlineData("\"2.5 ft\"")]
    [InlineData("\"300 ft in 118, 120 and 122 paces\"")]
    public void What_was_paced_is_written_in_paces_and_reads_back_to_the_last_bit(string pace)
    {
        var plan = Read(Plan(FiveSides, pace));
        string written = PlanFile.Write(plan);
        Assert.Contains("\"57 paces\"", written, StringComparison.Ordinal);
        Assert.Null(Difference.Between(plan, Read(written)));
        Assert.True(PlanSchemaTests.IsValid(written));
    }

    [Fact]
    public void Paces_without_their_length_are_a_question()
    {
        var problems = PlanFile.Read(Plan(FiveSides, null)).Problems;
        Assert.Equal(7, problems.Length);
        Assert.Contains("how long is a pace?", problems[0].Text, StringComparison.Ordinal);
        Assert.Equal("$.plot.sides.around[0]", problems[0].Path);
    }

    [Fact]
    public void A_pace_that_cannot_be_read_is_told_once()
    {
        var problem = Assert.Single(PlanFile.Read(Plan(FiveSides, "\"40 paces\"")).Problems);
        Assert.Equal("$.pace", problem.Path);
    }

    [Fact]
    public void A_diagonal_that_does_not_close_is_placed_at_that_diagonal()
    {
        var problem = Assert.Single(PlanFile.Read(Plan(FiveSides.Replace("64 paces", "640 paces", StringComparison.Ordinal))).Problems.Take(1));
        Assert.Equal("$.plot.sides.diagonals[1]", problem.Path);
        Assert.Contains("the diagonal to corner 4 of 640 paces", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_diagonal_that_is_missing_is_asked_for()
    {
        var problem = Assert.Single(PlanFile.Read(Plan(FiveSides.Replace(", \"64 paces\"", "", StringComparison.Ordinal))).Problems);
        Assert.Contains("5 sides need 2 diagonals", problem.Text, StringComparison.Ordinal);
    }

    /// <summary>Source: hand algebra, (200 x 120 - 80 x 50) / 43,560 ac.</summary>
    [Fact]
    public void An_L_is_typed_by_what_is_missing()
    {
        var plan = Read(Plan("""{ "shape": "l-shape", "length": "200 ft", "width": "120 ft", "missingLength": "80 ft", "missingWidth": "50 ft" }"""));
        Assert.Equal(20_000 / 43_560.0, plan.Plot.Area.Acres, 1e-9);
        Assert.Null(Difference.Between(plan, Read(PlanFile.Write(plan))));
    }

    /// <summary>Source: hand algebra. 60 x 40 paces less a circle of 4 paces, at 2.5 ft: 15,000 - 314.16 ft2.</summary>
    [Fact]
    public void Pieces_are_added_and_taken_off()
    {
        string json = EditedPlan.Of("fall-blend", plan =>
        {
            var plot = plan["plot"]!.AsObject();
            plot.Remove("sides");
            EditedPlan.Set(plan, "pace", "2.5 ft");
            plot["pieces"] = System.Text.Json.Nodes.JsonNode.Parse("""
                [ { "add": { "shape": "rectangle", "length": "60 paces", "width": "40 paces" } },
                  { "takeOff": { "shape": "circle", "radius": "4 paces" } } ]
                """);
        });
        var plan = Read(json);
        Assert.Equal(14_685.84, plan.Plot.Area.SquareFeet, 0.01);
        Assert.Null(Difference.Between(plan, Read(PlanFile.Write(plan))));
        Assert.Contains(plan.Solve().Questions, q => q.Code == "land-ask-outline");
        var both = Assert.Single(PlanFile.Read(json.Replace("\"takeOff\": {", "\"add\": { \"shape\": \"circle\", \"radius\": \"3 ft\" }, \"takeOff\": {", StringComparison.Ordinal)).Problems);
        Assert.Contains("exactly one of add, takeOff", both.Text, StringComparison.Ordinal);
    }

    private static string WithOutlineFile(string name = "walk.csv") =>
        EditedPlan.Of("fall-blend", plan =>
        {
            plan["plot"]!.AsObject().Remove("sides");
            plan["plot"]!["outlineFile"] = name;
        });

    private const string Corners = "latitude,longitude\n35.7800,-79.0100\n35.7805,-79.0100\n35.7805,-79.0108\n35.7800,-79.0108\n";

    [Fact]
    public void An_outline_is_taken_from_a_file_that_the_caller_opens()
    {
        var reading = PlanFile.Read(WithOutlineFile(), name => name == "walk.csv" ? Corners : null);
        Assert.True(reading.Problems.IsEmpty, string.Join('\n', reading.Problems));
        Assert.NotNull(reading.Plan!.Plot.Measured.Outline!.Origin);
        Assert.Contains("\"outline\"", PlanFile.Write(reading.Plan), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gone.csv", "cannot be opened")]
    [InlineData("broken.csv", "line 2")]
    public void A_file_that_is_not_there_or_broken_is_a_placed_problem(string name, string says)
    {
        var problem = Assert.Single(PlanFile.Read(WithOutlineFile(name), n => n == "broken.csv" ? "latitude,longitude\nnorth,west\n" : null).Problems);
        Assert.Equal("$.plot.outlineFile", problem.Path);
        Assert.Contains(says, problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_way_to_open_files_a_named_one_is_a_placed_problem()
    {
        var problem = Assert.Single(PlanFile.Read(WithOutlineFile()).Problems);
        Assert.Equal("$.plot.outlineFile", problem.Path);
    }
}
