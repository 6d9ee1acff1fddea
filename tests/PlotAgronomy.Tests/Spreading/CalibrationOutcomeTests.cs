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
        var outcome = CalibrationOutcome.For(Eight, Swath, Walk, [Catch(0.4)], table, 3);
        Assert.Equal(2 + (((2 * 8 * 45 / 495.0) - 1) / 0.6), outcome.Gate!.Setting!.Value, 1e-6);
        Assert.Contains(outcome.Findings, f => f.Code == "spread-gate-moved");
        Assert.Throws<ArgumentOutOfRangeException>(() => CalibrationOutcome.For(Eight, Swath, Walk, [Catch(0.4)], table, 4));
    }

    [Fact]
    public void A_table_that_already_says_so_is_not_moved()
    {
        var outcome = CalibrationOutcome.For(Eight, Swath, Walk, [Catch(0.4)], GateTableTests.Table("clover", (2, 0.5), (3, 0.8)), 3);
        Assert.Equal(2 + (((8 * 45 / 495.0) - 0.5) / 0.3), outcome.Gate!.Setting!.Value, 1e-9);
        Assert.DoesNotContain(outcome.Findings, f => f.Code == "spread-gate-moved");
    }

    [Fact]
    public void Scatter_of_the_runs_adds_to_the_measuring_error()
    {
        // Runs of 7.92, 8.8 and 9.68 lb/ac: CV 10 %, standard error 5.7735 %; weighing to 1 % of the lightest: root of 1 + 33.33.
        var outcome = CalibrationOutcome.For(Eight, Swath, Walk, [Catch(0.36), Catch(0.40), Catch(0.44)]);
        Near.Assert(Math.Sqrt(Math.Pow(0.0036 / 0.36 * 100, 2) + (100.0 / 3)), outcome.ExpectedErrorPercent, 1e-9);
        Assert.Null(outcome.Gate);
        Assert.Contains(outcome.Findings, f => f.Code == "spread-runs-disagree");
    }

    [Fact]
    public void A_gate_that_asks_for_a_run_is_remarked_on() =>
        Assert.Contains(CalibrationOutcome.For(Eight, Swath, Walk, [Catch(0.6)]).Findings, f => f.Code == "spread-hurried-pace");

    [Fact]
    public void The_weight_to_aim_for_is_what_the_rate_wanted_would_give()
    {
        // 8 lb/ac at 3 mph and 15 ft is 8 x 45 / 495 lb/min, for half a minute; the mean of the catches is 0.4 lb.
        var outcome = CalibrationOutcome.For(Eight, Swath, Walk, [Catch(0.38), Catch(0.42)]);
        Near.Assert(8 * 45 / 495.0 / 2, outcome.WeightWanted.Pounds, 1e-9);
        Near.Assert(0.4, outcome.MeanWeight.Pounds, 1e-12);
        Near.Assert(16, outcome.ExpectedLow.PoundsPerAcre + outcome.ExpectedHigh.PoundsPerAcre, 1e-12);
        // The runs alone: 0.38 and 0.42 stand 5 % from their mean, so their standard error is 5 %; measuring adds to it.
        Assert.InRange(outcome.ExpectedHigh.PoundsPerAcre, 8 * 1.05, 8 * 1.10);
    }

    [Theory, InlineData(0.1, false), InlineData(0.0999, true), InlineData(10, false), InlineData(10.01, true)]
    public void Ten_times_off_asks_for_the_unit(double times, bool asked)
    {
        var run = MeasuredRate.WeighedRun(Mass.FromPounds(8 * times), Length.FromFeet(43_560 / 15.0), Swath);
        Assert.Equal(asked, CalibrationOutcome.For(Eight, Swath, Walk, [run]).Findings.Any(f => f.Code == "spread-far-off"));
    }

    [Fact]
    public void Two_runs_that_disagree_are_told_before_the_third()
    {
        var codes = RepeatedRuns.Judge([ApplicationRate.FromPoundsPerAcre(6), ApplicationRate.FromPoundsPerAcre(9)], Eight).Findings.Select(f => f.Code).ToList();
        Assert.Equal(["spread-runs-disagree", "spread-few-runs"], codes);
    }

    [Property]
    public bool Gate_and_pace_both_reach_the_rate(FsCheck.PositiveInt caught)
    {
        var outcome = CalibrationOutcome.For(Eight, Swath, Walk, [Catch(caught.Get / 50.0)]);
        return Near.Equal(8, SpreaderSetting.FromFlow(outcome.AtThisPace.Flow, Walk, Swath).Rate.PoundsPerAcre)
            && Near.Equal(8, SpreaderSetting.FromFlow(outcome.Measured.Flow, outcome.AtThisGate.Speed, Swath).Rate.PoundsPerAcre)
            && Near.Equal(caught.Get / 25.0, outcome.Measured.Flow.PoundsPerMinute, 1e-9);
    }

    private static MeasuredRate Catch(double pounds) => MeasuredRate.TimedCatch(Mass.FromPounds(pounds), TimeSpan.FromSeconds(30), Walk, Swath, new() { Scale = Mass.FromPounds(0.0036) });
}
