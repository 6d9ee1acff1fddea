using FsCheck.Xunit;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class CalibrationOutcomeTests
{
    private static readonly ApplicationRate Eight = ApplicationRate.FromPoundsPerAcre(8);
    private static readonly Length Swath = Length.FromFeet(15);
    private static readonly Speed Walk = Speed.FromMilesPerHour(3);

    [Fact]
    public void The_table_is_moved_to_meet_the_runs()
    {
        // The runs gave 0.8 lb/min at setting 3, where the table says 1.6: half of every flow. 0.7273 lb/min lies at 2 + 0.4546/0.6 of a straight line from 1 to 1.6.
        var table = GateTableTests.Table("clover", (2, 1.0), (3, 1.6));
        var outcome = CalibrationOutcome.Of(Eight, Swath, Walk, [Catch(0.4)], table, 3);
        Assert.Equal(2 + (((2 * 8 * 45 / 495.0) - 1) / 0.6), outcome.Gate!.Setting!.Value, 1e-6);
        Assert.Contains(outcome.Findings, f => f.Code == "spread-gate-moved");
        Assert.Throws<ArgumentOutOfRangeException>(() => CalibrationOutcome.Of(Eight, Swath, Walk, [Catch(0.4)], table, 4));
    }

    [Fact]
    public void Scatter_of_the_runs_adds_to_the_measuring_error()
    {
        // Runs of 7.92, 8.8 and 9.68 lb/ac: CV 10 %, standard error 5.7735 %; weighing to 1 % of the lightest: root of 1 + 33.33.
        var outcome = CalibrationOutcome.Of(Eight, Swath, Walk, [Catch(0.36), Catch(0.40), Catch(0.44)]);
        Near.Assert(Math.Sqrt(Math.Pow(0.0036 / 0.36 * 100, 2) + (100.0 / 3)), outcome.ExpectedErrorPercent, 1e-9);
        Assert.Null(outcome.Gate);
        Assert.Contains(outcome.Findings, f => f.Code == "spread-runs-disagree");
    }

    [Fact]
    public void A_gate_that_asks_for_a_run_is_remarked_on() =>
        Assert.Contains(CalibrationOutcome.Of(Eight, Swath, Walk, [Catch(0.6)]).Findings, f => f.Code == "spread-hurried-pace");

    [Property]
    public bool Gate_and_pace_both_reach_the_rate(FsCheck.PositiveInt caught)
    {
        var outcome = CalibrationOutcome.Of(Eight, Swath, Walk, [Catch(caught.Get / 50.0)]);
        return Near.Equal(8, SpreaderRate.FromFlow(outcome.AtThisPace.Flow, Walk, Swath).Rate.PoundsPerAcre)
            && Near.Equal(8, SpreaderRate.FromFlow(outcome.Measured.Flow, outcome.AtThisGate.Speed, Swath).Rate.PoundsPerAcre)
            && Near.Equal(caught.Get / 25.0, outcome.Measured.Flow.PoundsPerMinute, 1e-9);
    }

    private static MeasuredRate Catch(double pounds) => SpreaderCalibration.TimedCatch(Mass.FromPounds(pounds), TimeSpan.FromSeconds(30), Walk, Swath, new() { Scale = Mass.FromPounds(0.0036) });
}
