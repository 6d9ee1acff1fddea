using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>What a gate table refuses, says and lays out at its edges; sums by hand.</summary>
public class GateWordsTests
{
    /// <summary>Flow goes by the square of the setting: power 2, and 0.04 x 12 squared = 5.76 one step above.</summary>
    private static readonly GateTable Square = GateTableTests.Table("oats", (2, 0.16), (4, 0.64), (6, 1.44), (8, 2.56), (10, 4));

    private static MassFlow Flow(double poundsPerMinute) => MassFlow.FromPoundsPerMinute(poundsPerMinute);

    private static GatePoint Point(double setting, double flow) => GatePoint.FromFlow(setting, Flow(flow));

    [Fact]
    public void Flow_and_setting_one_step_above_are_laid_out_by_the_power_law()
    {
        Assert.Equal("4 x pow(12 / 10, 2) = 5.76 lb/min", Assert.Single(Square.FlowAt(12).ShowWork()).Numbers);
        Assert.Equal("10 x pow(5.76 / 4, 1 / 2) = 12", Assert.Single(Square.SettingFor(Flow(5.76)).ShowWork()).Numbers);
        Assert.Contains(
            "setting 10 gives 4 lb/min",
            Assert.Single(Square.FlowAt(10).ShowWork()).Numbers,
            StringComparison.Ordinal
        );
        Assert.Empty(Square.FlowAt(1).ShowWork());
        Assert.Equal(12, Square.SettingFor(Flow(5.76)).Setting!.Value, 1e-9);
    }

    [Fact]
    public void Where_the_scale_does_not_begin_above_zero_nothing_is_answered_above_the_table()
    {
        // A power law needs two settings and flows above zero.
        var shifted = GateTableTests.Table("oats", (-4, 0.2), (-2, 0.5), (0, 1));
        Assert.Equal("spread-gate-above", Assert.Single(shifted.FlowAt(1).Findings).Code);
        Assert.Equal("spread-gate-above", Assert.Single(shifted.SettingFor(Flow(1.1)).Findings).Code);
        Assert.Equal(0.5, shifted.FlowAt(-2).Flow!.Value.PoundsPerMinute, 1e-12);
    }

    [Fact]
    public void A_reversal_that_was_pooled_is_named_by_its_two_settings()
    {
        var pooled = Assert.Single(GateTableTests.Table("rye", (1, 0.2), (2, 0.5), (3, 0.48), (4, 1.1)).Findings);
        Assert.Contains("from setting 2 to 3", pooled.Text, StringComparison.Ordinal);
        Assert.True(GateTable.TryFromPoints("rye", [Point(1, 0.2), Point(2, 0.5)], out _, out string problem));
        Assert.Empty(problem);
    }

    [Fact]
    public void A_table_that_cannot_be_says_why()
    {
        static string Why(string? material, params GatePoint[] points)
        {
            Assert.False(GateTable.TryFromPoints(material!, points, out var table, out string problem));
            Assert.Null(table);
            return problem;
        }

        Assert.Contains("name of its material", Why(" ", Point(1, 0.2), Point(2, 0.5)), StringComparison.Ordinal);
        Assert.Contains("without a gap", Why("rye", Point(1, 0.2), null!), StringComparison.Ordinal);
        Assert.Contains("two different settings", Why("rye", Point(1, 0.2), Point(1, 0.3)), StringComparison.Ordinal);
        // Once the first two are pooled at 1.5 the next fall stands before setting 4.
        Assert.Contains(
            "again before setting 4",
            Why("rye", Point(1, 0.5), Point(2, 0.4), Point(3, 0.9), Point(4, 0.8)),
            StringComparison.Ordinal
        );
        Assert.False(GateTable.TryFromPoints("rye", null!, out _, out _));
    }

    [Fact]
    public void A_table_moved_to_meet_a_run_of_its_own_material_says_so()
    {
        Assert.Equal("spread-gate-moved", Assert.Single(Square.ScaledToRun("oats", 6, Flow(1.5)).Findings).Code);
        Assert.Equal("spread-gate-first-guess", Assert.Single(Square.ScaledToRun("rye", 6, Flow(1.5)).Findings).Code);
    }

