using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>Expected figures are computed beside the code from the definitions: 43,560 ft2 to the acre, 495 = 43,560 / 88.</summary>
public class WalkedPassTests
{
    private static readonly Length Swath = Length.FromFeet(14);

    private static WalkedPass Walk(double pounds, double acres, double? mph = null, double? filling = null, double? bag = null)
    {
        var rate = ApplicationRate.FromPoundsPerAcre(pounds / acres);
        var setting = mph is { } pace
            ? SpreaderSetting.SpeedFor(rate, MassFlow.FromPoundsPerMinute(rate.PoundsPerAcre * pace * 14 / 495), Swath)
            : null;
        return WalkedPass.For(Mass.FromPounds(pounds), rate, Swath, setting, filling is { } f ? Mass.FromPounds(f) : null, bag is { } b ? Mass.FromPounds(b) : null);
    }

    /// <summary>0.9 acre is 39,204 ft2: 21 bags over it at 14 ft are 133.3 ft each, 6 bags 466.7 ft.</summary>
    [Theory]
    [InlineData(1050, 50, 133.35), InlineData(300, 50, 466.71)]
    public void A_bag_lasts_its_part_of_the_swath(double pounds, double bag, double feet) =>
        Assert.Equal(feet, Walk(pounds, 0.9, bag: bag).WalkPerPackage!.Value.Feet, 0.01);

    [Fact]
    public void Fillings_are_whole_and_alike()
    {
        var pass = Walk(79, 0.9, filling: 14);
        Assert.Equal(6, pass.Fillings);
        Assert.Equal(79.0 / 6, pass.PerFilling!.Value.Pounds, 1e-12);
    }

    [Fact]
    public void Many_fillings_are_told()
    {
        Assert.Equal(["spread-many-fillings"], Walk(766, 0.585, filling: 24).Findings.Select(f => f.Code));
        Assert.Empty(Walk(79, 0.9, filling: 14).Findings);
        Assert.Null(Walk(79, 0.9).PerFilling);
    }

    /// <summary>88 lb/ac at 1.4 mph through one gate are 44 lb/ac at 2.8 mph through the same: 24 s for 100 ft, and 200 ft use 2.83 lb each way.</summary>
    [Fact]
    public void A_crawl_becomes_two_halves_crosswise_at_the_same_gate()
    {
        var once = Walk(79.2, 0.9, mph: 2.5);
        var halves = Walk(79.2, 0.9, mph: 1.4);
        Assert.False(once.IsCrosswise);
        Assert.True(halves.IsCrosswise);
        Assert.Equal(100 / (2.8 * 88) * 60, halves.TimePer100Feet!.Value.TotalSeconds, 1e-6);
        Assert.Equal(44 * 200 * 14 / 43560.0, halves.TestRunCatch.Pounds, 1e-9);
        Assert.Equal(2 * halves.TestRunCatch.Pounds, once.TestRunCatch.Pounds, 1e-9);
    }

    /// <summary>On 0.08 acre a run of 200 ft at 14 ft covers 0.064 acre, four fifths of the seed; the run is cut to the shortest that can be weighed.</summary>
    [Fact]
    public void A_small_load_has_a_short_test_run()
    {
        Assert.Equal(200, Walk(79.2, 0.9).TestRun.Feet);
        var small = Walk(4, 0.08);
        Assert.Equal(50, small.TestRun.Feet);
        Assert.True(small.TestRunCatch < small.Load);
    }
}
