using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Outlines, areas, edge strips, paces and slopes.</summary>
internal static class LandSums
{
    private const string Polygon =
        """{ "type": "Polygon", "coordinates": [[[-84.0, 31.0], [-83.9988, 31.0], [-83.9994, 31.0011], [-84.0, 31.0]]] }""";

    private const string Track = """
        <?xml version="1.0"?>
        <gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1">
          <trk><name>Back field</name><trkseg>
            <trkpt lat="31.0" lon="-84.0"/><trkpt lat="31.0" lon="-83.9988"/><trkpt lat="31.0011" lon="-83.9994"/>
          </trkseg></trk>
        </gpx>
        """;

    private const string List = "31.0, -84.0\n31.0, -83.9988\n31.0011, -83.9994\n";

    internal static void Record(Recorder recorder)
    {
        Values(recorder);
        Paces(recorder);
        Shapes(recorder);
        Outlines(recorder);
        Files(recorder);
    }

    private static void Values(Recorder recorder)
    {
        recorder.Call("land: bearings", () => new[] { Bearing.FromDegrees(200).Degrees, Bearing.FromDegrees(360).Degrees });
        recorder.Call("land: equal bearings", () =>
            new[] { Bearing.FromDegrees(360) == Bearing.FromDegrees(0), Bearing.FromDegrees(1) != Bearing.FromDegrees(0) }
        );
        recorder.Call("land: a fix", () => GeoPoint.FromDegrees(31.0011, -83.9994));
        recorder.Call("land: a fix beyond the pole", () => GeoPoint.FromDegrees(91, 0));
        recorder.Call("land: equal fixes", () =>
            new[]
            {
                GeoPoint.FromDegrees(1, 2) == GeoPoint.FromDegrees(1, 2),
                GeoPoint.FromDegrees(1, 2) != GeoPoint.FromDegrees(1, 2),
            }
        );
        recorder.Call("land: a place from feet", () => PlanePoint.FromFeet(100, 200));
        recorder.Call("land: equal places", () =>
            new[]
            {
                PlanePoint.FromFeet(1, 2) == PlanePoint.FromFeet(1, 2),
                PlanePoint.FromFeet(1, 2) != PlanePoint.FromFeet(1, 2),
            }
        );
        foreach (double percent in new[] { 0, 3, 12.5, 40, 100 })
        {
            recorder.Call($"land: a slope of {percent} percent", () => Slope.FromPercent(percent));
        }

        recorder.Call("land: a slope of 10 degrees", () => Slope.FromDegrees(10));
        recorder.Call("land: level ground", () => Slope.Level);
        recorder.Call("land: equal slopes", () =>
            new[]
            {
                Slope.FromPercent(2) == Slope.FromPercent(2),
                Slope.FromPercent(2) != Slope.FromPercent(2),
            }
        );
        recorder.Call("land: a taped length", () => MeasuredLength.FromLength(Feet(208.7)));
        recorder.Call("land: a length with an error", () => MeasuredLength.WithError(Feet(208.7), Feet(2.5)));
        recorder.Call("land: a measured length as length", () => MeasuredLength.WithError(Feet(208.7), Feet(2.5)).ToLength());
        recorder.Call("land: a length as measured length", () => (MeasuredLength)Feet(12));
        recorder.Call("land: equal measured lengths", () =>
            new[] { MeasuredLength.FromLength(Feet(2)) == Feet(2), MeasuredLength.FromLength(Feet(2)) != Feet(3) }
        );
    }

    private static void Paces(Recorder recorder)
    {
        recorder.Call("land: 80 steps", () => StepCount.FromSingleSteps(80));
        recorder.Call("land: 40 double paces", () => StepCount.FromDoublePaces(40));
        recorder.Call("land: equal counts of steps", () =>
            new[]
            {
                StepCount.FromSingleSteps(80) == StepCount.FromDoublePaces(40),
                StepCount.FromSingleSteps(80) != StepCount.FromDoublePaces(40),
            }
        );
        recorder.Call("land: paces from one walk", () => PaceCalibration.FromWalks(Feet(100), StepCount.FromSingleSteps(39)));
        recorder.Call("land: paces from three walks", () => Walked());
        recorder.Call("land: paces from no walk", () => PaceCalibration.FromWalks(Feet(100)));
        recorder.Call("land: a paced side", () => Walked().Measure(StepCount.FromDoublePaces(43)));
        recorder.Call("land: area of paced sides", () =>
            PlotArea.FromRectangle(
                Walked().Measure(StepCount.FromSingleSteps(86)),
                Walked().Measure(StepCount.FromSingleSteps(121))
            )
        );
    }

    private static PaceCalibration Walked() =>
        PaceCalibration.FromWalks(
            Feet(300),
            StepCount.FromSingleSteps(118),
            StepCount.FromSingleSteps(121),
            StepCount.FromSingleSteps(116)
        );

