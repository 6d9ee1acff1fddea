using FsCheck;
using FsCheck.Xunit;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>Half of the load is gone with half of the ground; if not, the pace makes up for it on the rest.</summary>
/// <remarks>Expected figures are hand algebra from the definitions.</remarks>
public class HalfWayTests
{
    private static readonly Length Swath = Length.FromFeet(14);

    private static WalkedPass Walk(double pounds, double acres, double? mph = null, double? filling = null)
    {
        var rate = ApplicationRate.FromPoundsPerAcre(pounds / acres);
        var setting = mph is { } pace ? SpreaderSetting.SpeedFor(rate, MassFlow.FromPoundsPerMinute(rate.PoundsPerAcre * pace * 14 / 495), Swath) : null;
        return WalkedPass.For(Mass.FromPounds(pounds), rate, Swath, setting, filling is { } f ? Mass.FromPounds(f) : null);
    }

    private static FieldPasses Laid(double wide, double deep) =>
        FieldPasses.Lay(
            PlotArea.FromRectangle(Length.FromFeet(wide), Length.FromFeet(deep)).Outline!,
            new FieldPassesRequest { Rate = ApplicationRate.FromPoundsPerAcre(20), Swath = Swath, Speed = Speed.FromMilesPerHour(2.5) });

    /// <summary>20 lb at 25 s for 100 ft. 10 lb must be left. With 11 lb left 9 are gone: 11 on ground that took 9, so 100 ft take 11/9 as long, 30.6 s; with 9 left 9/11, 20.5 s.</summary>
    [Fact]
    public void A_tenth_more_is_made_up_for_by_a_slower_pace()
    {
        double mph = 100 / (25 / 60.0) / 88;
        var half = HalfWay.Of(Walk(20, 0.585, mph), null)!;
        Near.Assert(10, half.Left.Pounds, 1e-9);
        Assert.Null(half.AfterPass);
        Near.Assert(11, half.More.Left.Pounds, 1e-9);
        Near.Assert(9, half.Less.Left.Pounds, 1e-9);
        Near.Assert(25 * 11 / 9.0, half.More.TimePer100Feet!.Value.TotalSeconds, 1e-6);
        Near.Assert(25 * 9 / 11.0, half.Less.TimePer100Feet!.Value.TotalSeconds, 1e-6);
    }

    /// <summary>Walked at the new pace, flow as before, the rest of the ground takes just what is left.</summary>
    [Property]
    public bool At_the_new_pace_the_load_ends_with_the_plot(PositiveInt pounds, PositiveInt pace)
    {
        double load = 1 + (pounds.Get % 90);
        var walk = Walk(load, 0.5, 2.1 + (pace.Get % 30) / 10.0);
        var half = HalfWay.Of(walk, null)!;
        return new[] { half.More, half.Less }.All(turn =>
        {
            double gone = load - turn.Left.Pounds;
            return Near.Equal(turn.Left.Pounds, gone * (turn.TimePer100Feet!.Value / walk.TimePer100Feet!.Value), 1e-6);
        });
    }

    /// <summary>The flow of a gate that nobody timed is not known; how many times as long is.</summary>
    [Fact]
    public void Without_a_time_the_same_is_told_in_times()
    {
        var half = HalfWay.Of(Walk(20, 0.585), null)!;
        Assert.Null(half.More.TimePer100Feet);
        Near.Assert(11 / 9.0, half.More.TimesAsLong, 1e-9);
        Near.Assert(9 / 11.0, half.Less.TimesAsLong, 1e-9);
    }

    /// <summary>140 ft across are ten strips of 14 ft: after the fifth. 98 ft are seven, all alike: after the third three sevenths are sown, four sevenths left (after the fourth as near, the first of the two counts).</summary>
    [Theory, InlineData(182, 140, 5, 10), InlineData(182, 98, 3, 20 * 4 / 7.0)]
    public void It_is_looked_at_after_the_pass_nearest_to_half(double wide, double deep, int after, double left)
    {
        var half = HalfWay.Of(Walk(20, 0.5), Laid(wide, deep))!;
        Assert.Equal(after, half.AfterPass);
        Near.Assert(left, half.Left.Pounds, 1e-6);
        Assert.InRange(half.More.Left.Pounds, left, 20);
        Assert.InRange(half.Less.Left.Pounds, 0, left);
    }

    /// <summary>A pace of 1.4 mph is a crawl: twice at half the rate. Once over the plot is half way, whatever passes are laid.</summary>
    [Fact]
    public void Walked_twice_the_first_time_over_is_half_way()
    {
        var half = HalfWay.Of(Walk(79.2, 0.9, mph: 1.4), Laid(182, 98))!;
        Assert.Null(half.AfterPass);
        Near.Assert(39.6, half.Left.Pounds, 1e-9);
    }

    /// <summary>Four fillings: two are left. Three: one and a half. After three of seven passes two fillings are 8/7: no half.</summary>
    [Theory, InlineData(79, 20, false, 4), InlineData(79, 30, false, 3), InlineData(79, 100, false, null), InlineData(79, 40, true, null)]
    public void A_hopper_filled_several_times_counts_fillings(double pounds, double filling, bool isLaid, int? halves) =>
        Assert.Equal(halves, HalfWay.Of(Walk(pounds, 0.9, filling: filling), isLaid ? Laid(182, 98) : null)!.HalfFillingsLeft);

    [Fact]
    public void It_is_not_told_where_it_cannot_be_weighed_or_not_be_walked()
    {
        Assert.Null(HalfWay.Of(Walk(0.12, 0.05), null));
        Assert.NotNull(HalfWay.Of(Walk(0.13, 0.05), null));
        Assert.Null(HalfWay.Of(Walk(766, 0.585, filling: 24), null));
    }

    [Fact]
    public void The_sum_is_shown()
    {
        var lines = HalfWay.Of(Walk(20, 0.5, 2.5), Laid(182, 140))!.ShowWork();
        Assert.Equal("10 lb", lines[0].Numbers.Split('=')[^1].Trim());
        Assert.Equal(2, lines.Count(l => l.Label == "100 ft from there on"));
    }
}
