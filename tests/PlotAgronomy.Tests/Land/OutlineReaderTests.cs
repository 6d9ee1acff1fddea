using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Land;

/// <summary>The same plot (PLOT-TRI-31N of worked-areas.csv, 6988.4060 m2 by the geodesic library) in every format.</summary>
public class OutlineReaderTests
{
    private const double SquareMeters = 6988.4060;

    private const string Polygon = """
        { "type": "Polygon",
          "coordinates": [[[-84.0, 31.0], [-83.9988, 31.0], [-83.9994, 31.0011], [-84.0, 31.0]]] }
        """;

    private const string Track = """
        <?xml version="1.0"?>
        <gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1">
          <metadata><name>not the plot</name></metadata>
          <wpt lat="31.5" lon="-84"><name>gate</name></wpt>
          <trk><name>Back field</name><trkseg>
            <trkpt lat="31.0" lon="-84.0"><ele>70</ele></trkpt>
            <trkpt lat="31.0" lon="-83.9988"/>
            <trkpt lat="31.0011" lon="-83.9994"/>
          </trkseg></trk>
        </gpx>
        """;

    [Fact]
    public void Every_format_gives_the_same_plot()
    {
        string feature = $$"""{ "type": "FeatureCollection", "features": [ { "type": "Feature", "properties": { "name": "Back field" }, "geometry": {{Polygon}} } ] }""";
        string line = """{ "type": "LineString", "coordinates": [[-84.0, 31.0, 70], [-83.9988, 31.0, 71.5], [-83.9994, 31.0011, 72]] }""";
        string many = """{ "type": "MultiPolygon", "coordinates": [[[[-84.0, 31.0], [-83.9988, 31.0], [-83.9994, 31.0011], [-84.0, 31.0]]]] }""";
        string collection = $$"""{ "type": "GeometryCollection", "geometries": [ {{Polygon}} ] }""";
        string[] texts =
        [
            Polygon, feature, line, many, collection, Track,
            "31.0, -84.0\n31.0, -83.9988\n31.0011, -83.9994\n",
            "lat,lon\n31.0,-84.0\n31.0,-83.9988\n31.0011,-83.9994",
            "# corners\r\n\r\n31.0\t-84.0\r\n31.0 -83.9988\r\n31.0011   -83.9994\r\n",
            "longitude,latitude\n-84.0,31.0\n-83.9988,31.0\n-83.9994,31.0011",
            "\uFEFF31.0,-84.0\n31.0,-83.9988\n31.0011,-83.9994",
            Track.Replace("trkseg>", "SEG>", StringComparison.Ordinal).Replace("<SEG>", "", StringComparison.Ordinal).Replace("</SEG>", "", StringComparison.Ordinal).Replace("trkpt", "rtept", StringComparison.Ordinal).Replace("trk>", "rte>", StringComparison.Ordinal),
        ];
        foreach (string text in texts)
        {
            var outline = Assert.Single(PlotOutline.Read(text, "plot"));
            Near.Assert(SquareMeters, outline.Area.SquareMeters, 3e-6);
        }
    }

    [Fact]
    public void Names_come_from_the_file_or_are_its_name()
    {
        Assert.Equal("Back field", PlotOutline.Read(Track, "walk.gpx")[0].Name);
        Assert.Equal("plot.geojson", PlotOutline.Read(Polygon, "plot.geojson")[0].Name);
        string feature = $$"""{ "type": "Feature", "properties": { "name": "Pond edge" }, "geometry": {{Polygon}} }""";
        Assert.Equal("Pond edge", PlotOutline.Read(feature, "plot.geojson")[0].Name);
    }

