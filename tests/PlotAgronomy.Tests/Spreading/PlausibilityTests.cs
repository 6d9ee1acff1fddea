using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>A pace, swath, flow or rate that no spreader has is asked about wherever it enters. Limits: practice.</summary>
public class PlausibilityTests
{
    private static readonly ApplicationRate Rate = ApplicationRate.FromPoundsPerAcre(8);

    [Fact]
    public void A_setting_that_no_machine_keeps_is_a_warning()
    {
        // 495 x 1000 / (8 x 15) = 4,125 mph.
        AssertAsked(SpreaderSetting.SpeedFor(Rate, MassFlow.FromPoundsPerMinute(1000), Length.FromFeet(15)));
        AssertAsked(SpreaderSetting.FlowFor(Rate, Speed.FromMilesPerHour(30), Length.FromFeet(15)));
        AssertAsked(SpreaderSetting.FlowFor(Rate, Speed.FromMilesPerHour(3), Length.FromFeet(180)));
        AssertAsked(SpreaderSetting.FlowFor(ApplicationRate.FromPoundsPerAcre(50_000), Speed.FromMilesPerHour(3), Length.FromFeet(15)));
        AssertAsked(SpreaderSetting.SwathFor(Rate, MassFlow.FromPoundsPerMinute(100), Speed.FromMilesPerHour(3)));
        AssertAsked(SpreaderSetting.FromFlow(MassFlow.FromPoundsPerMinute(5000), Speed.FromMilesPerHour(5), Length.FromFeet(100)));
    }

    [Fact]
    public void Walks_passes_and_changes_ask_alike()
    {
        var fast = Speed.FromMilesPerHour(30);
        var walk = SowingWalk.For(Rate, Area.FromAcres(0.5), Length.FromFeet(15), fast);
        var changed = ChangedRate.AtSpeed(Rate, Speed.FromMilesPerHour(3), fast);
        var wide = ChangedRate.AtSpacing(Rate, Length.FromFeet(15), Length.FromFeet(180));
        Assert.All(new[] { walk.Findings, changed.Findings, wide.Findings }, f => Assert.Contains(f, x => x.Code == "spread-implausible"));
    }

    [Fact]
    public void Carriers_mixed_hoppers_and_paces_ask_alike()
    {
        var fast = Speed.FromMilesPerHour(30);
        var swath = Length.FromFeet(15);
        var flow = MassFlow.FromPoundsPerMinute(40);
        var carrier = Carrier.All[0];
        var kinds = new[] { ("oats", 16_000.0), ("wheat", 15_000.0) }
            .Select(k => HopperShare.FromFlow(PlotAgronomy.Seeds.PassKind.FromSeedCount(k.Item1, k.Item2), Mass.FromPounds(40), flow, Fraction.FromPercent(80)))
            .ToList();
        Assert.Contains(CarrierMix.ForSteadyFlow(Rate, flow, fast, swath, carrier).Findings, f => f.Code == "spread-implausible");
        Assert.Contains(CarrierMix.ForParts(ApplicationRate.FromPoundsPerAcre(30_000), 2, carrier).Findings, f => f.Code == "spread-implausible");
        Assert.Contains(MixedHopper.Bounds(kinds, Area.FromAcres(1), fast, swath).Findings, f => f.Code == "spread-implausible");
        Assert.Contains(WalkingPace.Check(fast), f => f.Code == "spread-implausible");
        Assert.Contains(WalkingPace.Check(Speed.FromMilesPerHour(3), Length.FromFeet(180)), f => f.Code == "spread-implausible");
        Assert.Empty(WalkingPace.Check(Speed.FromMilesPerHour(3), swath));
    }

    [Fact]
    public void A_walk_that_never_ends_is_refused_with_its_limit()
    {
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(() => WalkingPace.TimeFor(Length.FromFeet(1e18), Speed.FromMilesPerHour(1e-9)));
        Assert.Contains("100000 h", thrown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.3, true)]
    [InlineData(0.29, false)]
    [InlineData(20, true)]
    [InlineData(20.1, false)]
    public void The_limits_of_the_pace_are_inside(double milesPerHour, bool isPlausible) =>
        Assert.Equal(isPlausible, SpreaderSetting.FlowFor(Rate, Speed.FromMilesPerHour(milesPerHour), Length.FromFeet(15)).Findings.IsEmpty);

    [Fact]
    public void A_pace_solved_above_a_walk_is_remarked_by_the_setting_itself()
    {
        // 495 x 1.5 / (8 x 15) = 6.19 mph.
        var setting = SpreaderSetting.SpeedFor(Rate, MassFlow.FromPoundsPerMinute(1.5), Length.FromFeet(15));
        Assert.Equal("spread-hurried-pace", Assert.Single(setting.Findings).Code);
    }

    [Fact]
    public void A_table_is_not_scaled_from_a_setting_that_lets_nothing_through()
    {
        var table = GateTable.FromPoints("x", [GatePoint.FromFlow(1, MassFlow.Zero), GatePoint.FromFlow(2, MassFlow.FromPoundsPerMinute(2))]);
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(() => table.ScaledToRun("y", 1, MassFlow.FromPoundsPerMinute(1)));
        Assert.Contains("at the setting of the run", thrown.Message, StringComparison.Ordinal);
    }

    private static void AssertAsked(SpreaderSetting setting) => Assert.Contains(setting.Findings, f => f.Code == "spread-implausible");
}
