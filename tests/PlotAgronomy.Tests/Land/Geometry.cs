using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using PlotAgronomy.Land;

namespace PlotAgronomy.Tests.Land;

/// <summary>The general geometry library as a second opinion.</summary>
internal static class Geometry
{
    internal static Polygon Of(PlotOutline outline) => Of(outline.Corners);

    internal static Polygon Of(IEnumerable<PlanePoint> corners)
    {
        var ring = corners.Select(c => new Coordinate(c.EastFeet, c.NorthFeet)).ToList();
        ring.Add(ring[0].Copy());
        return new GeometryFactory().CreatePolygon([.. ring]);
    }

    /// <summary>The places at least so far inside.</summary>
    internal static NetTopologySuite.Geometries.Geometry Inset(Polygon polygon, double feet) =>
        BufferOp.Buffer(polygon, -feet, new BufferParameters(90) { JoinStyle = JoinStyle.Round, SimplifyFactor = 0 });
}
