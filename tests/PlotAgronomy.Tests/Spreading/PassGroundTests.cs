using NetTopologySuite.Operation.Overlay;
using PlotAgronomy.Land;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Land;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>Ground covered, sown twice, missed and outside, held against a general geometry library on stars of fixed seeds.</summary>
public class PassGroundTests
{
    public static TheoryData<int, double> Laps
    {
        get
        {
            var laps = new TheoryData<int, double>();
            for (int seed = 0; seed < 30; seed++)
            {
                laps.Add(seed, 8 + 2 * (seed % 16));
            }

            return laps;
        }
    }

    [Theory, MemberData(nameof(Laps))]
    public void Missed_twice_and_outside_agree_with_the_geometry_library(int seed, double swath)
    {
        var random = new Random(seed);
        var outline = LandArbitraries.Star([.. Enumerable.Range(0, 5 + seed % 6).Select(_ => random.Next(60, 260))], random.Next(0, 360));
        var plan = Lay(outline, swath, lap: true);
        if (plan.Lap.IsEmpty)
        {
            Assert.Equal(0, plan.Missed.SquareFeet);
            return;
        }

        var plot = Geometry.Of(outline);
        NetTopologySuite.Geometries.Geometry lap = plan.Lap
            .Select(l => Geometry.Of(l).ExteriorRing.Buffer(swath / 2, 90))
            .Aggregate((a, b) => Overlay(a, b, SpatialFunction.Union));
        double outside = 0;
        var covered = lap;
        foreach (var pass in plan.Passes)
        {
            var strip = Strip(pass, plan.Spacing.Feet / 2);
            outside += Overlay(strip, plot, SpatialFunction.Difference).Area;
            covered = Overlay(covered, strip, SpatialFunction.Union);
        }

        double within = 1e-3 * plot.Area;
        double missed = Overlay(plot, covered, SpatialFunction.Difference).Area;
        double thrown = plan.LapLength.Feet * swath + plan.Passes.Sum(p => p.Length.Feet) * plan.Spacing.Feet;
        Assert.Equal(missed, plan.Missed.SquareFeet, within);
        Assert.Equal(outside, plan.OutsideShare * plot.Area, within);
        Assert.Equal(thrown - outside - (plot.Area - missed), plan.SownTwice.SquareFeet, 2 * within);
        Assert.Equal(10 * (thrown + missed) / 43_560, plan.Seed.Pounds, 10 * within / 43_560);

        // What is told is what was measured.
        Assert.Equal(plan.Missed.SquareFeet > 0.01 * plot.Area, plan.Findings.Any(f => f.Code == "spread-lap-misses"));
        Assert.Equal(plan.SownTwice.SquareFeet > 0.1 * plot.Area, plan.Findings.Any(f => f.Code == "spread-sown-twice"));
        Assert.Equal(plan.OutsideShare > 0.1, plan.Findings.Any(f => f.Code == "spread-outside"));
    }

    // A spike of 200 ft too narrow for a lap: it is missed, its seed is counted, and the picture hatches it.
    [Fact]
    public void A_spike_no_lap_reaches_is_missed_in_findings_load_and_picture()
    {
        var outline = PlotOutline.FromCorners([.. new (double East, double North)[] { (0, 0), (200, 0), (200, 95), (400, 100), (200, 105), (200, 200), (0, 200) }.Select(c => PlanePoint.FromFeet(c.East, c.North))]);
        var plan = Lay(outline, 20, lap: true);
        Assert.InRange(plan.Missed.SquareFeet, 700, 1300);
        Assert.Contains(plan.Findings, f => f.Code == "spread-lap-misses");
        string picture = plan.ToSvg();
        Assert.Contains("url(#hatch)", picture, StringComparison.Ordinal);
        Assert.DoesNotContain("evenodd", picture, StringComparison.Ordinal);
        Assert.DoesNotContain("hatch", Lay(outline, 20, lap: false).ToSvg(), StringComparison.Ordinal);
    }

    // Fifteen and a half feet wide under a swath of fifteen: there and back over the same ground.
    [Fact]
    public void A_lap_that_runs_beside_itself_is_told_as_sown_twice_not_as_outside()
    {
        var plan = Lay(PlotOutline.Rectangle(Length.FromFeet(100), Length.FromFeet(15.5)), 15, lap: true);
        Assert.Contains(plan.Findings, f => f.Code == "spread-sown-twice");
        Assert.Equal(0, plan.OutsideShare);
        Assert.InRange(plan.SownTwice.SquareFeet, 900, 1100);
    }

    private static NetTopologySuite.Geometries.Geometry Overlay(NetTopologySuite.Geometries.Geometry one, NetTopologySuite.Geometries.Geometry other, SpatialFunction function) =>
        NetTopologySuite.Operation.OverlayNG.OverlayNGRobust.Overlay(one, other, function);

    private static NetTopologySuite.Geometries.Polygon Strip(SpreaderPass pass, double half)
    {
        double east = pass.End.EastFeet - pass.Start.EastFeet, north = pass.End.NorthFeet - pass.Start.NorthFeet;
        double length = Math.Sqrt(east * east + north * north);
        double e = -north / length * half, n = east / length * half;
        return Geometry.Of(
        [
            PlanePoint.FromFeet(pass.Start.EastFeet + e, pass.Start.NorthFeet + n),
            PlanePoint.FromFeet(pass.End.EastFeet + e, pass.End.NorthFeet + n),
            PlanePoint.FromFeet(pass.End.EastFeet - e, pass.End.NorthFeet - n),
            PlanePoint.FromFeet(pass.Start.EastFeet - e, pass.Start.NorthFeet - n),
        ]);
    }

    private static FieldPasses Lay(PlotOutline outline, double swath, bool lap) =>
        FieldPasses.Lay(outline, new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(10),
            Swath = Length.FromFeet(swath),
            Speed = Speed.FromMilesPerHour(3),
            HeadlandLap = lap,
        });
}
