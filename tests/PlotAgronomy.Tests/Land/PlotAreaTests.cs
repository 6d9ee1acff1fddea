using PlotAgronomy.Land;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

public class PlotAreaTests
{
    [Fact]
    public void C69_a_guess_half_as_large_again_buys_half_too_much()
    {
        var measured = PlotArea.Stated(Area.FromAcres(0.20));
        var guess = Area.FromAcres(0.30);
        PracticeCase.AssertMatches("C69", "excess", 100 * measured.ExcessOf(guess));
        PracticeCase.AssertMatches("C69", "area", measured.Area.SquareFeet);
        Assert.Contains(measured.ComparedWith(guess).Findings, f => f.Code == "land-guess-off" && f.Text.Contains("50 % above", StringComparison.Ordinal));
    }

    [Fact]
    public void C69_the_receivers_own_error_is_a_large_part_of_a_small_plot()
    {
        // The case carries the 13 % of a quarter acre over to 0.20 acre.
        var quarter = PlotOutline.Rectangle(PlotArea.Stated(Area.FromAcres(0.25)).SquareSide, PlotArea.Stated(Area.FromAcres(0.25)).SquareSide);
        double error = PlotArea.FromOutline(quarter, Length.FromMeters(3)).RelativeError!.Value;
        var measured = PlotArea.Stated(Area.FromAcres(0.20)).WithRelativeError(error);
        PracticeCase.AssertMatches("C69", "low", measured.Low!.Value.Acres);
        PracticeCase.AssertMatches("C69", "high", measured.High!.Value.Acres);
    }

    [Fact]
    public void C69_a_walked_track_below_half_an_acre_asks_for_a_tape()
    {
        Assert.Contains(PlotArea.FromOutline(Walked(0.2)).Findings, f => f.Code == "land-small-track");
        Assert.Contains(PlotArea.FromOutline(Walked(0.499)).Findings, f => f.Code == "land-small-track");
        Assert.DoesNotContain(PlotArea.FromOutline(Walked(0.501)).Findings, f => f.Code == "land-small-track");
    }

    [Fact]
    public void An_area_from_fixes_says_what_their_error_may_be()
    {
        // A quarter acre, four independent corners: 13.34 % at 3 m, five times that at 15 m.
        var unknown = Assert.Single(PlotArea.FromOutline(Walked(0.25)).Findings, f => f.Code == "land-fix-error-unknown");
        Assert.Contains("3 to 15 m", unknown.Text, StringComparison.Ordinal);
        Assert.Contains("13 % to 67 %", unknown.Text, StringComparison.Ordinal);
        var known = PlotArea.FromOutline(Walked(0.25), Length.FromMeters(3));
        Assert.DoesNotContain(known.Findings, f => f.Code == "land-fix-error-unknown");
        Assert.Contains(known.Findings, f => f.Code == "land-fix-error" && f.Text.Contains("13.3 %", StringComparison.Ordinal));
        Assert.DoesNotContain(PlotArea.FromOutline(PlotOutline.Rectangle(Length.FromFeet(100), Length.FromFeet(100))).Findings, f => f.Code.StartsWith("land-fix", StringComparison.Ordinal));
    }

