using System.Xml.Linq;
using PlotAgronomy.Land;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.House;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>Pictures of docs/pictures, drawn from invented plots. Run with UPDATE_DOCS=1 to redraw them.</summary>
public class PictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Names => [.. Pictures().Keys];

    [Theory, MemberData(nameof(Names)), Trait("Category", "Generated")]
    public void The_picture_in_the_docs_is_current(string name) => GeneratedDocsTests.AssertCurrent($"docs/pictures/{name}.svg", Pictures()[name]);

    [Theory, MemberData(nameof(Names))]
    public void A_picture_is_one_plain_sheet_of_its_own(string name)
    {
        var root = XDocument.Parse(Pictures()[name]).Root!;
        Assert.Equal(Svg + "svg", root.Name);
        Assert.Empty(root.Descendants().Where(e => e.Name.LocalName is "script" or "image" or "foreignObject" or "style"));
        Assert.Empty(root.Descendants().SelectMany(e => e.Attributes()).Where(a => a.Name.LocalName is "href" || a.Value.Contains("NaN", StringComparison.Ordinal) || a.Value.Contains("Infinity", StringComparison.Ordinal)));
        Assert.All(root.Descendants().SelectMany(e => e.Attributes()).Where(a => a.Name.LocalName is "fill" or "stroke"), a => Assert.True(IsGrey(a.Value), a.Value));
        Assert.Single(root.Elements(Svg + "title"));
    }

    [Fact]
    public void Every_pass_of_a_plan_is_drawn()
    {
        var plan = Bent();
        var lines = XDocument.Parse(plan.ToSvg()).Descendants(Svg + "line").Where(l => l.Attribute("stroke-width")!.Value == "0.9").ToList();
        Assert.Equal(plan.Passes.Length + 1, lines.Count); // and the legend's own
    }

    [Fact]
    public void The_scale_bar_is_as_long_as_it_says()
    {
        // A rectangle of 436 ft is drawn 708 units wide: 800 less the margins. The bar of 100 ft is 4 parts of it.
        var root = XDocument.Parse(Pictures()["plot-rectangle"]).Root!;
        double[] parts = [.. root.Descendants(Svg + "polygon").Where(p => p.Attribute("stroke-width")?.Value == "0.8").Select(p => Extent(p.Attribute("points")!.Value))];
        Assert.Equal(4, parts.Length);
        Assert.Contains(root.Descendants(Svg + "text"), t => t.Value == "100 ft");
        Assert.Equal(100.0 / 436 * 708, parts.Sum(), 0.05);
    }

    [Theory, InlineData(1), InlineData(5), InlineData(15), InlineData(60)]
    public void The_labels_of_the_band_do_not_run_into_each_other(double limit)
    {
        double[] places = [.. XDocument.Parse(Overlapped().ToSvg(limit)).Descendants(Svg + "text")
            .Where(t => t.Value.StartsWith("mean", StringComparison.Ordinal) && (double)t.Attribute("x")! > 600).Select(t => (double)t.Attribute("y")!).Order()];
        Assert.Equal(3, places.Length);
        Assert.All(places.Zip(places.Skip(1)), p => Assert.True(p.Second - p.First >= 12, $"{p.First} and {p.Second}"));
    }

    [Fact]
    public void A_name_with_signs_stays_text()
    {
        var plan = FieldPasses.Lay(PlotOutline.Rectangle(Length.FromFeet(300), Length.FromFeet(90), "Oak & <pond>"), Options(20));
        Assert.Contains(XDocument.Parse(plan.ToSvg()).Descendants(Svg + "text"), t => t.Value == "Oak & <pond>");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(100.5)]
    [InlineData(double.NaN)]
    public void The_limit_drawn_is_a_percentage(double limit) => Assert.Throws<ArgumentOutOfRangeException>(() => Overlapped().ToSvg(limit));

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Pictures_do_not_follow_the_culture(string culture)
    {
        var before = Pictures();
        using var scope = new CultureScope(culture);
        Assert.Equal(before, Pictures());
    }

    private static Dictionary<string, string> Pictures() => new()
    {
        ["plot-bent"] = Bent().ToSvg(),
        ["plot-rectangle"] = FieldPasses.Lay(PlotOutline.Rectangle(Length.FromFeet(436), Length.FromFeet(100), "Long field"), Options(15)).ToSvg(),
        ["plot-lap"] = FieldPasses.Lay(PlotOutline.FromCorners(
            [PlanePoint.FromFeet(0, 30), PlanePoint.FromFeet(120, 0), PlanePoint.FromFeet(230, 60), PlanePoint.FromFeet(250, 190), PlanePoint.FromFeet(110, 240), PlanePoint.FromFeet(10, 160)], "Pond bank"), Options(14, lap: true)).ToSvg(),
        ["plot-large"] = FieldPasses.Lay(PlotOutline.Rectangle(Length.FromFeet(900), Length.FromFeet(880), "Ridge"), Options(12)).ToSvg(),
        ["plot-narrow"] = FieldPasses.Lay(PlotOutline.FromFixes(
            [GeoPoint.FromDegrees(40, -90), GeoPoint.FromDegrees(40.0001, -89.9997), GeoPoint.FromDegrees(40.0021, -89.9994), GeoPoint.FromDegrees(40.0020, -89.9997)], "Fence strip"), Options(12)).ToSvg(),
        ["plot-round"] = FieldPasses.Lay(PlotArea.FromCircle(Length.FromFeet(72)).Outline!, Options(12, lap: true)).ToSvg(),
        ["pattern-skewed"] = Overlapped().ToSvg(),
        ["pattern-even"] = OverlappedPattern.For(SpreadPattern.Bell(Length.FromFeet(5)), Length.FromFeet(12), DrivingMethod.OneDirection).ToSvg(20),
    };

    private static FieldPasses Bent() => FieldPasses.Lay(PlotOutline.FromCorners(
        [PlanePoint.FromFeet(0, 0), PlanePoint.FromFeet(330, 40), PlanePoint.FromFeet(310, 190), PlanePoint.FromFeet(200, 170), PlanePoint.FromFeet(150, 95), PlanePoint.FromFeet(60, 120), PlanePoint.FromFeet(40, 240), PlanePoint.FromFeet(-40, 220)], "Creek bend"), Options(18));

    private static OverlappedPattern Overlapped() => OverlappedPattern.For(
        SpreadPattern.FromTrays([0, 1, 4, 8, 11, 12, 12, 11, 9, 8, 6, 5, 3, 2, 0], Length.FromFeet(2), Length.FromFeet(-12)), Length.FromFeet(16), DrivingMethod.BackAndForth);

    private static FieldPassesRequest Options(double swath, bool lap = false) => new()
    {
        Rate = ApplicationRate.FromPoundsPerAcre(40),
        Swath = Length.FromFeet(swath),
        Speed = Speed.FromMilesPerHour(3),
        HeadlandLap = lap,
    };

    private static bool IsGrey(string color) => color is "none" or "black" or "white" or "url(#hatch)" || (color.Length == 7 && color[1..3] == color[3..5] && color[3..5] == color[5..7]);

    private static double Extent(string points)
    {
        double[] x = [.. points.Split(' ').Select(p => double.Parse(p.Split(',')[0], System.Globalization.CultureInfo.InvariantCulture))];
        return x.Max() - x.Min();
    }
}