    [Fact]
    public void A_track_in_pieces_is_joined_and_marks_stand_for_corners_only_without_a_track()
    {
        string stray = Track.Replace("<trk>", """<trk><name>stop</name><trkseg><trkpt lat="31.2" lon="-84.1"/></trkseg></trk><trk>""", StringComparison.Ordinal);
        var left = Assert.Single(PlotOutline.Read(stray, "file"));
        Assert.Contains(left.Findings, f => f.Code == "land-file-part-skipped" && f.Text.EndsWith(": 1 part of the file.", StringComparison.Ordinal));
        Assert.DoesNotContain(PlotOutline.Read(Track, "file")[0].Findings, f => f.Code == "land-file-part-skipped");
        string pieces = Track.Replace("""<trkpt lat="31.0" lon="-83.9988"/>""", """</trkseg><trkseg><trkpt lat="31.0" lon="-83.9988"/>""", StringComparison.Ordinal);
        Assert.Contains(PlotOutline.Read(pieces, "x")[0].Findings, f => f.Code == "land-track-joined");
        const string Marks = """<gpx><wpt lat="31.0" lon="-84.0"/><wpt lat="31.0" lon="-83.9988"/><wpt lat="31.0011" lon="-83.9994"/></gpx>""";
        var outline = Assert.Single(PlotOutline.Read(Marks, "x"));
        Assert.Contains(outline.Findings, f => f.Code == "land-marks-as-corners");
        Near.Assert(SquareMeters, outline.Area.SquareMeters, 3e-6);
    }

    [Fact]
    public void What_holds_no_outline_is_named_when_it_is_left_out()
    {
        string mixed = $$"""{ "type": "GeometryCollection", "geometries": [ { "type": "Point", "coordinates": [-84, 31] }, {{Polygon}} ] }""";
        Assert.Contains(PlotOutline.Read(mixed, "x")[0].Findings, f => f.Code == "land-file-part-skipped" && f.Text.Contains("(Point)", StringComparison.Ordinal));
    }

    [Fact]
    public void An_unclosed_ring_is_closed_with_a_finding() =>
        Assert.Contains(PlotOutline.Read(Polygon.Replace(", [-84.0, 31.0]]", "]", StringComparison.Ordinal), "x")[0].Findings, f => f.Code == "land-ring-not-closed");