    private static void Shapes(Recorder recorder)
    {
        recorder.Call("land: area of a rectangle", () => PlotArea.FromRectangle(Feet(208.7), Feet(120)));
        recorder.Call("land: area of a rectangle with errors", () =>
            PlotArea.FromRectangle(MeasuredLength.WithError(Feet(208.7), Feet(2)), MeasuredLength.WithError(Feet(120), Feet(1)))
        );
        recorder.Call("land: area of a triangle", () => PlotArea.FromTriangle(Feet(150), Feet(90)));
        recorder.Call("land: area of three sides", () => PlotArea.FromThreeSides(Feet(150), Feet(120), Feet(90)));
        recorder.Call("land: area of three sides that do not close", () =>
            PlotArea.FromThreeSides(Feet(150), Feet(20), Feet(90))
        );
        recorder.Call("land: area of a trapezoid", () => PlotArea.FromTrapezoid(Feet(150), Feet(120), Feet(90)));
        recorder.Call("land: area of a circle", () => PlotArea.FromCircle(Feet(80)));
        recorder.Call("land: area of an ellipse", () => PlotArea.FromEllipse(Feet(120), Feet(70)));
        MeasuredLength[] widths = [Feet(0), Feet(40), Feet(62), Feet(58), Feet(12)];
        recorder.Call("land: area of offsets, straight edges", () => PlotArea.FromOffsets(Feet(25), widths));
        recorder.Call("land: area of offsets, smooth edges", () =>
            PlotArea.FromOffsets(Feet(25), widths, OffsetRule.SmoothEdges)
        );
        recorder.Call("land: area of four offsets, smooth edges", () =>
            PlotArea.FromOffsets(Feet(25), widths[..4], OffsetRule.SmoothEdges)
        );
        var stated = PlotArea.Stated(Acres(0.62));
        recorder.Call("land: a stated area", () => stated);
        recorder.Call("land: a stated area on a slope", () => stated.OnSlope(Slope.FromPercent(18)));
        recorder.Call("land: a stated area of a given error", () => stated.WithRelativeError(0.07));
        recorder.Call("land: a guess of an area", () => PlotArea.FromRectangle(Feet(208.7), Feet(120)).ComparedWith(Acres(0.75)));
        recorder.Call("land: how far a guess is off", () => PlotArea.FromRectangle(Feet(208.7), Feet(120)).ExcessOf(Acres(0.75)));
        recorder.Call("land: a close guess", () => PlotArea.FromRectangle(Feet(208.7), Feet(120)).ComparedWith(Acres(0.58)));
        recorder.Call("land: an area made by hand", () => new PlotArea
        {
            Area = Acres(0.5),
            Method = AreaMethod.Sides,
            RelativeError = 0.1,
            Outline = null,
        });
    }

    private static void Outlines(Recorder recorder)
    {
        var wedge = PlotOutline.FromCorners(
            [
                .. new[] { (0, 0), (220, 10), (240, 130), (120, 90), (-10, 140) }.Select(c =>
                    PlanePoint.FromFeet(c.Item1, c.Item2)
                ),
            ],
            "wedge"
        );
        var walked = PlotOutline.FromFixes(
            [GeoPoint.FromDegrees(31, -84), GeoPoint.FromDegrees(31, -83.9988), GeoPoint.FromDegrees(31.0011, -83.9994)],
            "walked"
        );
        recorder.Call("land: an outline from corners", () => wedge);
        recorder.Call("land: an outline from fixes", () => walked);
        recorder.Call("land: a rectangle as outline", () => PlotOutline.Rectangle(Feet(208.7), Feet(120)));
        recorder.Call("land: an outline that crosses itself", () =>
            PlotOutline.FromCorners([
                PlanePoint.FromFeet(0, 0),
                PlanePoint.FromFeet(100, 100),
                PlanePoint.FromFeet(100, 0),
                PlanePoint.FromFeet(0, 100),
            ])
        );
        recorder.Call("land: area of an outline", () => PlotArea.FromOutline(wedge));
        recorder.Call("land: area of a walked outline", () => PlotArea.FromOutline(walked));
        recorder.Call("land: area of a walked outline with poor fixes", () => PlotArea.FromOutline(walked, Length.FromMeters(5)));
        recorder.Call("land: places in an outline", () =>
            new[]
            {
                wedge.Contains(PlanePoint.FromFeet(100, 50)),
                wedge.Contains(PlanePoint.FromFeet(120, 120)),
                wedge.Contains(PlanePoint.FromFeet(-50, 0)),
            }
        );
        recorder.Call("land: a place on the earth", () => walked.Locate(PlanePoint.FromFeet(50, 20)));
        recorder.Call("land: a place of a drawn outline on the earth", () => wedge.Locate(PlanePoint.FromFeet(50, 20)));
        foreach (double strip in new[] { 0, 8, 30, 80 })
        {
            recorder.Call($"land: an edge strip of {strip} ft", () => wedge.Inset(Feet(strip)));
        }

        var convex = PlotOutline.FromCorners([
            .. new[] { (0, 0), (220, 10), (240, 130), (-10, 140) }.Select(c => PlanePoint.FromFeet(c.Item1, c.Item2)),
        ]);
        for (int side = 0; side < 6; side++)
        {
            int along = side;
            recorder.Call($"land: a strip of 12 ft along side {along}", () => convex.InsetAlong(Feet(12), along));
        }
    }

    private static void Files(Recorder recorder)
    {
        recorder.Call("land: a file of one polygon", () => PlotOutline.Read(Polygon, "plot"));
        recorder.Call("land: a track", () => PlotOutline.Read(Track, "plot"));
        recorder.Call("land: a list of fixes", () => PlotOutline.Read(List, "plot"));
        recorder.Call("land: a polygon read as such", () => PlotOutline.ReadGeoJson(Polygon, "plot"));
        recorder.Call("land: a track read as such", () => PlotOutline.ReadGpx(Track, "plot"));
        recorder.Call("land: a list read as such", () => PlotOutline.ReadList(List, "plot"));
        foreach (string broken in new[] { "", "31, -84\n31, x\n", "131, -84\n", """{ "type": "Blob" }""", "<kml></kml>" })
        {
            recorder.Call($"land: the broken file '{broken.ReplaceLineEndings(" / ")}'", () => LineAndField(broken));
        }
    }

    private static (int Line, string? Field) LineAndField(string broken)
    {
        try
        {
            return (-PlotOutline.Read(broken, "plot").Length, null);
        }
        catch (DataFormatException problem)
        {
            return (problem.Line, problem.Field);
        }
    }
}
