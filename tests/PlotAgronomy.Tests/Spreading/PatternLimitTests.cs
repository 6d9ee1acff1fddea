using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>Trays, reach and swath have limits, and nothing inside them takes long. Practice.</summary>
public class PatternLimitTests
{
    private static readonly SpreadPattern Triangle = SpreadPattern.Triangle(Length.FromFeet(12), Length.FromFeet(12));

    [Theory]
    [InlineData(0.1)]
    [InlineData(10_000)]
    public void A_swath_on_its_limit_is_answered(double feet)
    {
        Assert.NotNull(FirstPassEffect.For(Triangle, Length.FromFeet(feet), FirstPassPlacement.OnEdge));
        Assert.NotNull(OverlappedPattern.For(Triangle, Length.FromFeet(feet), DrivingMethod.BackAndForth));
    }

    [Theory]
    [InlineData(0.0999)]
    [InlineData(0.00001)]
    [InlineData(10_001)]
    public void A_swath_beyond_its_limit_is_refused(double feet)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FirstPassEffect.For(Triangle, Length.FromFeet(feet), FirstPassPlacement.OnEdge));
        Assert.Throws<ArgumentOutOfRangeException>(() => OverlappedPattern.For(Triangle, Length.FromFeet(feet), DrivingMethod.BackAndForth));
    }

    [Fact]
    public void A_pattern_that_reaches_over_very_many_passes_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SpreadPattern.Parabola(Length.FromFeet(100_000)));
        var wide = SpreadPattern.Parabola(Length.FromFeet(5000));
        Assert.Throws<ArgumentOutOfRangeException>(() => OverlappedPattern.For(wide, Length.FromFeet(9.9), DrivingMethod.OneDirection));
        Assert.NotNull(OverlappedPattern.For(wide, Length.FromFeet(10.1), DrivingMethod.OneDirection));
    }

    [Fact]
    public void More_trays_than_anyone_lays_out_are_refused()
    {
        double[] trays = [.. Enumerable.Repeat(1.0, 2000)];
        var most = SpreadPattern.FromTrays(trays, Length.FromFeet(0.05));
        var watch = System.Diagnostics.Stopwatch.StartNew();
        Assert.NotNull(SwathAdvice.For(most, DrivingMethod.OneDirection));
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 30);
        Assert.Contains("2000 trays", Assert.Throws<ArgumentException>(() => SpreadPattern.FromTrays([.. trays, 1], Length.FromFeet(0.05))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => SpreadPattern.FromTrays([1, 2, 1], Length.FromFeet(0.0001)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpreadPattern.FromTrays([1, double.MaxValue, 1], Length.FromFeet(1)));
    }
}