    [Theory]
    [InlineData("""{ "type": "Polygon",""", 1, null, "not valid JSON")]
    [InlineData("{\n \"type\": \"Polygon\",\n \"coordinates\": 7 }", 3, "coordinates", "expected a list")]
    [InlineData("{\n \"type\": \"Polygon\" }", 1, "coordinates", "is missing")]
    [InlineData("{\n \"type\": \"Polygon\", \"type\": \"Polygon\" }", 2, "type", "stands twice")]
    [InlineData("{ \"type\": \"Blob\" }", 1, "type", "'Blob' is not a GeoJSON type")]
    [InlineData("{ \"type\": \"Point\", \"coordinates\": [1, 2] }", 1, null, "holds no outline")]
    [InlineData("{ \"type\": \"Polygon\", \"coordinates\": [\n[[-84, 31],\n[-84, \"31\"]]] }", 3, "coordinates[0][1]", "expected [longitude, latitude]")]
    [InlineData("{ \"type\": \"Polygon\", \"coordinates\": [\n[[31, -184], [1, 1], [2, 2]]] }", 2, "coordinates[0][0]", "latitude -184 is beyond 90")]
    [InlineData("{ \"type\": \"Polygon\", \"coordinates\": [\n[[500000, 40], [1, 1], [2, 2]]] }", 2, "coordinates[0][0]", "longitude 500000 is beyond 180")]
    [InlineData("{ \"type\": \"Polygon\", \"coordinates\": [[[0,0],[3,0],[3,3],[0,0]],[[1,1],[2,1],[2,2],[1,1]]] }", 1, "coordinates", "has a hole")]
    [InlineData("{ \"type\": \"Polygon\", \"coordinates\": [] }", 1, "coordinates", "needs a ring")]
    [InlineData("{ \"type\": \"Polygon\", \"coordinates\": [\n[[-84, 31], [-83.99, 31.01], [-83.99, 31], [-84, 31.01], [-84, 31]]] }", 2, "coordinates[0]", "crosses itself")]
    [InlineData("{ \"type\": \"LineString\", \"coordinates\": [[-84, 31], [-83, 31]] }", 1, "coordinates", "at least 3 different corners")]
    [InlineData("{ \"type\": \"Polygon\", \"crs\": { \"properties\": { \"name\": \"EPSG:32616\" } }, \"coordinates\": [] }", 1, "crs", "only WGS84")]
    [InlineData("{ \"type\": \"Feature\", \"geometry\": null }", 1, null, "holds no outline")]
    [InlineData("<gpx>\n<trk><trkseg>\n<trkpt lat='31'/></trkseg></trk></gpx>", 3, "trkpt lon", "expected decimal degrees, found ''")]
    [InlineData("<gpx>\n<trk><trkseg>\n<trkpt lat='31,5' lon='2'/></trkseg></trk></gpx>", 3, "trkpt lat", "found '31,5'")]
    [InlineData("<gpx>\n<trk><trkseg>\n<trkpt lat='131' lon='2'/></trkseg></trk></gpx>", 3, "trkpt", "latitude 131 is beyond 90")]
    [InlineData("<gpx>\n<trk></gpx>", 2, null, "not valid GPX")]
    [InlineData("<gpx></gpx>", 1, "gpx", "holds no outline")]
    [InlineData("<kml></kml>", 1, "kml", "expected a gpx file")]
    [InlineData("<!DOCTYPE gpx [ <!ENTITY e SYSTEM 'file:///etc/hostname'> ]>\n<gpx>&e;</gpx>", 1, null, "not valid GPX")]
    [InlineData("31, -84\n31, x\n", 2, "longitude", "found 'x'")]
    [InlineData("31, -84\n31\n", 2, null, "expected latitude and longitude")]
    [InlineData("31,5, -84,1\n", 1, null, "expected latitude and longitude")]
    [InlineData("1,45,-93\n2,45.001,-93\n3,45.001,-92.999", 1, null, "three columns need a first line")]
    [InlineData("45, -93\n45, -92.99\n45, -92.995", 3, "latitude, longitude", "on one line")]
    [InlineData("north,west\n31,-84", 1, null, "start with 'lat' and 'lon'")]
    [InlineData("131, -84\n", 1, "latitude, longitude", "in the right order")]
    [InlineData("31, -84\n31, -83.99\n", 3, "latitude, longitude", "at least 3 different corners")]
    [InlineData("", 1, "latitude, longitude", "no position")]
    public void A_broken_file_is_refused_with_file_line_and_field(string text, int line, string? field, string problem)
    {
        var error = Assert.Throws<DataFormatException>(() => PlotOutline.Read(text, "walk"));
        Assert.Equal("walk", error.File);
        Assert.Equal((line, field), (error.Line, error.Field));
        Assert.Contains(problem, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_long_or_missing_input_is_refused()
    {
        Assert.Throws<DataFormatException>(() => PlotOutline.Read(new string(' ', OutlineParts.LongestText + 1), "walk"));
        Assert.Throws<ArgumentNullException>(() => PlotOutline.Read(null!, "walk"));
        Assert.Throws<ArgumentException>(() => PlotOutline.Read("31, -84", " "));
        string many = string.Join('\n', Enumerable.Range(0, 10_001).Select(i => FormattableString.Invariant($"31.{i:00000}, -84")));
        Assert.Contains("at most 10000 corners", Assert.Throws<DataFormatException>(() => PlotOutline.Read(many, "walk")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Reading_does_not_follow_the_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        foreach (string text in new[] { Polygon, Track, "31.0, -84.0\n31.0, -83.9988\n31.0011, -83.9994\n" })
        {
            Near.Assert(SquareMeters, PlotOutline.Read(text, "plot")[0].Area.SquareMeters, 3e-6);
        }
    }
}
