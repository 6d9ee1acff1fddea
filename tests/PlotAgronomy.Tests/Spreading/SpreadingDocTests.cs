using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class SpreadingDocTests
{
    [Fact]
    public void The_example_of_the_page_is_current() =>
        DocExample.AssertCurrent("docs/spreading.md", "tests/PlotAgronomy.Tests/Spreading/SpreadingDocTests.cs", Example);

    private static void Example(TextWriter output)
    {
        // begin example
        // Three kinds for a quarter acre: which may share the hopper?
        var catalog = KindCatalog.Standard;
        var plan = SizeGrouping.Arrange([
            PassKind.FromKind(catalog.Find("white-dutch-clover")),
            PassKind.FromKind(catalog.Find("cereal-rye")),
            PassKind.FromKind(catalog.Find("purple-top-turnip"))]);
        foreach (var step in plan.Steps)
        {
            string kinds = step.Group is { } group ? ": " + string.Join(", ", group.Kinds.Select(k => k.Name)) : "";
            output.WriteLine($"{step.Action}{kinds}");
        }

        // The clover pass: 8 lb/ac at a walking pace of 3 mph, passes 15 ft apart.
        var wanted = ApplicationRate.FromPoundsPerAcre(8);
        var pace = Speed.FromMilesPerHour(3);
        var swath = Length.FromFeet(15);
        output.WriteLine(SpreaderSetting.FlowFor(wanted, pace, swath).ShowWork()[0]);

        // Three bucket catches of 30 s each at setting 3 of the gate.
        var errors = new MeasuringErrors { Scale = Mass.FromOunces(0.1), Swath = Length.FromFeet(1) };
        var catches = new[] { 6.2, 6.4, 6.6 }.Select(ounces =>
            MeasuredRate.TimedCatch(Mass.FromOunces(ounces), TimeSpan.FromSeconds(30), pace, swath, errors)).ToList();
        var gate = GateTable.FromPoints("clover", [
            GatePoint.FromFlow(2, MassFlow.FromPoundsPerMinute(0.5)),
            GatePoint.FromFlow(3, MassFlow.FromPoundsPerMinute(0.8)),
            GatePoint.FromFlow(4, MassFlow.FromPoundsPerMinute(1.3))]);
        var outcome = CalibrationOutcome.For(wanted, swath, pace, catches, gate, setting: 3);
        output.WriteLine($"measured {outcome.Runs.Mean}, {outcome.Runs.Verdict}");
        output.WriteLine($"gate {Amounts.Print(outcome.Gate!.Setting!.Value, 2)}, or {Amounts.Print(outcome.AtThisGate.TimePer100Feet, "s", 1)} for 100 ft at setting 3");
        output.WriteLine($"expected error +-{Amounts.Print(outcome.ExpectedErrorPercent, 1)} %, most from the {outcome.MeasuringError.Largest!.Measurement}");

        // After a quarter of the plot, 1.4 of 2 lb are left.
        var progress = SowingProgress.After(Mass.FromPounds(2), Area.FromAcres(0.25), [HopperCheck.FromWeighing(Area.FromAcres(0.0625), Mass.FromPounds(1.4))]);
        output.WriteLine(progress.Findings[0]);
        output.WriteLine($"new pace {Amounts.Print(progress.NewPace(pace)!.Value, "mph", 2)}");
        // end example
    }
}
