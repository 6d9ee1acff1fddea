using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Land;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

[Properties(Arbitrary = [typeof(PlotArbitraries), typeof(LandArbitraries)])]
public class LandProperties
{
    [Property]
    public bool Area_and_perimeter_agree_with_the_geometry_library(PlotOutline outline) =>
        Near.Equal(Geometry.Of(outline).Area, outline.Area.SquareFeet, 1e-10) && Near.Equal(Geometry.Of(outline).Length, outline.Perimeter.Feet, 1e-10);

    [Property]
    public bool Direction_and_first_corner_do_not_matter(PlotOutline outline, PositiveInt turn)
    {
        int first = turn.Get % outline.Corners.Length;
        var turned = outline.Corners.Skip(first).Concat(outline.Corners.Take(first)).Reverse().ToList();
        return Near.Equal(outline.Area.SquareFeet, PlotOutline.FromCorners(turned).Area.SquareFeet, 1e-10);
    }

    [Property]
    public bool Moving_a_plot_keeps_its_area(PlotOutline outline, int east, int north) =>
        Near.Equal(outline.Area.SquareFeet, PlotOutline.FromCorners(
            [.. outline.Corners.Select(c => PlanePoint.FromFeet(c.EastFeet + east, c.NorthFeet + north))]).Area.SquareFeet, 1e-9);

    [Property]
    public bool Twice_the_sides_is_four_times_the_area(PlotOutline outline) =>
        Near.Equal(4 * outline.Area.SquareFeet, PlotOutline.FromCorners(
            [.. outline.Corners.Select(c => PlanePoint.FromFeet(2 * c.EastFeet, 2 * c.NorthFeet))]).Area.SquareFeet, 1e-10);

    [Property]
    public bool An_inset_agrees_with_the_geometry_librarys_inward_buffer(PlotOutline outline, PositiveInt strip)
    {
        double feet = 1 + strip.Get % 80;
        double expected = Geometry.Inset(Geometry.Of(outline), feet).Area;
        double actual = outline.Inset(Length.FromFeet(feet)).Inside.SquareFeet;
        // The library drops corners of less than a degree or so while it buffers.
        return Math.Abs(expected - actual) <= 2e-3 * feet * feet * outline.Corners.Length + 2e-5 * outline.Area.SquareFeet;
    }

    [Property]
    public bool A_narrow_strip_of_a_convex_outline_follows_the_closed_form(ConvexOutline convex) => FollowsTheClosedForm(convex.Outline, 1e-9);

    [Property]
    public bool A_narrow_strip_with_inward_corners_follows_the_closed_form(PlotOutline outline) => FollowsTheClosedForm(outline, 1e-6);

    [Property]
    public bool Strip_and_inside_make_up_the_plot(PlotOutline outline, PositiveInt strip)
    {
        var divided = outline.Inset(Length.FromFeet(strip.Get % 60));
        return Near.Equal(outline.Area.SquareFeet, divided.Inside.SquareFeet + divided.Strip.SquareFeet, 1e-9) && divided.Strip.SquareFeet >= -1e-6;
    }

    [Property]
    public bool A_wider_strip_never_leaves_more(PlotOutline outline, PositiveInt one, PositiveInt other)
    {
        double narrow = Math.Min(one.Get % 90, other.Get % 90), wide = Math.Max(one.Get % 90, other.Get % 90);
        return outline.Inset(Length.FromFeet(wide)).Inside.SquareFeet <= outline.Inset(Length.FromFeet(narrow)).Inside.SquareFeet + 1e-6;
    }

    [Property]
    public bool Latitude_and_longitude_come_back(PlotOutline outline, int latitude, int longitude)
    {
        var fixes = FixesOnEarth(outline, latitude % 65, longitude % 180);
        var placed = PlotOutline.FromFixes([.. fixes]);
        return placed.Corners.All(c => placed.Locate(c) is { } located && fixes.Exists(fix => AreSame(fix, located)));
    }

    /// <summary>Within a tenth of a millimeter.</summary>
    private static bool AreSame(GeoPoint one, GeoPoint other)
    {
        double turn = Math.Abs(one.LongitudeDegrees - other.LongitudeDegrees);
        return Math.Abs(one.LatitudeDegrees - other.LatitudeDegrees) < 1e-9 && Math.Min(turn, 360 - turn) < 1e-9;
    }

    [Property]
    public bool A_plot_placed_on_the_earth_keeps_its_area_as_far_as_one_latitude_can_tell(PlotOutline outline, int latitude, int longitude) =>
        Near.Equal(outline.Area.SquareFeet, OnEarth(outline, latitude % 65, longitude % 180).Area.SquareFeet, 3e-5);

    [Property]
    public bool A_rectangle_in_meters_is_the_rectangle_in_feet(PositiveInt length, PositiveInt width) =>
        Near.Equal(PlotArea.FromRectangle(Length.FromFeet(length.Get), Length.FromFeet(width.Get)).Area.SquareFeet,
            PlotArea.FromRectangle(Length.FromMeters(length.Get * 0.3048), Length.FromMeters(width.Get * 0.3048)).Area.SquareFeet);

