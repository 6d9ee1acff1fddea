using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using UnitsNet;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

public class LimeComparisonTests
{
    private static readonly Length SixInches = Length.FromInches(6);

    private static LimeMethodComparison Compare(SoilReport report, double target, bool memory = true) =>
        LimeMethodComparison.For(report, target, SixInches, includeFromMemory: memory);

    [Theory]
    // One buffer reading 6.2 in pure-lime tons per 6 inches, worked apart and rounded to 0.1.
    [InlineData("iowa-pm1688-equation", SoilBuffer.Smp, 6.5, 2.5)]
    [InlineData("oregon-2025-sikora", SoilBuffer.Sikora, 6.4, 2.8)]
    [InlineData("oregon-2025-sikora", SoilBuffer.Sikora, 6.8, 3.7)]
    [InlineData("kansas-mf2586", SoilBuffer.Smp, 6.8, 3.7)]
    public void The_common_basis_matches_the_comparison_worked_apart(string method, SoilBuffer buffer, double target, double tons) =>
        Assert.Equal(tons, Compare(Report(5.0, buffer, 6.2), target).Answers.Single(a => a.Method.Id == method).Common!.Value.ShortTonsPerAcre, 0.06);

    [Fact]
    public void Every_method_that_accepts_the_reading_is_asked()
    {
        var comparison = Compare(Report(5.2, SoilBuffer.Smp, 6.2), 6.5);
        // The publications of an SMP buffer for mineral soil, listed by hand.
        string[] expected =
        [
            "iowa-pm1688-equation", "iowa-pm1688-table", "kansas-mf2586", "minnesota-food-plot-east", "minnesota-food-plot-west", "ncr-221-ag-ground",
            "ncr-221-pure", "nebraska-g1504-lower", "nebraska-g1504-upper", "ontario-smp", "oregon-em9057-smp", "smp-1961", "tri-state-1995-smp", "wisconsin-a2809",
        ];
        Assert.Equal(expected, comparison.Answers.Select(a => a.Method.Id).Order(StringComparer.Ordinal));
        Assert.Equal(comparison.Answers.Select(a => a.Common?.PoundsPerAcre ?? double.PositiveInfinity).Order(), comparison.Answers.Select(a => a.Common?.PoundsPerAcre ?? double.PositiveInfinity));
        Assert.True(comparison.Has("lime-comparison-spread"));
        Assert.Equal(comparison.Answers.Length, comparison.ShowWork().Length);
    }

    [Fact]
    public void Methods_from_memory_stay_out_unless_asked_for() =>
        Assert.All(Compare(Report(5.2, SoilBuffer.Smp, 6.2), 6.5, memory: false).Answers, a => Assert.NotEqual(DataStatus.Memory, a.Method.Status));

    [Fact]
    public void A_rate_that_cannot_be_put_on_the_common_basis_says_why()
    {
        var comparison = Compare(Report(5.2, SoilBuffer.Mehlich, 6.0), 6.0);
        var carolina = comparison.Answers.Single(a => a.Method.Id == "north-carolina-mehlich");
        Assert.NotNull(carolina.Need.Rate);
        Assert.Null(carolina.Common);
        Assert.NotNull(carolina.WhyNot);
        Assert.True(comparison.Has("lime-not-comparable"));
    }

    [Fact]
    public void Each_method_answers_for_its_own_closest_target()
    {
        Assert.Equal(6.4, LimeMethod.Find("oregon-2025-sikora").ClosestTarget(6.5));
        Assert.Equal(6.4, LimeMethod.Find("oregon-2025-sikora").ClosestTarget(6.2));
        Assert.Equal(6.2, LimeMethod.Find("north-carolina-mehlich").ClosestTarget(6.2));
    }
}
