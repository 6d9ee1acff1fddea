using PlotAgronomy.Land;
using PlotAgronomy.Tests.Support;
using ProjNet.CoordinateSystems;
using ProjNet.CoordinateSystems.Transformations;

namespace PlotAgronomy.Tests.Land;

/// <summary>The local plane against an equal-area map projection of a general library (Albers, WGS84).</summary>
public class ProjectionTests
{
    public static TheoryData<double, double> Places => new() { { 26.5, -98.2 }, { 31, -84 }, { 35.7, -92.4 }, { 40, -90 }, { 44.9, -69.4 }, { 48.3, -117.1 } };

    [Theory, MemberData(nameof(Places))]
    public void An_outline_has_the_area_of_its_equal_area_projection(double latitude, double longitude)
    {
        var transform = EqualArea(latitude, longitude);
        foreach (int corners in new[] { 3, 5, 8, 12 })
        {
            var fixes = Enumerable.Range(0, corners).Select(i => GeoPoint.FromDegrees(
                latitude + 0.001 * (1 + 0.4 * (i % 3)) * Math.Sin(2 * Math.PI * i / corners),
                longitude + 0.0015 * (1 + 0.4 * (i % 3)) * Math.Cos(2 * Math.PI * i / corners))).ToList();
            var projected = fixes.Select(f => transform.Transform([f.LongitudeDegrees, f.LatitudeDegrees])).Select(p => PlanePoint.FromFeet(p[0], p[1]));
            Near.Assert(Geometry.Of(projected).Area, PlotOutline.FromFixes(fixes).Area.SquareMeters, 3e-6);
        }
    }

    private static MathTransform EqualArea(double latitude, double longitude)
    {
        var wgs84 = GeographicCoordinateSystem.WGS84;
        List<ProjectionParameter> parameters =
        [
            new("central_meridian", longitude), new("latitude_of_center", latitude), new("longitude_of_center", longitude),
            new("standard_parallel_1", latitude - 0.5), new("standard_parallel_2", latitude + 0.5), new("false_easting", 0), new("false_northing", 0),
        ];
        var factory = new CoordinateSystemFactory();
        var projection = factory.CreateProjection("equal area", "Albers", parameters);
        var plane = factory.CreateProjectedCoordinateSystem("equal area", wgs84, projection, LinearUnit.Metre, new AxisInfo("East", AxisOrientationEnum.East), new AxisInfo("North", AxisOrientationEnum.North));
        return new CoordinateTransformationFactory().CreateFromCoordinateSystems(wgs84, plane).MathTransform;
    }
}
