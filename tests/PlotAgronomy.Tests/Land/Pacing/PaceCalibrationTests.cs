using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

/// <summary>A calibrated step with its scatter, its error and its remarks, worked by hand; limits are those of SPREAD-S38 and
/// SPREAD-S39.</summary>
public class PaceCalibrationTests
{
    private static PaceCalibration Walked(double courseFeet, params double[] steps) =>
        PaceCalibration.FromWalks(Length.FromFeet(courseFeet), [.. steps.Select(StepCount.FromSingleSteps)]);

    private static string? Said(PaceCalibration pace, string code) => pace.Findings.SingleOrDefault(f => f.Code == code)?.Text;

    [Fact]
    public void The_scatter_is_the_sample_deviation_over_the_mean()
    {
        // Mean 120; off by -3, 0 and 3, then by -4, -1 and 5: root(18 / 2) = 3 and root(42 / 2) = 4.583 steps.
        Assert.Equal(3 / 120.0, Walked(300, 117, 120, 123).WalkScatter, 1e-12);
        var uneven = Walked(300, 116, 119, 125);
        Assert.Equal(Math.Sqrt(21) / 120, uneven.WalkScatter, 1e-12);
        Assert.Equal(Math.Sqrt(21) / 120 / Math.Sqrt(3), uneven.StepError, 1e-12);
    }

    [Fact]
    public void One_walk_and_a_stated_pace_take_the_error_of_a_practised_walker()
    {
        // SPREAD-S38: 2 ft in 100 ft.
        Assert.Equal(0.02, Walked(300, 120).WalkScatter);
        Assert.Equal(0.02, Walked(300, 120).StepError);
        Assert.Equal(0.02, PaceCalibration.FromStep(Length.FromFeet(2.5)).WalkScatter);
        Assert.Contains(" 2 %", Said(Walked(300, 120), "land-pace-single-walk"), StringComparison.Ordinal);
        Assert.Contains(
            " 2 %",
            Said(PaceCalibration.FromStep(Length.FromFeet(2.5)), "land-pace-stated"),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(1.49, true)]
    [InlineData(1.5, false)]
    [InlineData(4, false)]
    [InlineData(4.01, true)]
    public void A_step_beyond_its_limits_is_unlikely(double feet, bool isUnlikely) =>
        Assert.Equal(isUnlikely, Said(PaceCalibration.FromStep(Length.FromFeet(feet)), "land-pace-unlikely") is not null);

    [Theory]
    [InlineData(99.1, 100.9, null)]
    [InlineData(99, 101, null)]
    [InlineData(98, 102, " 2 %")]
    public void Walks_agree_within_one_in_a_hundred(double one, double other, string? percent)
    {
        string? said = Said(Walked(300, one, other), "land-pace-disagree");
        Assert.Equal(percent is null, said is null);
        Assert.Contains(percent ?? "", said ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void A_walked_pace_lays_out_step_and_error_and_a_stated_one_itself()
    {
        Assert.Equal(
            ["300 ft / 120 steps = 2.5 ft", "3 % / pow(2, 0.5) = 2.12 %"],
            Walked(300, 117.45442, 122.54558).ShowWork().Select(l => l.Numbers)
        );
        var stated = Assert.Single(PaceCalibration.FromStep(Length.FromFeet(2.5)).ShowWork());
        Assert.Equal(("Step", "as stated"), (stated.Label, stated.Formula));
        Assert.Equal("2.5 ft", stated.Numbers);
    }
}
