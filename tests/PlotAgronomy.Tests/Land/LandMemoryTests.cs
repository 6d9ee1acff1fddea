using PlotAgronomy.Land;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

public class LandMemoryTests
{
    [Fact]
    public void An_area_without_text_allocates_little()
    {
        MeasuredLength length = Length.FromFeet(210),
            width = Length.FromFeet(130);
        Assert.InRange(CallMemory.BytesPerCall(() => PlotArea.FromRectangle(length, width)), 0, 6200);
        Assert.InRange(CallMemory.BytesPerCall(() => PlotArea.Stated(Area.FromAcres(0.6)).OnSlope(Slope.FromPercent(8))), 0, 680);
    }

    [Fact]
    public void A_calibrated_step_without_text_allocates_little()
    {
        StepCount[] walks = [StepCount.FromDoublePaces(57), StepCount.FromDoublePaces(58)];
        Assert.InRange(CallMemory.BytesPerCall(() => PaceCalibration.FromWalks(Length.FromFeet(300), walks)), 0, 200);
    }

    [Fact]
    public void A_paced_side_shows_its_steps()
    {
        var step = PaceCalibration.FromWalks(Length.FromFeet(300), StepCount.FromDoublePaces(60), StepCount.FromDoublePaces(60));
        var area = PlotArea.FromRectangle(step.Measure(StepCount.FromDoublePaces(40)), Length.FromFeet(100));
        Assert.Equal("Paced length = steps x step = 80 x 2.5 ft = 200 ft [SPREAD-S38]", area.ShowWork()[0].ToString());
    }
}
