using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Soil;

/// <summary>When and how deep to sample a small plot; the limits are common practice.</summary>
public class SamplingAdviceTests
{
    private static readonly DateOnly Last = new(2024, 10, 5);

    [Fact]
    public void A_small_plot_is_sampled_again_after_two_to_three_years()
    {
        var advice = SamplingAdvice.ForPlot(2, topDressedWithoutTillage: false, Last);
        Assert.Equal((new DateOnly(2026, 10, 5), new DateOnly(2027, 10, 5)), (advice.NextFrom!.Value, advice.NextBy!.Value));
        Assert.Equal((2, 10, 15), (advice.Composites, advice.FewestCores, advice.MostCores));
        Assert.Equal(6, advice.Depth.Inches, 1e-9);
    }

    [Fact]
    public void An_extreme_rating_is_looked_at_after_a_year_and_a_dressed_sod_sampled_shallow()
    {
        var advice = SamplingAdvice.ForPlot(1, topDressedWithoutTillage: true, Last, lastRatingWasExtreme: true);
        Assert.Equal((new DateOnly(2025, 10, 5), new DateOnly(2025, 10, 5)), (advice.NextFrom!.Value, advice.NextBy!.Value));
        Assert.Equal(4, advice.Depth.Inches, 1e-9);
        Assert.Null(SamplingAdvice.ForPlot(1, true).NextBy);
    }
}
