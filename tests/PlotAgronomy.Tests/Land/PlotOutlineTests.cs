using PlotAgronomy.Land;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

public class PlotOutlineTests
{
    [Fact]
    public void A_bow_tie_is_refused_and_the_sides_that_cross_are_named()
    {
        var problem = Assert.Throws<ArgumentException>(() => PlotOutline.FromCorners([P(0, 0), P(10, 10), P(10, 0), P(0, 10)]));
        Assert.Contains("crosses itself at 5 ft E, 5 ft N", problem.Message, StringComparison.Ordinal);
        Assert.Contains("side from corner 1 meets the side from corner 3", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Sides_that_touch_or_double_back_are_refused()
    {
        Assert.Throws<ArgumentException>(() => PlotOutline.FromCorners([P(0, 0), P(10, 0), P(5, 0), P(5, 10)]));
        Assert.Throws<ArgumentException>(() => PlotOutline.FromCorners([P(0, 0), P(10, 0), P(10, 10), P(5, 0), P(0, 10)]));
    }

    [Fact]
    public void Fewer_than_three_places_or_no_area_are_refused()
    {
        Assert.Throws<ArgumentException>(() => PlotOutline.FromCorners([P(0, 0), P(10, 0), P(0, 0)]));
        Assert.Throws<ArgumentException>(() => PlotOutline.FromCorners([P(0, 0), P(5, 5), P(10, 10)]));
        Assert.Throws<ArgumentException>(() => PlotOutline.FromFixes([GeoPoint.FromDegrees(40, -90), GeoPoint.FromDegrees(40, -90)]));
        Assert.Throws<ArgumentException>(() => PlotOutline.FromFixes([]));
    }

    [Fact]
    public void A_repeated_first_corner_is_dropped_and_corners_run_counter_clockwise()
    {
        var outline = PlotOutline.FromCorners([P(0, 0), P(0, 10), P(10, 10), P(10, 0), P(0, 0)]);
        Assert.Equal([P(0, 0), P(10, 0), P(10, 10), P(0, 10)], outline.Corners);
        Near.Assert(100, outline.Area.SquareFeet);
        Assert.True(outline.IsConvex);
        Assert.False(PlotOutline.FromCorners([P(0, 0), P(10, 0), P(10, 10), P(5, 5), P(0, 10)]).IsConvex);
    }

    [Fact]
    public void A_tiny_outline_is_questioned()
    {
        Assert.Contains(PlotOutline.Rectangle(Length.FromFeet(4.9), Length.FromFeet(5)).Findings, f => f.Code == "land-tiny-outline");
        Assert.DoesNotContain(PlotOutline.Rectangle(Length.FromFeet(5), Length.FromFeet(5)).Findings, f => f.Code == "land-tiny-outline");
    }

    [Fact]
    public void Loops_of_a_walk_past_its_start_or_round_one_spot_are_cut_away_with_a_finding()
    {
        // Round a square of 100 m, standing a while at one corner (a loop of a metre), and on past the start by two metres.
        var outline = PlotOutline.FromFixes([Fix(0, 0), Fix(100, 0), Fix(101, 1), Fix(100, 1), Fix(101, 0), Fix(101.5, 100), Fix(0, 100), Fix(0.5, -2)]);
        var cut = Assert.Single(outline.Findings, f => f.Code == "land-loops-cut");
        Assert.Contains("2 small loops", cut.Text, StringComparison.Ordinal);
        Assert.InRange(outline.Area.SquareMeters, 9_900, 10_300);
    }

    [Fact]
    public void A_track_that_crosses_itself_in_a_large_loop_is_refused() =>
        Assert.Throws<ArgumentException>(() => PlotOutline.FromFixes([Fix(0, 0), Fix(100, 100), Fix(100, 0), Fix(0, 100)]));

    [Fact]
    public void A_track_that_stops_short_of_its_start_is_closed_with_a_finding()
    {
        GeoPoint[] track = [.. Enumerable.Range(0, 10).Select(i => Fix(10 * i, 0)), .. Enumerable.Range(0, 10).Select(i => Fix(100, 10 * i)), .. Enumerable.Range(0, 10).Select(i => Fix(100 - 10 * i, 100))];
        Assert.Contains(PlotOutline.FromFixes(track).Findings, f => f.Code == "land-outline-open");
        GeoPoint[] whole = [.. track, .. Enumerable.Range(0, 10).Select(i => Fix(0, 100 - 10 * i))];
        Assert.DoesNotContain(PlotOutline.FromFixes(whole).Findings, f => f.Code == "land-outline-open");
        Assert.DoesNotContain(PlotOutline.FromFixes([Fix(0, 0), Fix(100, 0), Fix(100, 100), Fix(0, 100)]).Findings, f => f.Code == "land-outline-open");
    }

    [Fact]
    public void A_county_sized_outline_is_questioned()
    {
        Assert.Contains(PlotOutline.FromFixes([Fix(0, 0), Fix(1000, 0), Fix(1000, 1000), Fix(0, 1000)]).Findings, f => f.Code == "land-large-outline");
        Assert.DoesNotContain(PlotOutline.FromFixes([Fix(0, 0), Fix(800, 0), Fix(800, 800), Fix(0, 800)]).Findings, f => f.Code == "land-large-outline");
    }

    [Fact]
    public void A_plot_across_the_180th_meridian_is_one_plot()
    {
        var here = PlotOutline.FromFixes([GeoPoint.FromDegrees(-16.5, 179.999), GeoPoint.FromDegrees(-16.5, -179.999), GeoPoint.FromDegrees(-16.499, -179.999), GeoPoint.FromDegrees(-16.499, 179.999)]);
        var elsewhere = PlotOutline.FromFixes([GeoPoint.FromDegrees(-16.5, 20), GeoPoint.FromDegrees(-16.5, 20.002), GeoPoint.FromDegrees(-16.499, 20.002), GeoPoint.FromDegrees(-16.499, 20)]);
        Near.Assert(elsewhere.Area.SquareFeet, here.Area.SquareFeet, 1e-9);
    }

    [Theory]
    [InlineData(91, 0)]
    [InlineData(-90.001, 0)]
    [InlineData(0, 180.001)]
    [InlineData(double.NaN, 0)]
    [InlineData(0, double.PositiveInfinity)]
    public void A_place_lies_on_the_earth(double latitude, double longitude) => Assert.Throws<ArgumentOutOfRangeException>(() => GeoPoint.FromDegrees(latitude, longitude));

    [Fact]
    public void A_strip_of_half_the_width_takes_everything()
    {
        var plot = PlotOutline.Rectangle(Length.FromFeet(100), Length.FromFeet(60));
        Assert.Single(plot.Inset(Length.FromFeet(29)).Parts);
        Assert.Contains(plot.Inset(Length.FromFeet(30)).Findings, f => f.Code == "land-strip-takes-all");
        Assert.Contains(plot.Inset(Length.FromFeet(31)).Findings, f => f.Code == "land-strip-takes-all");
        Assert.Throws<ArgumentOutOfRangeException>(() => plot.Inset(Length.FromFeet(-0.1)));
    }

    [Fact]
    public void A_strip_splits_an_hourglass()
    {
        var glass = PlotOutline.FromCorners([P(0, 0), P(100, 0), P(55, 100), P(100, 200), P(0, 200), P(45, 100)]);
        var divided = glass.Inset(Length.FromFeet(8));
        Assert.Equal(2, divided.Parts.Length);
        Assert.Contains(divided.Findings, f => f.Code == "land-strip-splits");
    }

    [Fact]
    public void A_strip_along_one_side_leaves_the_others_alone()
    {
        var plot = PlotOutline.Rectangle(Length.FromFeet(100), Length.FromFeet(60));
        Near.Assert(100 * 40, plot.InsetAlong(Length.FromFeet(20), 1).Inside.SquareFeet);
        Near.Assert(80 * 60, plot.InsetAlong(Length.FromFeet(20), 2).Inside.SquareFeet);
        Assert.Contains(plot.InsetAlong(Length.FromFeet(60), 1).Findings, f => f.Code == "land-strip-takes-all");
        Assert.Throws<ArgumentOutOfRangeException>(() => plot.InsetAlong(Length.FromFeet(20), 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => plot.InsetAlong(Length.FromFeet(20), 0));
        var refused = Assert.Throws<InvalidOperationException>(() => PlotOutline.FromCorners([P(0, 0), P(10, 0), P(10, 10), P(5, 5), P(0, 10)]).InsetAlong(Length.FromFeet(1), 1));
        Assert.StartsWith("A strip along one side needs an outline without inward corners", refused.Message, StringComparison.Ordinal);
    }

    private static PlanePoint P(double east, double north) => PlanePoint.FromFeet(east, north);

    /// <summary>A place so many meters east and north of 40 N, 90 W.</summary>
    private static GeoPoint Fix(double east, double north) => GeoPoint.FromDegrees(40 + north / 111_034.6, -90 + east / 85_393.6);

    [Theory, InlineData(-84.0, 31.0, true), InlineData(31.0, -84.0, false), InlineData(65.9, 25.0, false), InlineData(66.1, 25.0, true)]
    public void Latitude_and_longitude_in_the_wrong_order_are_asked_about(double first, double second, bool asked)
    {
        var outline = PlotOutline.FromFixes([GeoPoint.FromDegrees(first, second), GeoPoint.FromDegrees(first, second + 0.0012), GeoPoint.FromDegrees(first + 0.0011, second + 0.0006)]);
        Assert.Equal(asked, outline.Findings.Any(f => f.Code == "land-latitude-unlikely"));
    }
}
