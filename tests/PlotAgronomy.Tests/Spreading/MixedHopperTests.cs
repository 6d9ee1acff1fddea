using FsCheck.Xunit;
using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class MixedHopperTests
{
    private static readonly PassKind Oats = PassKind.FromSeedCount("oats", 16_000, Length.FromMillimeters(4.5), GateWorkedExamples.BushelWeight(32));
    private static readonly PassKind Clover = PassKind.FromSeedCount("white clover", 768_000, Length.FromMillimeters(1.1), GateWorkedExamples.BushelWeight(60));
    private static readonly Area Acre = Area.FromAcres(1);
    private static readonly Speed Walk = Speed.FromMilesPerHour(3);
    private static readonly Length Swath = Length.FromFeet(15);
    private static readonly Fraction Half = Fraction.FromPercent(50);

    [Fact]
    public void Two_bounds_by_hand_algebra()
    {
        // One acre at 3 mph and 15 ft: 2904 ft, 11 min. Oats 99 lb at 9 lb/min take 11 min; clover 6 lb at 3 lb/min take 2 min.
        var hopper = MixedHopper.Bounds([Share(Oats, 99, 9), Share(Clover, 6, 3)], Acre, Walk, Swath);
        Near.Assert(11, hopper.Walk.TotalMinutes, 1e-6);
        Near.Assert(13, hopper.Empties.TotalMinutes, 1e-6);
        var clover = hopper.Kinds[0];
        var oats = hopper.Kinds[1];
        Near.Assert(6 * 768_000 * 0.5 / 43_560, clover.WantedPlantsPerSquareFoot, 1e-9);

        // Sifted: clover leaves in the first 2 of 11 minutes, 5.5 times as thick as wanted; oats follow and are cut short.
        Near.Assert(2.0 / 11, clover.IfSifted.To.Value, 1e-6);
        Near.Assert(5.5, clover.IfSifted.PlantsPerSquareFoot / clover.WantedPlantsPerSquareFoot, 1e-6);
        Near.Assert(5.5, clover.AloneTimesWanted, 1e-6);
        Near.Assert(2.0 / 11, oats.IfSifted.From.Value, 1e-6);
        Assert.Equal(1, oats.IfSifted.To.Value);
        Near.Assert(1, oats.IfSifted.PlantsPerSquareFoot / oats.WantedPlantsPerSquareFoot, 1e-6);

        // Mixed: both at 11/13 of what was wanted, to the end.
        Near.Assert(11.0 / 13, clover.IfMixed.PlantsPerSquareFoot / clover.WantedPlantsPerSquareFoot, 1e-6);
        Near.Assert(11.0 / 13, oats.IfMixed.PlantsPerSquareFoot / oats.WantedPlantsPerSquareFoot, 1e-6);
        Assert.Contains(hopper.Findings, f => f.Code == "spread-mixed-hopper");
    }

    // By hand: at 11 minutes a hopper that empties in 13 holds 2/13 of its load; sifted, the clover is gone and 2 of the oats' 11 minutes are left.
    [Fact]
    public void A_hopper_that_empties_late_says_what_is_left()
    {
        var hopper = MixedHopper.Bounds([Share(Oats, 99, 9), Share(Clover, 6, 3)], Acre, Walk, Swath);
        Near.Assert(105 * 2.0 / 13, hopper.Left.Pounds, 1e-6);
        Near.Assert(2.0 / 13, hopper.Kinds[1].LeftIfMixed.Value, 1e-6);
        Near.Assert(2.0 / 11, hopper.Kinds[1].LeftIfSifted.Value, 1e-6);
        Assert.Equal(0, hopper.Kinds[0].LeftIfSifted.Value);
        var told = Assert.Single(hopper.Findings, f => f.Code == "spread-hopper-late");
        Assert.Contains("16.2 lb (15 % of the load)", told.Text, StringComparison.Ordinal);
    }

    // By hand: 99 lb at 18 lb/min and 6 lb at 12 lb/min are gone after 6 of 11 minutes.
    [Fact]
    public void A_hopper_that_empties_early_leaves_ground_bare()
    {
        var hopper = MixedHopper.Bounds([Share(Oats, 99, 18), Share(Clover, 6, 12)], Acre, Walk, Swath);
        Assert.Equal(0, hopper.Left.Pounds);
        var told = Assert.Single(hopper.Findings, f => f.Code == "spread-hopper-early");
        Assert.Contains("55 % of the walk and 45 % of the plot", told.Text, StringComparison.Ordinal);
        Assert.Equal("Warning", told.Severity.ToString());
    }

    [Theory]
    [InlineData(99.0 / 10.46, 0)]
    [InlineData(99.0 / 10.5, 0)]
    [InlineData(99.0 / 11.5, 0)]
    [InlineData(99.0 / 9.9, 1)]
    [InlineData(99.0 / 12.2, 1)]
    public void A_twentieth_more_or_less_is_balanced(double oatsFlow, int told)
    {
        var hopper = MixedHopper.Bounds([Share(Oats, 99, oatsFlow), Share(Clover, 0.03, 3)], Acre, Walk, Swath);
        Assert.Equal(told, hopper.Findings.Count(f => f.Code is "spread-hopper-early" or "spread-hopper-late"));
    }

    /// <summary>Common practice: small seed through a gate opened for oats comes out several times too fast. Case C57: unlike throw.</summary>
    [Fact]
    public void Clover_in_the_oat_hopper_comes_out_several_times_too_fast()
    {
        var oatTable = GateTableTests.Table("oats", (2, 0.15), (4, 0.62), (6, 1.55), (8, 2.95), (10, 4.70));
        var rate = ApplicationRate.FromPoundsPerAcre(40);
        var gate = oatTable.SettingFor(SpreaderSetting.FlowFor(rate, Walk, Swath).Flow);
        var cloverTable = oatTable.ScaledToGrain("clover", GrainFlow.For(Oats.Diameter!.Value, Oats.Density!.Value), GrainFlow.For(Clover.Diameter!.Value, Clover.Density!.Value));
        var hopper = MixedHopper.Bounds(
            [HopperShare.FromFlow(Oats, Mass.FromPounds(40), gate.Flow!.Value, Half), HopperShare.FromFlow(Clover, Mass.FromPounds(6), cloverTable.FlowAt(gate.Setting!.Value).Flow!.Value, Half)],
            Acre, Walk, Swath);
        Assert.True(hopper.Kinds[0].AloneTimesWanted > 3);
        Assert.Contains(hopper.Findings, f => f.Code == "spread-too-fast-alone" && f.Text.StartsWith("white clover", StringComparison.Ordinal));
        Assert.Contains(hopper.Findings, f => f.Code == "spread-throw-unlike");
        Assert.True(hopper.Kinds[0].IfSifted.To.Value < 0.2);
    }

    [Fact]
    public void A_mixed_hopper_holds_two_kinds()
    {
        Assert.Throws<ArgumentException>(() => MixedHopper.Bounds([Share(Oats, 99, 9)], Acre, Walk, Swath));
        Assert.Throws<ArgumentException>(() => MixedHopper.Bounds([], Acre, Walk, Swath));
        Assert.Throws<ArgumentOutOfRangeException>(() => Share(Oats, 0, 9));
        Assert.Throws<ArgumentOutOfRangeException>(() => Share(Oats, 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MixedHopper.Bounds([Share(Oats, 99, 9), Share(Clover, 6, 3)], Area.Zero, Walk, Swath));
    }

    [Property]
    public bool Neither_bound_makes_or_loses_seed(FsCheck.PositiveInt large, FsCheck.PositiveInt small, FsCheck.PositiveInt flow)
    {
        var hopper = MixedHopper.Bounds([Share(Oats, large.Get, 5 + (flow.Get % 20)), Share(Clover, small.Get / 10.0, 1 + (flow.Get % 7))], Acre, Walk, Swath);
        bool emptiesInTime = hopper.Empties <= hopper.Walk;
        return hopper.Kinds.All(k =>
        {
            double mixed = k.IfMixed.PlantsPerSquareFoot * (k.IfMixed.To.Value - k.IfMixed.From.Value);
            double sifted = k.IfSifted.PlantsPerSquareFoot * (k.IfSifted.To.Value - k.IfSifted.From.Value);
            return mixed <= k.WantedPlantsPerSquareFoot * (1 + 1e-6) && sifted <= k.WantedPlantsPerSquareFoot * (1 + 1e-6)
                && (!emptiesInTime || (Near.Equal(mixed, k.WantedPlantsPerSquareFoot, 1e-5) && Near.Equal(sifted, k.WantedPlantsPerSquareFoot, 1e-5)));
        });
    }

    private static HopperShare Share(PassKind kind, double pounds, double poundsPerMinute) =>
        HopperShare.FromFlow(kind, Mass.FromPounds(pounds), MassFlow.FromPoundsPerMinute(poundsPerMinute), Half);
}
