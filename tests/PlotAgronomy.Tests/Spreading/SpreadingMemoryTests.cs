using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class SpreadingMemoryTests
{
    private static readonly ApplicationRate Rate = ApplicationRate.FromPoundsPerAcre(12);
    private static readonly Length Swath = Length.FromFeet(20);

    [Fact]
    public void A_spreader_rate_without_text_allocates_little()
    {
        Assert.InRange(Allocations.BytesOf(() => SpreaderSetting.FlowFor(Rate, Speed.FromMilesPerHour(3), Swath)), 0, 140);
        Assert.InRange(Allocations.BytesOf(() => ChangedRate.AtSpacing(Rate, Swath, Length.FromFeet(18))), 0, 85);
    }

    [Fact]
    public void A_gate_setting_without_text_allocates_little()
    {
        var gate = GateTable.FromPoints("oats", [Point(2, 1), Point(3, 2.5), Point(4, 4.5), Point(5, 7)]);
        Assert.InRange(Allocations.BytesOf(() => gate.SettingFor(MassFlow.FromPoundsPerMinute(3))), 0, 430);
        Assert.InRange(Allocations.BytesOf(() => gate.SettingFor(MassFlow.FromPoundsPerMinute(40))), 0, 430);
    }

    [Fact]
    public void A_hole_shows_the_law_it_comes_from()
    {
        var grain = GrainFlow.For(Length.FromCentimeters(0.5), Density.FromGramsPerCubicCentimeter(0.8));
        string through = grain.ShowWork(Length.FromCentimeters(1.7))[0].ToString();
        Assert.EndsWith("= 35 x 0.8 x pow(981, 0.5) x pow(1.7 - 1.4 x 0.5, 2.5) = 877 g/min [SPREAD-S28]", through);
        Assert.Contains("1.7 cm", grain.ShowWork(grain.Through(Length.FromCentimeters(1.7)))[0].Numbers);
        Assert.Throws<ArgumentOutOfRangeException>(() => grain.ShowWork(Length.FromCentimeters(0.7)));
    }

    private static GatePoint Point(double setting, double pounds) => GatePoint.FromFlow(setting, MassFlow.FromPoundsPerMinute(pounds));
}
