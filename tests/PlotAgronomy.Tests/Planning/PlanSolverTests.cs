using PlotAgronomy.Tests.SampleConsole;

namespace PlotAgronomy.Tests.Planning;

/// <summary>Solving a plan makes numbers; words are made by the sheet.</summary>
public class PlanSolverTests
{
    private const int Calls = 50;
    private const int MostBytes = 1_300_000;

    private static PlotPlan Demo => PlanFile.Read(File.ReadAllText(ConsoleTests.Data("frost-seeding.json"))).Plan!;

    [Fact]
    public void A_solved_plan_without_text_allocates_little()
    {
        var plan = Demo;
        var results = plan.Solve();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < Calls; i++)
        {
            results = plan.Solve();
        }

        long each = (GC.GetAllocatedBytesForCurrentThread() - before) / Calls;
        Assert.InRange(each, 1, MostBytes);
        GC.KeepAlive(results);
    }

    [Fact]
    public void What_is_to_be_said_is_said_anew_each_time_it_is_asked_for()
    {
        var results = Demo.Solve();
        Assert.Equal(results.Lime.Findings.Select(f => f.Text), results.Lime.Findings.Select(f => f.Text));
        Assert.Equal(results.ReportFindings.Select(f => f.Text), results.ReportFindings.Select(f => f.Text));
        Assert.EndsWith(".", results.Lime.TargetReason, StringComparison.Ordinal);
    }
}
