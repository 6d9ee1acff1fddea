using PlotAgronomy.Tests.SampleConsole;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>Solving a plan makes numbers; words are made by the sheet.</summary>
public class PlanSolverTests
{
    private const int MostBytes = 1_300_000;

    private static PlotPlan Demo => PlanFile.Read(File.ReadAllText(ConsoleTests.Data("frost-seeding.json"))).Plan!;

    [Fact]
    public void A_solved_plan_without_text_allocates_little()
    {
        var plan = Demo;
        Assert.InRange(Allocations.BytesOf(() => plan.Solve()), 1, MostBytes);
    }

    [Fact]
    public void What_is_to_be_said_is_said_anew_each_time_it_is_asked_for()
    {
        var results = Demo.Solve();
        Assert.Equal(results.Lime.Value.Findings.Select(f => f.Text), results.Lime.Value.Findings.Select(f => f.Text));
        Assert.Equal(results.Soil.Value.ReportFindings.Select(f => f.Text), results.Soil.Value.ReportFindings.Select(f => f.Text));
        Assert.EndsWith(".", results.Lime.Value.TargetReason, StringComparison.Ordinal);
    }

    [Fact]
    public void More_runs_of_a_kind_make_a_gate_table_and_change_nothing_on_the_sheet()
    {
        string text = File.ReadAllText(ConsoleTests.Data("fall-blend.json")).Replace("\"waterPh\": 5.6", "\"waterPh\": 5.9", StringComparison.Ordinal);
        const string LastRun = "\"distance\": \"200 ft\", \"time\": \"50 s\" }";
        const string Another =
            ", { \"kind\": \"crimson clover\", \"gate\": 3, \"weighed\": \"0.9 lb\", \"distance\": \"200 ft\", \"time\": \"50 s\" }";
        Assert.Contains(LastRun, text, StringComparison.Ordinal);
        var one = PlanFile.Read(text).Plan!;
        var two = PlanFile.Read(text.Replace(LastRun, LastRun + Another, StringComparison.Ordinal)).Plan!;
        Assert.DoesNotContain(one.Solve().Spreading.Value.Passes, p => p.Setup.Gates is not null);
        var table = Assert.Single(two.Solve().Spreading.Value.Passes, p => p.Setup.Gates is not null).Setup.Gates!;
        Assert.Equal([2.0, 3], table.Points.Select(p => p.Setting));
        Assert.Equal(Words(one), Words(two));
    }

    private static IEnumerable<string> Words(PlotPlan plan)
    {
        var sheet = FieldSheet.Of(plan.Solve());
        return sheet.Figures.SelectMany(f => f.ShowWork().Select(l => $"{f.Code} {f.Label} {f.Value} {l}"))
            .Concat(sheet.Findings.Select(f => f.ToString()));
    }
}