    [Property]
    public bool Three_sides_of_a_drawn_triangle_give_its_area_in_any_order(PositiveInt a, PositiveInt b, PositiveInt angle)
    {
        double between = (1 + angle.Get % 178) * Math.PI / 180;
        double c = Math.Sqrt((double)a.Get * a.Get + (double)b.Get * b.Get - 2.0 * a.Get * b.Get * Math.Cos(between));
        double expected = 0.5 * a.Get * b.Get * Math.Sin(between);
        return new[] { (a.Get, (double)b.Get, c), ((double)b.Get, c, (double)a.Get), (c, (double)a.Get, (double)b.Get) }
            .All(s => Near.Equal(expected, PlotArea.FromThreeSides(Length.FromFeet(s.Item1), Length.FromFeet(s.Item2), Length.FromFeet(s.Item3)).Area.SquareFeet, 1e-7));
    }

    [Property]
    public bool A_steeper_plot_has_more_ground(Area area, PositiveInt one, PositiveInt other)
    {
        double gentle = Math.Min(one.Get % 100, other.Get % 100), steep = Math.Max(one.Get % 100, other.Get % 100);
        var plot = PlotArea.Stated(area);
        return plot.OnSlope(Slope.FromPercent(gentle)).Area.Acres <= plot.OnSlope(Slope.FromPercent(steep)).Area.Acres && plot.OnSlope(Slope.Level).Area.Acres == area.Acres;
    }

    [Property]
    public bool Single_steps_and_double_paces_measure_the_same(PositiveInt steps, PositiveInt count)
    {
        var single = PaceCalibration.FromWalks(Length.FromFeet(400), StepCount.FromSingleSteps(100 + steps.Get % 80));
        var dual = PaceCalibration.FromWalks(Length.FromFeet(400), StepCount.FromDoublePaces((100 + steps.Get % 80) / 2.0));
        return Near.Equal(single.Measure(StepCount.FromSingleSteps(count.Get)).Feet, dual.Measure(StepCount.FromDoublePaces(count.Get / 2.0)).Feet);
    }

    /// <summary>Closed form while every side remains: A - P e + e2 x (sum of cot(corner / 2), less half the turn of each inward corner's arc).</summary>
    private static bool FollowsTheClosedForm(PlotOutline outline, double relative)
    {
        var polygon = Geometry.Of(outline);
        int count = outline.Corners.Length;
        double shortest = Enumerable.Range(0, count).Min(i => polygon.Coordinates[i].Distance(polygon.Coordinates[i + 1]));
        double[] corners = [.. Enumerable.Range(0, count).Select(i => Corner(outline, i))];
        double sharpest = corners.Min(c => Math.Tan(Math.Min(c, Math.PI / 2) / 2));
        double feet = Math.Min(shortest, polygon.Area / polygon.Length) * sharpest / 8;
        double expected = polygon.Area - polygon.Length * feet + feet * feet * corners.Sum(c => c < Math.PI ? 1 / Math.Tan(c / 2) : -(c - Math.PI) / 2);
        return Near.Equal(expected, outline.Inset(Length.FromFeet(feet)).Inside.SquareFeet, relative);
    }

    private static PlotOutline OnEarth(PlotOutline outline, double latitude, double longitude) =>
        PlotOutline.FromFixes([.. FixesOnEarth(outline, latitude, longitude)]);

    private static List<GeoPoint> FixesOnEarth(PlotOutline outline, double latitude, double longitude)
    {
        // Laid out by the radii of the WGS84 ellipsoid at the plot's zero.
        double e2 = (2 - 1 / 298.257223563) / 298.257223563, w = Math.Sqrt(1 - e2 * Math.Pow(Math.Sin(latitude * Math.PI / 180), 2));
        double east = 6378137 / w * Math.Cos(latitude * Math.PI / 180) * Math.PI / 180 / 0.3048, north = 6378137 * (1 - e2) / (w * w * w) * Math.PI / 180 / 0.3048;
        return [.. outline.Corners.Select(c => GeoPoint.FromDegrees(latitude + c.NorthFeet / north, Wrapped(longitude + c.EastFeet / east)))];
    }

    private static double Wrapped(double degrees) => degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;

    /// <summary>Angle inside the corner; above pi when it points inwards.</summary>
    private static double Corner(PlotOutline outline, int i)
    {
        int count = outline.Corners.Length;
        var (before, corner, after) = (outline.Corners[(i + count - 1) % count], outline.Corners[i], outline.Corners[(i + 1) % count]);
        double back = Math.Atan2(before.NorthFeet - corner.NorthFeet, before.EastFeet - corner.EastFeet), ahead = Math.Atan2(after.NorthFeet - corner.NorthFeet, after.EastFeet - corner.EastFeet);
        return back - ahead + (back < ahead ? 2 * Math.PI : 0);
    }
}
