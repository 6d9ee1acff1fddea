using System.Globalization;
using System.Text;
using FsCheck.Xunit;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

/// <summary>Tracks as a receiver records them: hundreds of fixes that wander.</summary>
public class WalkedTrackTests
{
    public static TheoryData<int, double> Walks => new() { { 1, 2 }, { 2, 7 }, { 3, 15 }, { 4, 30 }, { 5, 45 } };

    [Theory, MemberData(nameof(Walks))]
    public void A_strip_along_a_wandering_track_agrees_with_the_geometry_library(int seed, double stripFeet)
    {
        var outline = PlotOutline.FromFixes(Walk(seed, 300));
        double expected = Geometry.Inset(Geometry.Of(outline), stripFeet).Area;
        Assert.Equal(expected, outline.Inset(Length.FromFeet(stripFeet)).Inside.SquareFeet, 3e-4 * expected);
    }

    [Theory, MemberData(nameof(Walks))]
    public void A_track_read_from_any_format_is_the_track(int seed, double unused)
    {
        _ = unused;
        var fixes = Walk(seed, 80);
        double squareFeet = PlotOutline.FromFixes(fixes).Area.SquareFeet;
        string list = Join(fixes, "\n", "{0}, {1}");
        string line = $$"""{ "type": "LineString", "coordinates": [{{Join(fixes, ",\n", "[{1}, {0}]")}}] }""";
        string gpx = $"<gpx><trk><trkseg>{Join(fixes, "\n", "<trkpt lat=\"{0}\" lon=\"{1}\"/>")}</trkseg></trk></gpx>";
        foreach (string text in new[] { list, line, gpx })
        {
            Near.Assert(squareFeet, PlotOutline.Read(text, "walk")[0].Area.SquareFeet, 1e-9);
        }
    }

    [Property]
    public bool Whatever_stands_in_a_file_is_read_or_refused_by_line(string? text) => ReadsOrRefuses(text ?? "") && ReadsOrRefuses("{" + text) && ReadsOrRefuses("<gpx>" + text);

    [Property]
    public bool A_file_with_one_letter_spoilt_is_read_or_refused_by_line(int place, char letter)
    {
        const string GeoJson = """{ "type": "Feature", "properties": { "name": "A" }, "geometry": { "type": "Polygon", "coordinates": [[[-84.0, 31.0], [-83.9988, 31.0], [-83.9994, 31.0011], [-84.0, 31.0]]] } }""";
        const string Gpx = """<gpx><trk><name>A</name><trkseg><trkpt lat="31.0" lon="-84.0"/><trkpt lat="31.0" lon="-83.9988"/><trkpt lat="31.0011" lon="-83.9994"/></trkseg></trk></gpx>""";
        return new[] { GeoJson, Gpx, "31.0, -84.0\n31.0, -83.9988\n31.0011, -83.9994\n" }.All(text =>
        {
            var spoilt = new StringBuilder(text) { [(int)((uint)place % (uint)text.Length)] = letter };
            return ReadsOrRefuses(spoilt.ToString());
        });
    }

    // Computed: 2,000 loops of 0.12 m2 each, half of 0.6 m by 0.4 m. More than two hours of a fix a second.
    [Fact]
    public void A_track_of_very_many_small_loops_is_cleaned_at_once()
    {
        const int Loops = 2000;
        const double Radius = 1600;
        var fixes = new List<GeoPoint>();
        for (int i = 0; i < Loops; i++)
        {
            double angle = 2 * Math.PI * i / Loops;
            var (sin, cos) = Math.SinCos(angle);
            foreach (var (along, outward) in new[] { (0.0, 0.0), (1.2, 0.0), (0.6, 0.4), (0.6, -0.4) })
            {
                double east = (Radius + outward) * cos - along * sin, north = (Radius + outward) * sin + along * cos;
                fixes.Add(GeoPoint.FromDegrees(40 + north / 111_034.6, -90 + east / 85_393.6));
            }
        }

        var watch = System.Diagnostics.Stopwatch.StartNew();
        var outline = PlotOutline.FromFixes(fixes);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 20);
        Assert.Contains(outline.Findings, f => f.Code == "land-loops-cut" && f.Text.Contains("2000", StringComparison.Ordinal));
        double squareMeters = outline.Area.SquareMeters;
        Assert.Equal(Math.PI * Radius * Radius, squareMeters, 0.002 * squareMeters);
    }

    private static bool ReadsOrRefuses(string text)
    {
        try
        {
            return PlotOutline.Read(text, "walk").Length > 0;
        }
        catch (DataFormatException problem)
        {
            return problem.Line >= 1 && problem.File == "walk";
        }
    }

    private static string Join(IEnumerable<GeoPoint> fixes, string between, string format) =>
        string.Join(between, fixes.Select(f => string.Format(CultureInfo.InvariantCulture, format, f.LatitudeDegrees, f.LongitudeDegrees)));

    /// <summary>Round a rectangle of 80 m by 60 m at 40 north, 90 west, wandering by some decimeters.</summary>
    private static List<GeoPoint> Walk(int seed, int points)
    {
        var random = new Random(seed);
        double east = 0, north = 0;
        var fixes = new List<GeoPoint>();
        for (int i = 0; i < points; i++)
        {
            double way = 4.0 * i / points, part = way - Math.Floor(way);
            var (x, y) = (int)way switch { 0 => (part, 0.0), 1 => (1.0, part), 2 => (1 - part, 1.0), _ => (0.0, 1 - part) };
            east = 0.95 * east + 0.8 * (random.NextDouble() - 0.5);
            north = 0.95 * north + 0.8 * (random.NextDouble() - 0.5);
            fixes.Add(GeoPoint.FromDegrees(Math.Round(40 + (60 * y + north) / 111_034.6, 7, MidpointRounding.AwayFromZero), Math.Round(-90 + (80 * x + east) / 85_393.6, 7, MidpointRounding.AwayFromZero)));
        }

        return fixes;
    }
}