    [Fact]
    public void C71_yards_and_feet_are_nine_times_apart_and_the_unit_is_repeated_back()
    {
        var yards = PlotArea.FromRectangle(Length.FromYards(70), Length.FromYards(70));
        var feet = PlotArea.FromRectangle(Length.FromFeet(70), Length.FromFeet(70));
        PracticeCase.AssertMatches("C71", "as yards", yards.Area.Acres);
        PracticeCase.AssertMatches("C71", "as feet", feet.Area.Acres);
        PracticeCase.AssertMatches("C71", "ratio", yards.Area.Acres / feet.Area.Acres);
        Assert.DoesNotContain(yards.Findings, f => f.Code == "land-sides-repeat-unit");
        var repeat = Assert.Single(feet.Findings, f => f.Code == "land-sides-repeat-unit");
        Assert.Contains("70 ft, 70 ft", repeat.Text, StringComparison.Ordinal);
        Assert.Contains("1.012 ac", repeat.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.1499, true)]
    [InlineData(0.1501, false)]
    [InlineData(4.999, false)]
    [InlineData(5.001, true)]
    public void Sides_that_give_an_unusual_area_are_read_back(double acres, bool repeated)
    {
        double squareFeet = acres * 43_560;
        Assert.Equal(repeated, PlotArea.FromRectangle(Length.FromFeet(squareFeet / 100), Length.FromFeet(100)).Findings.Any(f => f.Code == "land-sides-repeat-unit"));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_side_must_be_above_zero(double feet)
    {
        var wrong = Length.FromFeet(feet);
        var right = Length.FromFeet(10);
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.FromRectangle(wrong, right));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.FromRectangle(right, wrong));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.FromTriangle(wrong, right));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.FromThreeSides(right, right, wrong));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.FromTrapezoid(right, wrong, right));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.FromCircle(wrong));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.FromEllipse(right, wrong));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.FromOffsets(wrong, [right, right]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotOutline.Rectangle(wrong, right));
        Assert.Throws<ArgumentOutOfRangeException>(() => PaceCalibration.FromWalks(wrong, StepCount.FromSingleSteps(100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.Stated(Area.FromAcres(feet)));
    }

    [Fact]
    public void Three_sides_that_do_not_close_are_refused()
    {
        Assert.Throws<ArgumentException>(() => PlotArea.FromThreeSides(Length.FromFeet(10), Length.FromFeet(20), Length.FromFeet(30)));
        Assert.Throws<ArgumentException>(() => PlotArea.FromThreeSides(Length.FromFeet(31), Length.FromFeet(20), Length.FromFeet(10)));
        Assert.True(PlotArea.FromThreeSides(Length.FromFeet(29.99), Length.FromFeet(20), Length.FromFeet(10)).Area.SquareFeet > 0);
    }

    [Fact]
    public void Widths_must_make_strips()
    {
        var spacing = Length.FromFeet(10);
        Assert.Throws<ArgumentException>(() => PlotArea.FromOffsets(spacing, [Length.FromFeet(5)]));
        Assert.Throws<ArgumentException>(() => PlotArea.FromOffsets(spacing, [Length.Zero, Length.Zero]));
        Assert.Throws<ArgumentException>(() => PlotArea.FromOffsets(spacing, [Length.Zero, Length.FromFeet(5), Length.FromFeet(5), Length.Zero], OffsetRule.SmoothEdges));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.FromOffsets(spacing, [Length.Zero, Length.FromFeet(5)], (OffsetRule)7));
    }

    [Fact]
    public void Sides_with_errors_of_their_own_add_in_squares()
    {
        // 1 % and 2 % independent: root(1 + 4) %.
        var area = PlotArea.FromRectangle(MeasuredLength.WithError(Length.FromFeet(200), Length.FromFeet(2)), MeasuredLength.WithError(Length.FromFeet(100), Length.FromFeet(2)));
        Near.Assert(Math.Sqrt(5) / 100, area.RelativeError!.Value);
        Assert.Equal(AreaMethod.Sides, area.Method);
        Assert.Null(PlotArea.FromRectangle(Length.FromFeet(200), Length.FromFeet(100)).RelativeError);
    }

    [Fact]
    public void Paced_sides_share_the_error_of_the_pace()
    {
        var pace = PaceCalibration.FromWalks(Length.FromFeet(400), [StepCount.FromSingleSteps(160), StepCount.FromSingleSteps(161), StepCount.FromSingleSteps(159)]);
        Assert.Empty(pace.Findings);
        Near.Assert(2.5, pace.Step.Feet);
        Near.Assert(1.0 / 160, pace.WalkScatter);
        Near.Assert(1.0 / 160 / Math.Sqrt(3), pace.StepError);
        var area = PlotArea.FromRectangle(pace.Measure(StepCount.FromSingleSteps(80)), pace.Measure(StepCount.FromDoublePaces(40)));
        Near.Assert(200 * 200, area.Area.SquareFeet);
        // Shared: twice the step's error. Own: each side's scatter over root(side / course) of it.
        double own = 1.0 / 160 * Math.Sqrt(400.0 / 200) * Math.Sqrt(2);
        Near.Assert(Math.Sqrt(Math.Pow(2.0 / 160 / Math.Sqrt(3), 2) + own * own), area.RelativeError!.Value);
        Assert.Equal(AreaMethod.Paces, area.Method);
    }

    [Fact]
    public void A_pace_from_a_short_course_or_unlike_walks_or_an_unlikely_step_is_questioned()
    {
        Assert.Contains(PaceCalibration.FromWalks(Length.FromFeet(299), StepCount.FromSingleSteps(110)).Findings, f => f.Code == "land-pace-course-short");
        Assert.DoesNotContain(PaceCalibration.FromWalks(Length.FromFeet(300), StepCount.FromSingleSteps(110)).Findings, f => f.Code == "land-pace-course-short");
        Assert.Contains(PaceCalibration.FromWalks(Length.FromFeet(300), StepCount.FromSingleSteps(110)).Findings, f => f.Code == "land-pace-single-walk");
        Assert.Contains(PaceCalibration.FromWalks(Length.FromFeet(300), StepCount.FromSingleSteps(110), StepCount.FromSingleSteps(115)).Findings, f => f.Code == "land-pace-disagree");
        Assert.Contains(PaceCalibration.FromWalks(Length.FromFeet(300), StepCount.FromSingleSteps(60)).Findings, f => f.Code == "land-pace-unlikely");
        Assert.DoesNotContain(PaceCalibration.FromWalks(Length.FromFeet(300), StepCount.FromSingleSteps(75)).Findings, f => f.Code == "land-pace-unlikely");
        Assert.Throws<ArgumentException>(() => PaceCalibration.FromWalks(Length.FromFeet(300)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PaceCalibration.FromWalks(Length.FromFeet(300), StepCount.FromSingleSteps(0)));
    }

    [Fact]
    public void A_map_area_grows_with_the_slope_and_measured_sides_do_not()
    {
        var map = PlotArea.FromOutline(PlotOutline.Rectangle(Length.FromFeet(200), Length.FromFeet(200)));
        var sides = PlotArea.FromRectangle(Length.FromFeet(200), Length.FromFeet(200));
        Near.Assert(40_000 * Math.Sqrt(1.04), map.OnSlope(Slope.FromPercent(20)).Area.SquareFeet);
        Near.Assert(40_000, sides.OnSlope(Slope.FromPercent(20)).Area.SquareFeet);
        Assert.Contains(map.OnSlope(Slope.FromPercent(20)).Findings, f => f.Code == "land-slope-corrected");
        Assert.Contains(sides.OnSlope(Slope.FromPercent(20)).Findings, f => f.Code == "land-slope-followed");
        Assert.Contains(map.OnSlope(Slope.FromPercent(15)).Findings, f => f.Code == "land-steep");
        Assert.DoesNotContain(map.OnSlope(Slope.FromPercent(14.9)).Findings, f => f.Code == "land-steep");
        Near.Assert(Math.Tan(Math.PI / 6), Slope.FromDegrees(30).RisePerRun);
        Near.Assert(30, Slope.FromDegrees(30).Degrees);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(200.1)]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void A_slope_lies_between_level_and_two_to_one(double percent) => Assert.Throws<ArgumentOutOfRangeException>(() => Slope.FromPercent(percent));

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_stated_error_is_a_part_of_the_area(double error) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.Stated(Area.FromAcres(1)).WithRelativeError(error));

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void The_working_does_not_follow_the_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        var area = PlotArea.FromRectangle(MeasuredLength.WithError(Length.FromFeet(120.5), Length.FromFeet(1)), Length.FromFeet(100)).OnSlope(Slope.FromPercent(12.5));
        Assert.Equal("Area = length x width = 120.5 ft x 100 ft = 12,050 ft2 = 0.2766 ac", area.ShowWork()[0].ToString());
        // Hand algebra: 12,050 / 43,560 = 0.2766 ac; an error of 1 ft in 120.5 ft makes 0.2743 to 0.2789 ac.
        Assert.Equal("Area: 0.277 ac, likely 0.274 ac to 0.279 ac", area.ToString());
        Assert.Equal("12.5 %", Slope.FromPercent(12.5).ToString());
        Assert.Equal("10.5 ft E, 2.5 ft S", PlanePoint.FromFeet(10.5, -2.5).ToString());
        Assert.Equal("40.500000, -90.250000", GeoPoint.FromDegrees(40.5, -90.25).ToString());
        Assert.Equal("12.5 steps", StepCount.FromSingleSteps(12.5).ToString());
    }

    [Theory]
    [InlineData(60, 60)]
    [InlineData(150, 40)]
    [InlineData(25, 90)]
    public void A_round_plot_has_an_outline_of_its_area(double eastHalf, double northHalf)
    {
        var area = PlotArea.FromEllipse(Length.FromFeet(eastHalf), Length.FromFeet(northHalf));
        Near.Assert(Math.PI * eastHalf * northHalf, area.Outline!.Area.SquareFeet, 1e-9);
        Assert.All(area.Outline.Corners, c => Assert.Equal(1, Math.Sqrt(Math.Pow(c.EastFeet / eastHalf, 2) + Math.Pow(c.NorthFeet / northHalf, 2)), 0.0007));
        Assert.DoesNotContain(area.Findings, f => f.Code == "land-outline-assumed");
        // The perimeter of a circle; of an ellipse the series in h = ((a - b) / (a + b))2, five terms.
        double h = Math.Pow((eastHalf - northHalf) / (eastHalf + northHalf), 2);
        double around = Math.PI * (eastHalf + northHalf) * (1 + h / 4 + h * h / 64 + h * h * h / 256 + 25 * Math.Pow(h, 4) / 16_384);
        Assert.Equal(1, area.Outline.Perimeter.Feet / around, 0.001);
        if (eastHalf == northHalf)
        {
            Near.Assert(area.Outline.Perimeter.Feet, PlotArea.FromCircle(Length.FromFeet(eastHalf)).Outline!.Perimeter.Feet, 1e-12);
        }
    }

    [Fact]
    public void An_open_shape_is_drawn_with_both_ends_alike_and_says_so()
    {
        var trapezoid = PlotArea.FromTrapezoid(Length.FromFeet(200), Length.FromFeet(120), Length.FromFeet(90));
        Near.Assert(160 * 90, trapezoid.Outline!.Area.SquareFeet, 1e-12);
        // Slanting sides of root(40 2 + 90 2) each.
        Near.Assert(200 + 120 + 2 * Math.Sqrt(1600 + 8100), trapezoid.Outline.Perimeter.Feet, 1e-12);
        var triangle = PlotArea.FromTriangle(Length.FromFeet(200), Length.FromFeet(90));
        Near.Assert(9000, triangle.Outline!.Area.SquareFeet, 1e-12);
        Near.Assert(200 + 2 * Math.Sqrt(10_000 + 8100), triangle.Outline.Perimeter.Feet, 1e-12);
        foreach (var area in new[] { trapezoid, triangle })
        {
            Assert.Single(area.Findings, f => f.Code == "land-outline-assumed");
            Assert.Single(area.Outline!.Findings, f => f.Code == "land-outline-assumed");
        }

        Assert.Null(PlotArea.FromOffsets(Length.FromFeet(10), [Length.FromFeet(30), Length.FromFeet(40)]).Outline);
        Assert.Null(PlotArea.Stated(Area.FromAcres(1)).Outline);
    }

    private static PlotOutline Walked(double acres)
    {
        // A square at 40 north: 364,000 ft or so to a degree of latitude.
        double side = Math.Sqrt(acres * 43_560) * 0.3048;
        double north = side / 111_034.6, east = side / 85_393.6;
        return PlotOutline.FromFixes([GeoPoint.FromDegrees(40, -90), GeoPoint.FromDegrees(40, -90 + east), GeoPoint.FromDegrees(40 + north, -90 + east), GeoPoint.FromDegrees(40 + north, -90)]);
    }

}
