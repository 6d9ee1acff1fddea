using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class GateTableTests
{
    private static readonly GateTable Oats = Table("oats", (2, 0.15), (4, 0.62), (6, 1.55), (8, 2.95), (10, 4.70));

    internal static GateTable Table(string material, params (double Setting, double Flow)[] points) =>
        GateTable.FromPoints(material, [.. points.Select(p => GatePoint.FromFlow(p.Setting, MassFlow.FromPoundsPerMinute(p.Flow)))]);

    [Fact]
    public void Order_of_the_points_and_repeats_do_not_matter()
    {
        var shuffled = Table("oats", (10, 4.70), (2, 0.10), (6, 1.55), (2, 0.20), (8, 2.95), (4, 0.62));
        Near.Assert(Oats.FlowAt(5).Flow!.Value.PoundsPerMinute, shuffled.FlowAt(5).Flow!.Value.PoundsPerMinute);
        Assert.Empty(shuffled.Findings);
        Assert.Equal(5, shuffled.Points.Length);
    }

    [Fact]
    public void One_reversal_is_pooled_and_said()
    {
        var noisy = Table("rye", (1, 0.2), (2, 0.5), (3, 0.48), (4, 1.1), (5, 1.8));
        Assert.Equal([1, 2.5, 4, 5], noisy.Points.Select(p => p.Setting));
        Near.Assert(0.49, noisy.FlowAt(2.5).Flow!.Value.PoundsPerMinute);
        Assert.Contains(noisy.FlowAt(2.5).Findings, f => f.Code == "spread-gate-pooled");
    }

    [Fact]
    public void Two_reversals_are_refused()
    {
        Assert.Contains("measure again", Assert.Throws<ArgumentException>(() => Table("rye", (1, 0.5), (2, 0.4), (3, 0.9), (4, 0.8), (5, 1.8))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Table("rye", (1, 0.5)));
        Assert.Throws<ArgumentException>(() => Table("rye", (1, 0.5), (2, 0.5)));
        Assert.Throws<ArgumentException>(() => GateTable.FromPoints("rye", []));
        Assert.Throws<ArgumentOutOfRangeException>(() => GatePoint.FromFlow(double.NaN, MassFlow.FromPoundsPerMinute(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => GatePoint.FromFlow(1, MassFlow.FromPoundsPerMinute(-1)));
    }

    [Fact]
    public void Nothing_is_answered_below_the_lowest_setting()
    {
        var below = Oats.FlowAt(1.999);
        Assert.Null(below.Flow);
        Assert.Equal("spread-gate-below", Assert.Single(below.Findings).Code);
        Assert.NotNull(Oats.FlowAt(2).Flow);
        var trickle = Oats.SettingFor(MassFlow.FromPoundsPerMinute(0.149));
        Assert.Null(trickle.Setting);
        Assert.Equal("spread-flow-too-small", Assert.Single(trickle.Findings).Code);
        Near.Assert(2, Oats.SettingFor(MassFlow.FromPoundsPerMinute(0.15)).Setting!.Value, 1e-9);
    }

    [Fact]
    public void One_step_above_is_a_marked_estimate_and_more_is_none()
    {
        var top = Oats.FlowAt(10);
        Assert.False(top.AboveTable);
        var above = Oats.FlowAt(12);
        Assert.True(above.AboveTable);
        Assert.Equal("spread-gate-one-step-above", Assert.Single(above.Findings).Code);
        // Hand algebra: 4.70 x 1.2^2.152595 = 6.9594, with the exponent fitted apart.
        Assert.Equal(4.70 * Math.Pow(1.2, 2.152595), above.Flow!.Value.PoundsPerMinute, 1e-5);
        Near.Assert(12, Oats.SettingFor(above.Flow.Value).Setting!.Value, 1e-9);
        Assert.Null(Oats.FlowAt(12.001).Flow);
        Assert.Equal("spread-gate-above", Assert.Single(Oats.SettingFor(MassFlow.FromPoundsPerMinute(7.2)).Findings).Code);
    }

    [Fact]
    public void Bag_seeder_trickle_below_the_smallest_flow_asks_for_a_carrier()
    {
        // Case C59: 8 lb of clover at 3 mph and 15 ft needs 0.727 lb/min.
        var needed = SpreaderSetting.FlowFor(ApplicationRate.FromPoundsPerAcre(8), Speed.FromMilesPerHour(3), Length.FromFeet(15)).Flow;
        var coarse = Table("clover", (1, 0.9), (2, 2.4), (3, 5));
        Assert.Equal("spread-flow-too-small", Assert.Single(coarse.SettingFor(needed).Findings).Code);
    }

    [Fact]
    public void A_scaled_table_is_a_first_setting_only()
    {
        var rye = Oats.ScaledToRun("rye", 6, MassFlow.FromPoundsPerMinute(3.1));
        Near.Assert(2 * 2.95, rye.FlowAt(8).Flow!.Value.PoundsPerMinute);
        var wheat = Oats.ScaledToDensity("wheat", GateWorkedExamples.BushelWeight(32), GateWorkedExamples.BushelWeight(60));
        Near.Assert(0.62 * 60 / 32, wheat.FlowAt(4).Flow!.Value.PoundsPerMinute, 1e-9);
        Assert.Contains(rye.FlowAt(8).Findings, f => f.Code == "spread-gate-first-guess");
        Assert.Contains(wheat.SettingFor(MassFlow.FromPoundsPerMinute(1)).Findings, f => f.Code == "spread-gate-first-guess");
        Assert.Throws<ArgumentOutOfRangeException>(() => Oats.ScaledToRun("rye", 11, MassFlow.FromPoundsPerMinute(3.1)));
        Assert.Throws<ArgumentException>(() => Oats.ScaledToRun(" ", 6, MassFlow.FromPoundsPerMinute(3.1)));
    }

    /// <summary>Common practice: small seed through a gate opened for oats comes out several times too fast.</summary>
    [Theory, InlineData(1.7), InlineData(1.1)]
    public void Clover_through_a_gate_opened_for_oats_comes_out_several_times_too_fast(double cloverMillimeters)
    {
        // Seed diameters from memory: oats 4.5 mm, red clover 1.7 mm, white clover 1.1 mm; bushels 32 and 60 lb.
        var oatGrain = GrainFlow.For(Length.FromMillimeters(4.5), GateWorkedExamples.BushelWeight(32));
        var cloverGrain = GrainFlow.For(Length.FromMillimeters(cloverMillimeters), GateWorkedExamples.BushelWeight(60));
        var clover = Oats.ScaledToGrain("clover", oatGrain, cloverGrain);
        foreach (var point in Oats.Points)
        {
            Assert.InRange(clover.FlowAt(point.Setting).Flow!.Value.PoundsPerMinute / point.Flow.PoundsPerMinute, 3, 20);
        }
    }

    [Fact]
    public void Grain_that_does_not_fit_the_opening_does_not_flow()
    {
        var pea = GrainFlow.For(Length.FromMillimeters(6.5), GateWorkedExamples.BushelWeight(60));
        Assert.Equal(0, pea.Through(Length.FromMillimeters(9.0999)).PoundsPerMinute);
        Assert.True(pea.Through(Length.FromMillimeters(9.11)).PoundsPerMinute > 0);
        var clover = GrainFlow.For(Length.FromMillimeters(1.1), GateWorkedExamples.BushelWeight(60));
        Assert.Throws<ArgumentException>(() => Table("clover", (1, 0.05), (2, 0.1)).ScaledToGrain("pea", clover, pea));
    }

    [Theory, InlineData(0), InlineData(-1)]
    public void A_grain_needs_size_and_density(double bad)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => GrainFlow.For(Length.FromMillimeters(bad), GateWorkedExamples.BushelWeight(60)));
        Assert.Throws<ArgumentOutOfRangeException>(() => GrainFlow.For(Length.FromMillimeters(2), Density.FromKilogramsPerCubicMeter(bad)));
        var oat = GrainFlow.For(Length.FromMillimeters(4.5), GateWorkedExamples.BushelWeight(32));
        Assert.Throws<ArgumentOutOfRangeException>(() => oat.Through(Length.FromMillimeters(bad)));
        Assert.Throws<ArgumentOutOfRangeException>(() => oat.HoleFor(MassFlow.FromPoundsPerMinute(bad)));
    }

    [Property]
    public bool Setting_and_flow_are_each_others_inverse_and_rise_together(FsCheck.NonEmptyArray<FsCheck.PositiveInt> steps, FsCheck.NonNegativeInt where)
    {
        double setting = 1, flow = 0.1;
        var points = new List<(double, double)> { (setting, flow) };
        foreach (var step in steps.Get.Take(8))
        {
            setting += 1 + (step.Get % 3);
            flow += step.Get / 10.0;
            points.Add((setting, flow));
        }

        var table = Table("seed", [.. points]);
        double at = 1 + ((setting - 1) * (where.Get % 100) / 100.0);
        double there = table.FlowAt(at).Flow!.Value.PoundsPerMinute;
        double next = table.FlowAt(Math.Min(setting, at + 0.01)).Flow!.Value.PoundsPerMinute;
        return Near.Equal(at, table.SettingFor(MassFlow.FromPoundsPerMinute(there)).Setting!.Value, 1e-6) && next >= there
            && there >= 0.1 * (1 - 1e-12) && there <= flow * (1 + 1e-12);
    }

    [Property]
    public bool Hole_and_flow_are_each_others_inverse(FsCheck.PositiveInt flow, FsCheck.PositiveInt diameter)
    {
        var grain = GrainFlow.For(Length.FromMillimeters(diameter.Get / 10.0), GateWorkedExamples.BushelWeight(60));
        return Near.Equal(flow.Get / 10.0, grain.Through(grain.HoleFor(MassFlow.FromPoundsPerMinute(flow.Get / 10.0))).PoundsPerMinute, 1e-9);
    }
}
