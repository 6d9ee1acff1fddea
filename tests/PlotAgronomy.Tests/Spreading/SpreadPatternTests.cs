using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class SpreadPatternTests
{
    private static readonly Length Foot = Length.FromFeet(1);

    [Fact]
    public void Flat_pattern_has_two_ranges_of_swaths_and_the_first_is_the_default()
    {
        // From the overlap table: at 15 % the acceptable set is up to 12 ft and 20 to 24 ft (population CV).
        var advice = SwathAdvice.For(PatternWorkedExamples.SinglePass("SYN-FLAT"), DrivingMethod.OneDirection, 15, CvConvention.Population);
        Assert.Equal([(2.0, 12.0), (20.0, 24.0)], advice.Acceptable.Select(i => (Math.Round(i.From.Feet, 9, MidpointRounding.ToEven), Math.Round(i.To.Feet, 9, MidpointRounding.ToEven))));
        Near.Assert(12, advice.Recommended!.Value.Feet);
        Assert.Contains(advice.Findings, f => f.Code == "spread-outer-swath");
        Assert.Contains(advice.Findings, f => f.Code == "spread-field-worse");
    }

    [Fact]
    public void The_choice_of_standard_deviation_can_flip_a_limit()
    {
        // SYN-FLAT at 24 ft: 14.845 % population, 15.165 % sample.
        var sample = SwathAdvice.For(PatternWorkedExamples.SinglePass("SYN-FLAT"), DrivingMethod.OneDirection);
        Assert.Equal(CvConvention.Sample, sample.Convention);
        Near.Assert(23, sample.Acceptable[^1].To.Feet);
    }

    [Fact]
    public void Twin_peaks_leave_many_separate_swaths_and_no_deep_dip_misleads()
    {
        // CVs of the overlap table at 5 %: up to 7 ft, 10 ft and 15 ft.
        var advice = SwathAdvice.For(PatternWorkedExamples.SinglePass("SYN-M"), DrivingMethod.BackAndForth, 5);
        Assert.Equal([(2, 7), (10, 10), (15, 15)], advice.Acceptable.Select(i => ((int)Math.Round(i.From.Feet, MidpointRounding.ToEven), (int)Math.Round(i.To.Feet, MidpointRounding.ToEven))));
        // Half of 12 g lies 3 ft beyond the peaks at 12 ft: straight flank from 12 g to 0 g at 18 ft.
        Near.Assert(30, advice.HalfMaximumWidth.Feet, 1e-6);
    }

    [Fact]
    public void Half_the_middle_gives_the_published_swath()
    {
        // Ohio State University, Bulletin 817: 4 in of product in the centre tubes, 2 in at 6 ft each side, swath 12 ft.
        var tubes = SpreadPattern.FromTrays([0, 1, 2, 3, 4, 4, 4, 3, 2, 1, 0], Length.FromFeet(2));
        var advice = SwathAdvice.For(tubes, DrivingMethod.BackAndForth);
        Near.Assert(12, advice.HalfMiddleWidth.Feet, 1e-9);
        Near.Assert(12, advice.HalfMaximumWidth.Feet, 1e-9);
        Near.Assert(10, advice.HalfThrow.Feet, 1e-9);
    }

    [Theory]
    [InlineData("triangle", 10, 10, 10)]
    [InlineData("parabola", 10, 0, 14.1421356)]
    [InlineData("semi-ellipse", 10, 0, 17.3205081)]
    [InlineData("cosine lobe", 10, 0, 13.3333333)]
    [InlineData("raised cosine", 10, 0, 10)]
    [InlineData("bell", 4, 0, 9.4192801)]
    [InlineData("trapezoid", 12, 24, 18)]
    public void Half_maximum_width_is_the_closed_form(string shape, double a, double b, double width) =>
        Assert.Equal(width, SwathAdvice.For(PatternWorkedExamples.Shape(shape, a, b), DrivingMethod.OneDirection).HalfMaximumWidth.Feet, 1e-5);

    [Fact]
    public void A_leaning_pattern_is_told_from_its_centre_of_mass()
    {
        var skewed = SwathAdvice.For(PatternWorkedExamples.SinglePass("SYN-SKEW"), DrivingMethod.BackAndForth);
        Assert.Equal(1.33, skewed.Lean.Feet, 0.005);
        Assert.Contains(skewed.Findings, f => f.Code == "spread-skewed" && f.Text.Contains("right", StringComparison.Ordinal));
        Assert.DoesNotContain(SwathAdvice.For(PatternWorkedExamples.SinglePass("SYN-TRI"), DrivingMethod.BackAndForth).Findings, f => f.Code == "spread-skewed");
    }

    [Fact]
    public void A_pattern_of_two_stripes_has_no_swath()
    {
        var stripes = SpreadPattern.FromTrays([9, 0, 0, 0, 0, 0, 1], Foot);
        var advice = SwathAdvice.For(stripes, DrivingMethod.BackAndForth, 5);
        Assert.Null(advice.Recommended);
        Assert.Contains(advice.Findings, f => f.Code == "spread-no-swath");
    }

    [Theory]
    [InlineData("SYN-SKEW", 14, DrivingMethod.BackAndForth, 20.07, 14.19, 0.70, 6.56, 0.88)]
    [InlineData("SYN-SKEW", 16, DrivingMethod.BackAndForth, 25.55, 18.07, 0.53, 4.33, 0.95)]
    [InlineData("SYN-SKEW", 14, DrivingMethod.OneDirection, 9.86, 6.97, null, 3.11, null)]
    public void Half_rate_at_half_swath_beats_right_angles(string pattern, double swath, DrivingMethod driving, double full, double angles, double? lowest, double half, double? halfLowest)
    {
        // Two-decimal values computed apart; 25.56 and 4.34 there are 25.555 and 4.335 unrounded.
        var both = HalfRateComparison.For(PatternWorkedExamples.SinglePass(pattern), Length.FromFeet(swath), driving);
        Assert.Equal(full, both.FullRate.PopulationCvPercent, 0.0051);
        Assert.Equal(angles, both.RightAnglesPopulationCvPercent, 0.0051);
        Assert.Equal(half, both.HalfSwath.PopulationCvPercent, 0.0051);
        Assert.True(both.HalfSwathIsMoreEven);
        if (lowest is { } least && halfLowest is { } halfLeast)
        {
            Assert.Equal(least, both.RightAnglesLowestToMean, 0.0051);
            Assert.Equal(halfLeast, both.HalfSwath.LowestToMean, 0.0051);
        }
    }

    [Theory, InlineData(15, 25.00, 17.68, 6.25), InlineData(12.5, 9.55, 6.75, 5.10)]
    public void Half_rates_of_a_triangle_match_the_closed_form(double swath, double full, double angles, double half)
    {
        var both = HalfRateComparison.For(SpreadPattern.Triangle(Length.FromFeet(10), Length.FromFeet(10)), Length.FromFeet(swath), DrivingMethod.OneDirection);
        Assert.Equal(full, both.FullRate.PopulationCvPercent, 0.0051);
        Assert.Equal(angles, both.RightAnglesPopulationCvPercent, 0.0051);
        Assert.Equal(half, both.HalfSwath.PopulationCvPercent, 0.0051);
    }

    [Fact]
    public void Right_angles_are_checked_on_a_whole_checkerboard()
    {
        var full = OverlappedPattern.For(PatternWorkedExamples.SinglePass("SYN-SKEW"), Length.FromFeet(14), DrivingMethod.BackAndForth);
        var board = full.Amounts.SelectMany(f => full.Amounts.Select(g => (f + g) / 2)).ToList();
        double mean = board.Average();
        double cv = Math.Sqrt(board.Average(b => (b - mean) * (b - mean))) / mean * 100;
        var both = HalfRateComparison.For(PatternWorkedExamples.SinglePass("SYN-SKEW"), Length.FromFeet(14), DrivingMethod.BackAndForth);
        Near.Assert(cv, both.RightAnglesPopulationCvPercent, 1e-9);
        Near.Assert(board.Min() / mean, both.RightAnglesLowestToMean, 1e-9);
    }

    [Fact]
    public void A_swath_between_the_trays_is_said_to_be_interpolated()
    {
        var pattern = PatternWorkedExamples.SinglePass("SYN-TRI");
        Assert.Contains(OverlappedPattern.For(pattern, Length.FromFeet(12.5), DrivingMethod.OneDirection).Findings, f => f.Code == "spread-between-trays");
        Assert.DoesNotContain(OverlappedPattern.For(pattern, Length.FromFeet(12), DrivingMethod.OneDirection).Findings, f => f.Code == "spread-between-trays");
        // The trays lie on a triangle, so the closed form holds: 9.547 % at 1.25 half bases.
        Assert.Equal(9.547, OverlappedPattern.For(pattern, Length.FromFeet(15.0001), DrivingMethod.OneDirection).PopulationCvPercent, 0.05);
    }

    [Theory]
    [InlineData(12, UniformityVerdict.Good)]
    [InlineData(16, UniformityVerdict.Satisfactory)]
    [InlineData(17, UniformityVerdict.Marginal)]
    [InlineData(18, UniformityVerdict.Poor)]
    public void The_verdict_follows_the_published_limits(double swath, UniformityVerdict verdict) =>
        // Sample CVs of SYN-TRI in one direction: 0, 15.18, 20.50 and 26.08 %.
        Assert.Equal(verdict, OverlappedPattern.For(PatternWorkedExamples.SinglePass("SYN-TRI"), Length.FromFeet(swath), DrivingMethod.OneDirection).Verdict);

    [Fact]
    public void Trays_must_catch_something()
    {
        Assert.Throws<ArgumentException>(() => SpreadPattern.FromTrays([0, 0, 0], Foot));
        Assert.Throws<ArgumentException>(() => SpreadPattern.FromTrays([1, 2], Foot));
        Assert.Throws<ArgumentException>(() => SpreadPattern.FromTrays([], Foot));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpreadPattern.FromTrays([1, -1, 1], Foot));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpreadPattern.FromTrays([1, double.NaN, 1], Foot));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpreadPattern.FromTrays([1, 2, 1], Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpreadPattern.Trapezoid(Length.FromFeet(10), Length.FromFeet(9)));
        Assert.Throws<ArgumentOutOfRangeException>(() => OverlappedPattern.For(PatternWorkedExamples.SinglePass("SYN-TRI"), Length.FromFeet(0.099), DrivingMethod.OneDirection));
        Assert.Throws<ArgumentOutOfRangeException>(() => OverlappedPattern.For(PatternWorkedExamples.SinglePass("SYN-TRI"), Length.FromFeet(10_001), DrivingMethod.OneDirection));
        Assert.Throws<ArgumentOutOfRangeException>(() => OverlappedPattern.For(PatternWorkedExamples.SinglePass("SYN-TRI"), Foot, (DrivingMethod)9));
    }

    [Property]
    public bool Mean_is_total_catch_times_spacing_over_swath(FsCheck.NonEmptyArray<FsCheck.NonNegativeInt> trays, FsCheck.PositiveInt swath, bool oneDirection)
    {
        var (pattern, driving) = (Pattern(trays), Driving(oneDirection));
        int spacings = 1 + (swath.Get % 12);
        var overlapped = OverlappedPattern.For(pattern, Length.FromFeet(2.0 * spacings), driving);
        return Near.Equal(pattern.Catches.Sum() / spacings, overlapped.Mean, 1e-9);
    }

    [Property]
    public bool Scale_and_units_do_not_change_the_CV(FsCheck.NonEmptyArray<FsCheck.NonNegativeInt> trays, FsCheck.PositiveInt swath, FsCheck.PositiveInt scale, bool oneDirection)
    {
        var plain = Pattern(trays);
        var scaled = SpreadPattern.FromTrays([.. plain.Catches.Select(c => c * scale.Get / 7.0)], Length.FromMeters(2 * 0.3048));
        int spacings = 1 + (swath.Get % 12);
        double first = OverlappedPattern.For(plain, Length.FromFeet(2.0 * spacings), Driving(oneDirection)).PopulationCvPercent;
        double second = OverlappedPattern.For(scaled, Length.FromMeters(2 * 0.3048 * spacings), Driving(oneDirection)).PopulationCvPercent;
        return Math.Abs(first - second) < 1e-8;
    }

    [Property]
    public bool A_mirrored_pattern_is_as_even(FsCheck.NonEmptyArray<FsCheck.NonNegativeInt> trays, FsCheck.PositiveInt swath, bool oneDirection)
    {
        var pattern = Pattern(trays);
        var width = Length.FromFeet(2.0 * (1 + (swath.Get % 12)));
        var plain = OverlappedPattern.For(pattern, width, Driving(oneDirection));
        var mirrored = OverlappedPattern.For(pattern.Mirrored(), width, Driving(oneDirection));
        return Math.Abs(plain.PopulationCvPercent - mirrored.PopulationCvPercent) < 1e-9 && Near.Equal(plain.LowestToMean + 1, mirrored.LowestToMean + 1, 1e-9)
            && Near.Equal(SwathAdvice.For(pattern, Driving(oneDirection)).Lean.Feet + 1000, -SwathAdvice.For(pattern.Mirrored(), Driving(oneDirection)).Lean.Feet + 1000, 1e-12);
    }

    [Property]
    public bool A_symmetric_pattern_does_not_care_how_it_is_driven(FsCheck.NonEmptyArray<FsCheck.NonNegativeInt> half, FsCheck.PositiveInt swath)
    {
        double[] side = [.. half.Get.Take(8).Select(h => (double)(h.Get % 20)), 5];
        var pattern = SpreadPattern.FromTrays([.. side.Reverse(), 7, .. side], Length.FromFeet(2));
        var width = Length.FromFeet(2.0 * (1 + (swath.Get % 12)));
        return Math.Abs(OverlappedPattern.For(pattern, width, DrivingMethod.BackAndForth).PopulationCvPercent
            - OverlappedPattern.For(pattern, width, DrivingMethod.OneDirection).PopulationCvPercent) < 1e-9;
    }

    private static SpreadPattern Pattern(FsCheck.NonEmptyArray<FsCheck.NonNegativeInt> trays) =>
        SpreadPattern.FromTrays([3, .. trays.Get.Take(20).Select(t => (double)(t.Get % 25)), 0, 1], Length.FromFeet(2));

    private static DrivingMethod Driving(bool oneDirection) => oneDirection ? DrivingMethod.OneDirection : DrivingMethod.BackAndForth;
}
