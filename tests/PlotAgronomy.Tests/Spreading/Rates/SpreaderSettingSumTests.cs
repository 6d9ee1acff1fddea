using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>Each of rate, flow, speed and swath from the other three: 495 x 2 / (3 x 15) = 22 lb/ac, solved four ways by
/// hand.</summary>
public class SpreaderSettingSumTests
{
    private static readonly ApplicationRate Rate = ApplicationRate.FromPoundsPerAcre(22);
    private static readonly MassFlow Flow = MassFlow.FromPoundsPerMinute(2);
    private static readonly Speed Walk = Speed.FromMilesPerHour(3);
    private static readonly Length Swath = Length.FromFeet(15);

    private static string Shown(SpreaderSetting setting) => Assert.Single(setting.ShowWork()).Numbers;

    [Fact]
    public void Each_one_is_laid_out_with_the_other_three()
    {
        Assert.Equal("495 x 2 / (3 x 15) = 22 lb/ac", Shown(SpreaderSetting.FromFlow(Flow, Walk, Swath)));
        Assert.Equal("22 x 3 x 15 / 495 = 2 lb/min", Shown(SpreaderSetting.FlowFor(Rate, Walk, Swath)));
        Assert.Equal("495 x 2 / (22 x 15) = 3 mph", Shown(SpreaderSetting.SpeedFor(Rate, Flow, Swath)));
        Assert.Equal("495 x 2 / (22 x 3) = 15 ft", Shown(SpreaderSetting.SwathFor(Rate, Flow, Walk)));
    }

    [Fact]
    public void All_four_are_handed_out_whichever_was_solved()
    {
        SpreaderSetting[] settings =
        [
            SpreaderSetting.FromFlow(Flow, Walk, Swath),
            SpreaderSetting.FlowFor(Rate, Walk, Swath),
            SpreaderSetting.SpeedFor(Rate, Flow, Swath),
            SpreaderSetting.SwathFor(Rate, Flow, Walk),
        ];
        foreach (var setting in settings)
        {
            Assert.Equal(22, setting.Rate.PoundsPerAcre, 1e-9);
            Assert.Equal(2, setting.Flow.PoundsPerMinute, 1e-9);
            Assert.Equal(3, setting.Speed.MilesPerHour, 1e-9);
            Assert.Equal(15, setting.Swath.Feet, 1e-9);
            // 100 ft at 3 x 88 ft a minute.
            Assert.Equal(100 / 264.0 * 60, setting.TimePer100Feet.TotalSeconds, 1e-6);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void None_of_what_is_given_may_be_nothing(double nothing)
    {
        var (rate, flow) = (ApplicationRate.Zero, MassFlow.FromPoundsPerMinute(nothing));
        var (speed, swath) = (Speed.FromMilesPerHour(nothing), Length.FromFeet(nothing));
        Assert.Equal("rate", Refused(() => SpreaderSetting.FlowFor(rate, Walk, Swath)));
        Assert.Equal("speed", Refused(() => SpreaderSetting.FlowFor(Rate, speed, Swath)));
        Assert.Equal("swath", Refused(() => SpreaderSetting.FlowFor(Rate, Walk, swath)));
        Assert.Equal("rate", Refused(() => SpreaderSetting.SpeedFor(rate, Flow, Swath)));
        Assert.Equal("flow", Refused(() => SpreaderSetting.SpeedFor(Rate, flow, Swath)));
        Assert.Equal("swath", Refused(() => SpreaderSetting.SpeedFor(Rate, Flow, swath)));
        Assert.Equal("rate", Refused(() => SpreaderSetting.SwathFor(rate, Flow, Walk)));
        Assert.Equal("flow", Refused(() => SpreaderSetting.SwathFor(Rate, flow, Walk)));
        Assert.Equal("speed", Refused(() => SpreaderSetting.SwathFor(Rate, Flow, speed)));
    }

    [Theory]
    [InlineData(3.99, false)]
    [InlineData(4, false)]
    [InlineData(4.01, true)]
    public void A_pace_above_four_miles_is_hurried_where_it_was_solved_for(double milesPerHour, bool isHurried)
    {
        var solved = SpreaderSetting.SpeedFor(
            Rate,
            SpreaderSetting.FlowFor(Rate, Speed.FromMilesPerHour(milesPerHour), Swath).Flow,
            Swath
        );
        Assert.Equal(isHurried, solved.Findings.Any(f => f.Code == "spread-hurried-pace"));
        Assert.DoesNotContain(
            SpreaderSetting.FlowFor(Rate, Speed.FromMilesPerHour(milesPerHour), Swath).Findings,
            f => f.Code == "spread-hurried-pace"
        );
    }

    private static string? Refused(Func<SpreaderSetting> call) => Assert.Throws<ArgumentOutOfRangeException>(call).ParamName;
}
