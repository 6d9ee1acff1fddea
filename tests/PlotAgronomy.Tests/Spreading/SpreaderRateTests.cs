using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class SpreaderRateTests
{
    private static readonly ApplicationRate Eight = ApplicationRate.FromPoundsPerAcre(8);
    private static readonly Speed Walk = Speed.FromMilesPerHour(3);
    private static readonly Length Swath = Length.FromFeet(15);

    [Fact]
    public void Bag_seeder_needs_a_trickle_of_clover()
    {
        var walk = SowingWalk.For(Eight, Area.FromAcres(0.25), Swath, Walk);
        PracticeCase.AssertMatches("C59", "flow", walk.Flow!.Value.PoundsPerMinute);
        PracticeCase.AssertMatches("C59", "seed", walk.Load.Pounds);
        PracticeCase.AssertMatches("C59", "distance", walk.Distance.Feet);
        PracticeCase.AssertMatches("C59", "time", walk.Time!.Value.TotalMinutes);
        Assert.Empty(walk.Findings);
    }

    [Fact]
    public void Slower_pace_runs_out_of_seed_early()
    {
        var slow = ChangedRate.AtSpeed(Eight, Walk, Speed.FromMilesPerHour(2.5));
        PracticeCase.AssertMatches("C59", "rate at 2.5 mph", slow.Actual.PoundsPerAcre);
        PracticeCase.AssertMatches("C59", "share of plot covered", slow.CoveredShare * 100);
        Assert.Equal("spread-pace-differs", Assert.Single(slow.Findings).Code);
    }

    [Fact]
    public void A_printed_dial_made_for_another_product_is_not_accepted()
    {
        var dial = PrintedDial.Compare(ApplicationRate.FromPoundsPerAcre(100), ApplicationRate.FromPoundsPerThousandSquareFeet(11));
        PracticeCase.AssertMatches("C53", "wanted", dial.Wanted.PoundsPerThousandSquareFeet);
        PracticeCase.AssertMatches("C53", "dial claim", dial.Claimed.PoundsPerAcre);
        PracticeCase.AssertMatches("C53", "ratio", dial.ClaimedToWanted);
        Assert.Equal("spread-no-weighed-run", Assert.Single(dial.Findings).Code);
    }

    [Fact]
    public void Narrow_drop_spreader_means_a_long_walk()
    {
        var hopper = Length.FromInches(22);
        var rate = ApplicationRate.FromPoundsPerAcre(500);
        var ground = MeasuredRate.CourseAreaOf(Length.FromMiles(2), hopper);
        Near.Assert(19_360, ground.SquareFeet, 1e-9); // C55, in both units
        Assert.Equal(0.4444, ground.Acres, 0.0001);
        PracticeCase.AssertMatches("C55", "lime", SowingWalk.For(rate, ground, hopper).Load.Pounds);

        var walk = SowingWalk.For(rate, Area.FromAcres(3), hopper);
        PracticeCase.AssertMatches("C55", "distance for 3 acres", walk.Distance.Miles);
        Assert.Equal("spread-long-walk", Assert.Single(walk.Findings).Code);

        var spread = MeasuredRate.WholePlot(Mass.FromPounds(27 * 50), Area.FromAcres(3));
        PracticeCase.AssertMatches("C55", "rate", spread.Rate.PoundsPerAcre);
        PracticeCase.AssertMatches("C55", "share", spread.Rate / rate * 100);
        var note = Assert.Single(spread.Findings);
        Assert.Equal("spread-record-spread", note.Code);
        Assert.Contains("1,350 lb on 3 ac", note.Text, StringComparison.Ordinal);
        Assert.Equal(CalibrationMethod.WholePlot, spread.Method);
    }

    [Fact]
    public void Passes_closer_than_the_calibrated_swath_overdose()
    {
        var rate = ApplicationRate.FromPoundsPerAcre(5);
        var course = Area.FromAcres(1.0 / 32);
        PracticeCase.AssertMatches("C57", "seed on the course", rate.Over(course).Ounces);
        PracticeCase.AssertMatches("C57", "course, 10 ft", MeasuredRate.CourseLengthFor(course, Length.FromFeet(10)).Feet);
        PracticeCase.AssertMatches("C57", "course, 14 ft", MeasuredRate.CourseLengthFor(course, Length.FromFeet(14)).Feet);
        var close = ChangedRate.AtSpacing(rate, Length.FromFeet(14), Length.FromFeet(10));
        PracticeCase.AssertMatches("C57", "rate at 10 ft spacing", close.Actual.PoundsPerAcre);
        Assert.Equal("spread-swath-differs", Assert.Single(close.Findings).Code);
        Assert.Empty(ChangedRate.AtSpacing(rate, Length.FromFeet(14), Length.FromFeet(14)).Findings);
    }

    [Theory, InlineData(5.0, 0), InlineData(5.001, 1), InlineData(4.999, 0)]
    public void A_pace_is_remarked_on_when_it_moves_the_rate_by_more_than_five_percent(double percentMore, int findings) =>
        Assert.Equal(findings, ChangedRate.AtSpeed(Eight, Walk, Speed.FromMilesPerHour(3 / (1 + percentMore / 100))).Findings.Length);

    [Theory, InlineData(3, 0), InlineData(3.001, 1), InlineData(2.999, 0)]
    public void A_walk_is_remarked_on_above_three_miles(double miles, int findings) =>
        Assert.Equal(findings, SowingWalk.For(Eight, MeasuredRate.CourseAreaOf(Length.FromMiles(miles), Swath), Swath).Findings.Length);

    [Theory, InlineData(0), InlineData(-1), InlineData(double.Epsilon)]
    public void Flow_speed_and_swath_must_be_above_zero(double value)
    {
        var flow = MassFlow.FromPoundsPerMinute(1);
        if (value > 0)
        {
            Assert.True(SpreaderSetting.FromFlow(flow, Walk, Length.FromFeet(1e-9)).Rate.PoundsPerAcre > 0);
            return;
        }

        Assert.Equal("swath", Assert.Throws<ArgumentOutOfRangeException>(() => SpreaderSetting.FromFlow(flow, Walk, Length.FromFeet(value))).ParamName);
        Assert.Equal("speed", Assert.Throws<ArgumentOutOfRangeException>(() => SpreaderSetting.FromFlow(flow, Speed.FromMilesPerHour(value), Swath)).ParamName);
        Assert.Equal("flow", Assert.Throws<ArgumentOutOfRangeException>(() => SpreaderSetting.FromFlow(MassFlow.FromPoundsPerMinute(value), Walk, Swath)).ParamName);
    }

    [Theory, InlineData(0), InlineData(-1), InlineData(double.NaN), InlineData(double.PositiveInfinity), InlineData(double.NegativeInfinity)]
    public void A_run_cannot_weigh_or_cover_nothing(double value)
    {
        var pound = Mass.FromPounds(1);
        var feet = Length.FromFeet(100);
        Assert.ThrowsAny<ArgumentException>(() => MeasuredRate.WeighedRun(Mass.FromPounds(value), feet, Swath));
        Assert.ThrowsAny<ArgumentException>(() => MeasuredRate.RunOut(pound, Length.FromFeet(value), Swath));
        Assert.ThrowsAny<ArgumentException>(() => MeasuredRate.WeighedRun(pound, feet, Length.FromFeet(value)));
        Assert.ThrowsAny<ArgumentException>(() => MeasuredRate.TrayCatch(pound, Area.FromSquareFeet(value)));
        Assert.ThrowsAny<ArgumentException>(() => MeasuredRate.WholePlot(pound, Area.FromSquareFeet(value)));
        Assert.ThrowsAny<ArgumentException>(() => MeasuredRate.WholePlot(Mass.FromPounds(value), Area.FromAcres(1)));
        Assert.ThrowsAny<ArgumentException>(() => MeasuredRate.WheelTurns(pound, value, feet, 1, Swath));
        Assert.ThrowsAny<ArgumentException>(() => MeasuredRate.WheelTurns(pound, 10, feet, 0, Swath));
        Assert.ThrowsAny<ArgumentException>(() => MeasuredRate.TimedCatch(pound, TimeSpan.FromSeconds(0), Walk, Swath));
        Assert.ThrowsAny<ArgumentException>(() => MeasuredRate.TimedCatch(pound, TimeSpan.FromSeconds(30), Walk, Swath, new() { Scale = Mass.FromPounds(double.IsPositive(value) && double.IsFinite(value) && value == 0 ? -1 : value) }));
        Assert.ThrowsAny<ArgumentException>(() => WalkingPace.TimeFor(Length.FromFeet(value), Walk));
        Assert.ThrowsAny<ArgumentException>(() => ApplicationRate.FromPoundsPerAcre(double.NaN));
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void The_working_reads_the_same_in_every_country(string culture)
    {
        using var scope = new CultureScope(culture);
        var line = Assert.Single(SpreaderSetting.FlowFor(Eight, Walk, Swath).ShowWork());
        Assert.Equal("Flow = rate x speed x swath / 495 = 8 x 3 x 15 / 495 = 0.7273 lb/min [DEF-UNITS]", line.ToString());
    }

    [Fact]
    public void Flow_of_a_timed_catch_and_of_a_timed_run_agree()
    {
        var caught = MeasuredRate.TimedCatch(Mass.FromPounds(1), TimeSpan.FromSeconds(60), Walk, Swath);
        var run = MeasuredRate.WeighedRun(Mass.FromPounds(1), Length.FromFeet(264), Swath, time: TimeSpan.FromSeconds(60));
        Near.Assert(caught.Rate.PoundsPerAcre, run.Rate.PoundsPerAcre);
        Near.Assert(1, run.Flow!.Value.PoundsPerMinute);
        Assert.Null(MeasuredRate.WeighedRun(Mass.FromPounds(1), Length.FromFeet(264), Swath).Flow);
    }

    [Fact]
    public void A_tray_rate_says_that_trays_miss_some()
    {
        var tray = MeasuredRate.TrayCatch(Mass.FromGrams(1), Area.FromSquareFeet(1));
        Assert.Equal("spread-tray-recovery", Assert.Single(tray.Findings).Code);
    }

    [Fact]
    public void A_skidding_wheel_sows_less()
    {
        MeasuredRate Turn(double skid) => MeasuredRate.WheelTurns(Mass.FromPounds(1), 20, Length.FromFeet(8), 10, Length.FromInches(7), Fraction.FromValue(skid));
        Near.Assert(Turn(0).Rate.PoundsPerAcre * 0.9, Turn(0.1).Rate.PoundsPerAcre);
    }

    [Fact]
    public void The_error_budget_names_what_to_measure_better()
    {
        var run = MeasuredRate.WeighedRun(Mass.FromOunces(10), Length.FromFeet(100), Length.FromFeet(15),
            new() { Scale = Mass.FromOunces(0.1), Distance = Length.FromFeet(1), Swath = Length.FromFeet(1.5) });
        Assert.Equal("swath", run.Error.Largest!.Measurement);
        Near.Assert(Math.Sqrt(1 + 1 + 100), run.Error.CombinedPercent, 1e-9);
        Assert.Null(MeasuredRate.WeighedRun(Mass.FromOunces(10), Length.FromFeet(100), Swath).Error.Largest);
    }

    [Fact]
    public void Repeat_runs_are_judged_one_after_another()
    {
        static RepeatVerdict Verdict(params double[] runs) => RepeatedRuns.Judge([.. runs.Select(ApplicationRate.FromPoundsPerAcre)], ApplicationRate.FromPoundsPerAcre(10)).Verdict;
        Assert.Equal(RepeatVerdict.TooFewRuns, Verdict(10, 10));
        Assert.Equal(RepeatVerdict.Accepted, Verdict(9.5, 10, 10.5));
        Assert.Equal(RepeatVerdict.RunsDisagree, Verdict(9.499, 10, 10.501));
        Assert.Equal(RepeatVerdict.OffTarget, Verdict(10.51, 10.51, 10.51));
        Assert.Equal(RepeatVerdict.Accepted, Verdict(10.5, 10.5, 10.5));
        var judged = RepeatedRuns.Judge([.. new[] { 12.0, 12.5, 13.0 }.Select(ApplicationRate.FromPoundsPerAcre)], ApplicationRate.FromPoundsPerAcre(10));
        Near.Assert(0.8, judged.FlowFactor);
        Near.Assert(4.0, judged.SampleCvPercent!.Value);
        Assert.Equal("spread-off-target", Assert.Single(judged.Findings).Code);
        Assert.Throws<ArgumentException>(() => RepeatedRuns.Judge([], ApplicationRate.FromPoundsPerAcre(10)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RepeatedRuns.Judge([ApplicationRate.Zero], ApplicationRate.FromPoundsPerAcre(10)));
    }
}