    [Fact]
    public void What_a_table_is_scaled_by_is_above_zero_and_inside_it()
    {
        static string? Refused(Action call) => Assert.Throws<ArgumentOutOfRangeException>(call).ParamName;
        var dry = Density.FromPoundsPerCubicFoot(26);
        Assert.Equal("measured", Refused(() => Square.ScaledToRun("rye", 6, Flow(0))));
        Assert.Equal("setting", Refused(() => Square.ScaledToRun("rye", 1.9, Flow(1))));
        Assert.Equal("setting", Refused(() => GateTableTests.Table("oats", (1, 0), (2, 1)).ScaledToRun("rye", 1, Flow(1))));
        Assert.Equal("thisBulk", Refused(() => Square.ScaledToDensity("rye", Density.Zero, dry)));
        Assert.Equal("otherBulk", Refused(() => Square.ScaledToDensity("rye", dry, Density.Zero)));
        var grain = GrainFlow.For(Length.FromMillimeters(3), dry);
        Assert.Equal("here", Assert.Throws<ArgumentNullException>(() => Square.ScaledToGrain("rye", null!, grain)).ParamName);
        Assert.Equal("there", Assert.Throws<ArgumentNullException>(() => Square.ScaledToGrain("rye", grain, null!)).ParamName);
        Assert.Equal("flow", Refused(() => Square.SettingFor(Flow(0))));
        Assert.Throws<ArgumentOutOfRangeException>(() => Square.FlowAt(double.NaN));
    }

    [Fact]
    public void Two_openings_that_let_seed_through_make_a_table()
    {
        var dry = Density.FromGramsPerCubicCentimeter(0.7);
        var (oats, pea) = (GrainFlow.For(Length.FromMillimeters(4), dry), GrainFlow.For(Length.FromMillimeters(6.5), dry));
        // Openings of 8, 10 and 12 mm for oats; a pea of 6.5 mm needs more than 9.1.
        var table = GateTableTests.Table("oats", (0, 0), (1, Through(8)), (2, Through(10)), (3, Through(12)));
        Assert.Equal([2, 3], table.ScaledToGrain("pea", oats, pea).Points.Select(p => p.Setting));

        double Through(double millimeters) => oats.Through(Length.FromMillimeters(millimeters)).PoundsPerMinute;
    }

    [Fact]
    public void The_law_of_the_hole_is_laid_out_both_ways()
    {
        // SPREAD-S28: 35 x 0.8 x root(981) x (1.5 - 1.4 x 0.5)^2.5 = 35 x 0.8 x 31.32 x 0.5724 = 502 g/min.
        var grain = GrainFlow.For(Length.FromCentimeters(0.5), Density.FromGramsPerCubicCentimeter(0.8));
        string through = Assert.Single(grain.ShowWork(Length.FromCentimeters(1.5))).Numbers;
        Assert.StartsWith("35 x 0.8 x pow(981, 0.5) x pow(1.5 - 1.4 x 0.5, 2.5) = 502", through, StringComparison.Ordinal);
        Assert.EndsWith(" g/min", through, StringComparison.Ordinal);
        string hole = Assert.Single(grain.ShowWork(grain.Through(Length.FromCentimeters(1.5)))).Numbers;
        Assert.EndsWith(" = 1.5 cm", hole, StringComparison.Ordinal);
        Assert.Equal(
            "hole",
            Assert.Throws<ArgumentOutOfRangeException>(() => grain.ShowWork(Length.FromCentimeters(0.7))).ParamName
        );
        Assert.Equal("flow", Assert.Throws<ArgumentOutOfRangeException>(() => grain.ShowWork(Flow(0))).ParamName);
    }

    [Fact]
    public void An_outlet_off_the_mean_is_named_with_its_number_and_its_part()
    {
        // Mean 100; 94 is 6 % below it, 105 just within.
        var check = OutletCheck.For([.. new[] { 105.0, 94, 101 }.Select(g => Mass.FromPounds(g))]);
        Assert.Equal([5.0, -6.0, 1.0], check.OffMeanPercent.Select(p => Math.Round(p, 9, MidpointRounding.ToEven)));
        string said = Assert.Single(check.Findings).Text;
        Assert.Contains("Outlet 2", said, StringComparison.Ordinal);
        Assert.Contains("-6 %", said, StringComparison.Ordinal);
        Assert.Equal(["Outlet 1", "Outlet 2", "Outlet 3"], check.ShowWork().Select(l => l.Label));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutletCheck.For([Mass.FromPounds(-1), Mass.FromPounds(2)]));
    }

    [Fact]
    public void A_printed_scale_is_held_against_a_rate_that_is_wanted()
    {
        var claimed = ApplicationRate.FromPoundsPerAcre(8);
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => PrintedDial.Compare(ApplicationRate.Zero, claimed));
        Assert.Equal("wanted", refused.ParamName);
    }
}
