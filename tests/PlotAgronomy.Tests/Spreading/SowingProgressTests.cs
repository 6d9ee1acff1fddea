using FsCheck.Xunit;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class SowingProgressTests
{
    private static readonly Mass Load = Mass.FromPounds(10);
    private static readonly Area Plot = Area.FromAcres(1);

    [Fact]
    public void Too_much_seed_gone_asks_for_a_faster_pace_or_a_smaller_gate()
    {
        // Hand algebra: a quarter took 3 lb (12 lb/ac); 7 lb are left for 0.75 ac (9.333 lb/ac): pace x 1.2857, flow x 0.7778.
        var progress = SowingProgress.After(Load, Plot, [HopperCheck.FromWeighing(Area.FromAcres(0.25), Mass.FromPounds(7))]);
        Near.Assert(12, progress.RateSoFar.PoundsPerAcre, 1e-9);
        Near.Assert(28.0 / 3, progress.RateNeeded!.Value.PoundsPerAcre, 1e-9);
        Near.Assert(9.0 / 7, progress.PaceFactor!.Value, 1e-9);
        Near.Assert(7.0 / 9, progress.FlowFactor!.Value, 1e-9);
        Near.Assert(27.0 / 7, progress.NewPace(Speed.FromMilesPerHour(3))!.Value.MilesPerHour, 1e-9);
        Assert.Equal("spread-adjust", Assert.Single(progress.Findings).Code);

        var table = GateTableTests.Table("clover", (1, 1), (2, 2), (3, 3));
        Near.Assert(2 * 7.0 / 9, progress.NewGate(table, 2)!.Flow!.Value.PoundsPerMinute, 1e-9);
        Near.Assert(2 * 7.0 / 9, progress.NewGate(table, 2)!.Setting!.Value, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => progress.NewGate(table, 9));

        // Whole plot: 0.25 ac at 12 and 0.75 ac at 9.333, mean 10: CV = sqrt(0.25 x 4 + 0.75 x 0.444) / 10 = 11.547 %.
        Assert.Equal(11.547, progress.EvennessWholeCvPercent!.Value, 0.001);
        Near.Assert(1, 1 + progress.EvennessSoFarCvPercent, 1e-9);
    }

    [Fact]
    public void The_rate_counts_from_the_last_change()
    {
        var progress = SowingProgress.After(Load, Plot, [
            HopperCheck.FromWeighing(Area.FromAcres(0.25), Mass.FromPounds(7), settingChanged: true),
            HopperCheck.FromWeighing(Area.FromAcres(0.5), Mass.FromPounds(5))]);
        Near.Assert(8, progress.RateNow!.Value.PoundsPerAcre, 1e-9);
        Near.Assert(10, progress.RateSoFar.PoundsPerAcre, 1e-9);
        Near.Assert(0.8, progress.PaceFactor!.Value, 1e-9);
        // 12 and 8 lb/ac on equal ground: CV 20 %.
        Near.Assert(20, progress.EvennessSoFarCvPercent, 1e-9);
        Assert.Null(SowingProgress.After(Load, Plot, [HopperCheck.FromWeighing(Area.FromAcres(0.25), Mass.FromPounds(7), settingChanged: true)]).PaceFactor);
    }

    [Theory, InlineData(7.5, null), InlineData(7.411, null), InlineData(7.40, "spread-adjust"), InlineData(0, "spread-seed-gone")]
    public void Within_five_percent_nothing_is_changed(double left, string? code)
    {
        // A quarter sown: at 7.411 lb left the rate is 10.356 against 9.881 needed, 4.8 % over; at 7.40 it is 5.4 % over.
        var findings = SowingProgress.After(Load, Plot, [HopperCheck.FromWeighing(Area.FromAcres(0.25), Mass.FromPounds(left))]).Findings;
        Assert.Equal(code is null ? [] : [code], findings.Select(f => f.Code));
    }

    [Theory, InlineData(0.5, 0), InlineData(0.51, 1)]
    public void Seed_left_at_the_end_is_said(double left, int findings)
    {
        var done = SowingProgress.After(Load, Plot, [HopperCheck.FromWeighing(Plot, Mass.FromPounds(left))]);
        Assert.Equal(findings, done.Findings.Length);
        Assert.Null(done.RateNeeded);
        Assert.Null(done.PaceFactor);
        Assert.Null(done.EvennessWholeCvPercent);
    }

    [Fact]
    public void Readings_that_contradict_each_other_are_refused()
    {
        var quarter = HopperCheck.FromWeighing(Area.FromAcres(0.25), Mass.FromPounds(7));
        Assert.Throws<ArgumentException>(() => SowingProgress.After(Load, Plot, []));
        Assert.Throws<ArgumentException>(() => SowingProgress.After(Load, Plot, [quarter, quarter]));
        Assert.Throws<ArgumentException>(() => SowingProgress.After(Load, Plot, [quarter, HopperCheck.FromWeighing(Area.FromAcres(0.5), Mass.FromPounds(8))]));
        Assert.Throws<ArgumentException>(() => SowingProgress.After(Mass.FromPounds(6), Plot, [quarter]));
        Assert.Throws<ArgumentException>(() => SowingProgress.After(Load, Area.FromAcres(0.2), [quarter]));
        Assert.Throws<ArgumentOutOfRangeException>(() => HopperCheck.FromWeighing(Area.Zero, Load));
        Assert.Throws<ArgumentOutOfRangeException>(() => HopperCheck.FromWeighing(Plot, Mass.FromPounds(-1)));
    }

    [Property]
    public bool Walking_the_rest_at_the_new_pace_ends_the_seed_with_the_plot(FsCheck.PositiveInt done, FsCheck.PositiveInt left)
    {
        double acres = (1 + (done.Get % 98)) / 100.0;
        double pounds = (1 + (left.Get % 98)) / 10.0;
        var progress = SowingProgress.After(Load, Plot, [HopperCheck.FromWeighing(Area.FromAcres(acres), Mass.FromPounds(pounds))]);
        double rest = progress.RateNow!.Value.PoundsPerAcre / progress.PaceFactor!.Value * (1 - acres);
        return Near.Equal(pounds, rest, 1e-9) && Near.Equal(progress.PaceFactor.Value * progress.FlowFactor!.Value, 1, 1e-9);
    }

    [Fact]
    public void Outlets_are_held_against_their_mean()
    {
        var outlets = OutletCheck.For([.. new[] { 100.0, 105, 95, 100 }.Select(g => Mass.FromGrams(g))]);
        Assert.Empty(outlets.Findings);
        var worn = OutletCheck.For([.. new[] { 100.0, 106, 94, 100 }.Select(g => Mass.FromGrams(g))]);
        Assert.Equal(["spread-outlet-off", "spread-outlet-off"], worn.Findings.Select(f => f.Code));
        Near.Assert(6, worn.OffMeanPercent[1], 1e-9);
        Assert.Throws<ArgumentException>(() => OutletCheck.For([Mass.FromGrams(1)]));
        Assert.Throws<ArgumentException>(() => OutletCheck.For([Mass.Zero, Mass.Zero]));
    }
}
