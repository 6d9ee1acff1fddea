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
        Assert.InRange(Allocations.BytesOf(() => PlotArea.FromRectangle(length, width)), 0, 6200);
        Assert.InRange(Allocations.BytesOf(() => PlotArea.Stated(Area.FromAcres(0.6)).OnSlope(Slope.FromPercent(8))), 0, 680);
    }

    [Fact]
    public void A_calibrated_step_without_text_allocates_little()
    {
        StepCount[] walks = [StepCount.FromDoublePaces(57), StepCount.FromDoublePaces(58)];
        Assert.InRange(Allocations.BytesOf(() => PaceCalibration.FromWalks(Length.FromFeet(300), walks)), 0, 200);
    }

    [Fact]
    public void An_outline_of_few_corners_shows_the_triangles_it_is_made_of()
    {
        var lines = PlotArea.FromOutline(PlotOutline.Rectangle(Length.FromFeet(200), Length.FromFeet(100))).ShowWork();
        Assert.Equal(
            [
                "Corners 1, 2 and 3: (200 x 100 - 200 x 0) / 2 = 10,000 ft2",
                "Corners 1, 3 and 4: (200 x 100 - 0 x 100) / 2 = 10,000 ft2",
            ],
            lines[..2].Select(l => $"{l.Label}: {l.Numbers}")
        );
        Assert.Single(PlotArea.FromOutline(PlotArea.FromCircle(Length.FromFeet(90)).Outline!).ShowWork());
    }

    [Fact]
    public void A_paced_side_shows_its_steps()
    {
        var step = PaceCalibration.FromWalks(Length.FromFeet(300), StepCount.FromDoublePaces(60), StepCount.FromDoublePaces(60));
        var area = PlotArea.FromRectangle(step.Measure(StepCount.FromDoublePaces(40)), Length.FromFeet(100));
        Assert.Equal("Paced length = steps x step = 80 x 2.5 ft = 200 ft [SPREAD-S38]", area.ShowWork()[0].ToString());
    }
}
