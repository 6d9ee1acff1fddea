using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>Where the passes over one place are summed, and how even a row of amounts is; counts and sums by hand.</summary>
public class PatternMathTests
{
    /// <summary>Five trays 3 ft apart, from 6 ft left to 6 ft right.</summary>
    private static readonly SpreadPattern Trays = SpreadPattern.FromTrays([1, 2, 3, 2, 1], Length.FromFeet(3));

    private static readonly SpreadPattern Triangle = SpreadPattern.Triangle(Length.FromFeet(12), Length.FromFeet(12));

    [Theory]
    [InlineData(9, DrivingMethod.OneDirection, true)]
    [InlineData(10, DrivingMethod.OneDirection, false)]
    [InlineData(9, DrivingMethod.BackAndForth, true)]
    public void A_swath_of_whole_tray_spacings_lays_trays_on_trays(double swath, DrivingMethod driving, bool falls) =>
        Assert.Equal(falls, PatternMath.FallsOnTrays(Trays, swath, driving));

    [Fact]
    public void Driven_back_trays_lie_on_trays_only_where_they_lie_alike_on_both_sides()
    {
        var aside = SpreadPattern.FromTrays([1, 2, 3, 2], Length.FromFeet(3), Length.FromFeet(-5.5));
        Assert.True(PatternMath.FallsOnTrays(aside, 9, DrivingMethod.OneDirection));
        Assert.False(PatternMath.FallsOnTrays(aside, 9, DrivingMethod.BackAndForth));
        Assert.False(PatternMath.FallsOnTrays(Triangle, 9, DrivingMethod.OneDirection));
    }

    [Theory]
    [InlineData(9, DrivingMethod.OneDirection, 3)] // 9 / 3
    [InlineData(9, DrivingMethod.BackAndForth, 6)] // 18 / 3
    [InlineData(10, DrivingMethod.OneDirection, 27)] // 10 / 3 x 8, rounded up
    [InlineData(10, DrivingMethod.BackAndForth, 54)] // 20 / 3 x 8, rounded up
    public void One_period_is_a_swath_or_two_back_and_forth(double swath, DrivingMethod driving, int count)
    {
        var (_, step, positions) = PatternMath.Positions(Trays, swath, driving);
        Assert.Equal(count, positions);
        Assert.Equal((driving == DrivingMethod.OneDirection ? 1 : 2) * swath, step * positions, 1e-9);
    }

    [Fact]
    public void Passes_add_up_from_both_sides()
    {
        // Trays 9 ft apart in passes: on a path 3, and from the passes 9 ft aside nothing; 3 ft aside 2 and 1.
        Assert.Equal(3, PatternMath.Overlapped(Trays, 0, 9, DrivingMethod.OneDirection), 1e-12);
        Assert.Equal(3, PatternMath.Overlapped(Trays, 3, 9, DrivingMethod.OneDirection), 1e-12);
        // Left heavy, driven back: 3 ft right of the first path 1 of its own and, from the second driven back, 6 ft to its
        // right, 1.
        var leaning = SpreadPattern.FromTrays([1, 4, 3, 1, 1], Length.FromFeet(3));
        Assert.Equal(1 + 1, PatternMath.Overlapped(leaning, 3, 9, DrivingMethod.OneDirection), 1e-12);
        Assert.Equal(1 + 1, PatternMath.Overlapped(leaning, 3, 9, DrivingMethod.BackAndForth), 1e-12);
        Assert.Equal(1 + 4, PatternMath.Overlapped(leaning, 6, 9, DrivingMethod.OneDirection), 1e-12);
        Assert.Equal(1 + 1, PatternMath.Overlapped(leaning, 6, 9, DrivingMethod.BackAndForth), 1e-12);
    }

    [Theory]
    [InlineData(0, DrivingMethod.BackAndForth, 1)]
    [InlineData(1, DrivingMethod.BackAndForth, -1)]
    [InlineData(-1, DrivingMethod.BackAndForth, -1)]
    [InlineData(2, DrivingMethod.BackAndForth, 1)]
    [InlineData(1, DrivingMethod.OneDirection, 1)]
    public void Every_other_pass_is_driven_back(int pass, DrivingMethod driving, int side) =>
        Assert.Equal(side, PatternMath.SideOf(pass, driving));

    [Fact]
    public void Evenness_is_the_deviation_over_the_mean()
    {
        // 8, 10 and 12: mean 10, squares 8; root(8 / 3) and root(8 / 2) over 10.
        var (mean, population, sample) = PatternMath.Evenness([8, 10, 12]);
        Assert.Equal(10, mean, 1e-12);
        Assert.Equal(Math.Sqrt(8 / 3.0) / 10, population, 1e-12);
        Assert.Equal(0.2, sample, 1e-12);
        Assert.Equal((5, 0, 0), PatternMath.Evenness([5]));
    }

    [Theory]
    [InlineData(0.5, -6, 6)] // the triangle gives half at half its width
    [InlineData(0.25, -9, 9)]
    public void The_outermost_places_that_reach_a_level_are_found(double level, double left, double right)
    {
        var found = PatternMath.OutermostAt(Triangle, level * Triangle.AmountAt(0));
        Assert.Equal(left, found.Left, 1e-6);
        Assert.Equal(right, found.Right, 1e-6);
    }

    [Fact]
    public void A_level_that_the_outermost_trays_reach_lies_at_the_trays() =>
        Assert.Equal((-6, 6), PatternMath.OutermostAt(Trays, 1));

    [Fact]
    public void Between_trays_the_crossing_lies_on_their_line()
    {
        // From 1 at 6 ft to 2 at 3 ft: 1.5 at 4.5 ft.
        var (left, right) = PatternMath.OutermostAt(Trays, 1.5);
        Assert.Equal(-4.5, left, 1e-9);
        Assert.Equal(4.5, right, 1e-9);
    }
}
