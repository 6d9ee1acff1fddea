using System.Globalization;
using System.Text.RegularExpressions;
using PlotAgronomy.Land;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public partial class FieldPassesTests
{
    private static readonly PlotOutline Plot = PlotOutline.Rectangle(Length.FromFeet(436), Length.FromFeet(100), "Long field");

    [Fact]
    public void Each_pass_has_its_start_end_and_length()
    {
        var plan = Lay(Plot);
        Assert.Equal(7, plan.Passes.Length);
        Assert.Equal("90 degrees (E)", plan.Direction.ToString());
        Near.Assert(100.0 / 7 / 2, plan.Passes[0].Start.NorthFeet);
        Near.Assert(436, plan.Passes[0].End.EastFeet);
        Near.Assert(436, plan.Passes[1].Start.EastFeet);
        Assert.All(plan.Passes, p => Near.Assert(436, p.Length.Feet));
        Near.Assert(10 * 436 * 100 / 7.0 / 43_560, plan.Passes[0].Seed.Pounds, 1e-9);
        Assert.Equal(6, plan.Turns);
    }

    [Fact]
    public void Evened_spacing_says_how_the_gate_must_follow()
    {
        var evened = Assert.Single(Lay(Plot).Findings, f => f.Code == "spread-spacing-evened");
        Assert.Contains("14.29 ft", evened.Text, StringComparison.Ordinal);
        Assert.Contains("5 % too high", evened.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Lay(Plot, swath: 20).Findings, f => f.Code == "spread-spacing-evened");
        Near.Assert(10.5, Lay(Plot).RateIfGateStays.Actual.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void A_lap_needs_room_and_may_sow_everything()
    {
        // Fifteen feet wide: one pass down the middle, and the choice on the edge stays open.
        var narrow = Lay(PlotOutline.Rectangle(Length.FromFeet(100), Length.FromFeet(15)), lap: true);
        Assert.Contains(narrow.Findings, f => f.Code == "spread-lap-no-room");
        Assert.Empty(narrow.Lap);
        Near.Assert(100, narrow.Path.Feet, 1e-9);
        Near.Assert(10 * 1500 / 43_560.0, narrow.Seed.Pounds, 1e-9);
        Assert.Equal(2, Lay(PlotOutline.Rectangle(Length.FromFeet(100), Length.FromFeet(15)), lap: true, first: FirstPassPlacement.OnEdge).Passes.Length);
        Assert.DoesNotContain(Lay(Plot, lap: true).Findings, f => f.Code is "spread-lap-no-room" or "spread-lap-misses");
        var all = Lay(PlotOutline.Rectangle(Length.FromFeet(100), Length.FromFeet(29)), lap: true);
        Assert.Empty(all.Passes);
        Near.Assert(2 * (100 + 29) - 4 * 15, all.Path.Feet, 1e-9);
        // The lap runs 198 ft; four square tips that a half circle of 7.5 ft leaves are sown by hand.
        Assert.Equal(10 * (198 * 15 + 4 * 7.5 * 7.5 * (1 - Math.PI / 4)) / 43_560.0, all.Seed.Pounds, 1e-4);
        Assert.Equal(0, all.Turns);
        Assert.Contains(Lay(Plot, lap: true, swath: 15.5).Findings, f => f.Code == "spread-lap-keeps-swath");
    }

    [Fact]
    public void A_neck_too_narrow_for_the_lap_is_told_and_its_seed_counted()
    {
        // Two fields of 100 x 100 ft joined by a neck 10 ft wide and 80 ft long: its two edges lie beyond the lap but for their ends.
        var dumbbell = PlotOutline.FromCorners(
            [.. new (double East, double North)[] { (0, 0), (100, 0), (100, 45), (180, 45), (180, 0), (280, 0), (280, 100), (180, 100), (180, 55), (100, 55), (100, 100), (0, 100) }.Select(c => PlanePoint.FromFeet(c.East, c.North))]);
        var plan = Lay(dumbbell, lap: true);
        var missed = Assert.Single(plan.Findings, f => f.Code == "spread-lap-misses");
        // Of the neck of 800 ft2 the half circles at its two ends reach a little, of the eight corners a lap leaves a tip.
        Assert.InRange(plan.Missed.SquareFeet, 700, 1100);
        Assert.Contains("by hand", missed.Text, StringComparison.Ordinal);
        Assert.Equal(2, plan.Lap.Length);
        Near.Assert(10 * (20_800 * (1 + plan.OutsideShare) + plan.SownTwice.SquareFeet) / 43_560.0, plan.Seed.Pounds, 1e-9);
    }

    [Fact]
    public void Counting_passes_tells_the_ground_sown()
    {
        // Seven passes of 436 ft, a seventh of the plot each; a fifth too much has left after three of them.
        var plan = Lay(Plot);
        Near.Assert(3 / 7.0 * 43_600 / 43_560, plan.CoveredAfter(3).Acres, 1e-9);
        Near.Assert(plan.Outline.Area.Acres, plan.CoveredAfter(7).Acres, 1e-9);
        var after = HopperCheck.FromWeighing(plan.CoveredAfter(3), Mass.FromPounds(plan.Seed.Pounds * (1 - 1.2 * 3 / 7)));
        var progress = SowingProgress.After(plan.Seed, plan.CoveredAfter(plan.Passes.Length), [after]);
        Near.Assert(12, progress.RateNow!.Value.PoundsPerAcre, 1e-9);
        Near.Assert(10 * (1 - 3.6 / 7) / (4 / 7.0), progress.RateNeeded!.Value.PoundsPerAcre, 1e-9);
        var lapped = Lay(Plot, lap: true);
        Near.Assert((43_600 - 406 * 70) / 43_560.0, lapped.CoveredAfter(0).Acres, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => plan.CoveredAfter(8));
        Assert.Throws<ArgumentOutOfRangeException>(() => plan.CoveredAfter(-1));
    }

    [Fact]
    public void A_round_plot_takes_as_many_passes_as_its_width_holds()
    {
        // 120 ft across in swaths of 12 ft.
        var plan = Lay(PlotArea.FromCircle(Length.FromFeet(60)).Outline!, swath: 12);
        Assert.Equal(10, plan.Passes.Length);
        Near.Assert(10 * Math.PI * 3600 / 43_560 * (1 + plan.OutsideShare), plan.Seed.Pounds, 1e-9);
        Assert.Contains(Lay(PlotArea.FromTrapezoid(Length.FromFeet(200), Length.FromFeet(120), Length.FromFeet(90)).Outline!).Findings, f => f.Code == "land-outline-assumed");
    }

    [Fact]
    public void A_first_pass_on_the_edge_is_warned_about_and_much_outside_is_told()
    {
        Assert.Contains(Lay(Plot, first: FirstPassPlacement.OnEdge).Findings, f => f.Code == "spread-first-pass-on-edge");
        Assert.Contains(Lay(Plot, first: FirstPassPlacement.OnEdge).Findings, f => f.Code == "spread-outside");
        Assert.DoesNotContain(Lay(Plot).Findings, f => f.Code is "spread-outside" or "spread-first-pass-on-edge");
    }

    [Theory]
    [InlineData(2.9, false)]
    [InlineData(3.1, true)]
    public void A_long_walk_offers_a_wider_spreader(double miles, bool told)
    {
        var plot = PlotOutline.Rectangle(Length.FromFeet(miles * 5280 / 10), Length.FromFeet(100));
        Assert.Equal(told, Lay(plot, swath: 10).Findings.Any(f => f.Code == "spread-long-walk"));
    }

    [Fact]
    public void Loads_come_in_measured_buckets_too()
    {
        var plan = FieldPasses.Lay(Plot, new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(30),
            Swath = Length.FromFeet(20),
            Speed = Speed.FromMilesPerHour(3),
            HopperHolds = Mass.FromPounds(12),
            Bucket = MeasuredBucket.Weighed(Mass.FromPounds(4)),
        });
        // 30 lb/ac on 43,600 ft2 = 30.0275 lb in three equal fillings of five passes.
        Assert.Equal(3, plan.Loads.Length);
        Near.Assert(30 * 43_600 / 43_560.0 / 3, plan.Loads[0].Mass.Pounds, 1e-9);
        Near.Assert(30 * 43_600 / 43_560.0 / 12, plan.Loads[0].Buckets!.Value, 1e-9);
        Assert.Equal([2, 4, 5], plan.Loads.Select(l => l.RunsOutInPass));
        Assert.Equal(2, plan.Refills);
    }

    [Fact]
    public void A_plot_on_the_earth_gives_every_pass_in_latitude_and_longitude()
    {
        var outline = PlotOutline.FromFixes([GeoPoint.FromDegrees(40, -90), GeoPoint.FromDegrees(40, -89.999), GeoPoint.FromDegrees(40.0005, -89.999), GeoPoint.FromDegrees(40.0005, -90)]);
        // A degree at latitude 40 (tables of the ellipsoid WGS84): 111.035 km to the north, 85.394 km to the east.
        const double FeetToNorth = 111_035 / 0.3048, FeetToEast = 85_394 / 0.3048;
        var zero = outline.Locate(PlanePoint.FromFeet(0, 0))!.Value;
        foreach (var place in Lay(outline).Passes.SelectMany(p => new[] { p.Start, p.End }))
        {
            var located = outline.Locate(place)!.Value;
            Assert.Equal(place.NorthFeet / FeetToNorth, located.LatitudeDegrees - zero.LatitudeDegrees, 1e-8);
            Assert.Equal(place.EastFeet / FeetToEast, located.LongitudeDegrees - zero.LongitudeDegrees, 1e-8);
        }

        Assert.All(Lay(outline).Passes, p => Assert.Equal(0.001, Math.Abs(outline.Locate(p.Start)!.Value.LongitudeDegrees - outline.Locate(p.End)!.Value.LongitudeDegrees), 1e-7));
    }

    [Fact]
    public void The_other_direction_is_told_by_its_fewer_passes()
    {
        int told = 0;
        foreach (var (bottom, top, height) in from b in Enumerable.Range(8, 8) from t in Enumerable.Range(1, 6) from h in Enumerable.Range(4, 8) select (b * 20.0, t * 20.0, h * 20.0))
        {
            var plan = Lay(PlotArea.FromTrapezoid(Length.FromFeet(bottom), Length.FromFeet(top), Length.FromFeet(height)).Outline!);
            foreach (var other in plan.Findings.Where(f => f.Code == "spread-other-direction"))
            {
                told++;
                int[] passes = [.. PassesInWords().Match(other.Text).Groups.Values.Skip(1).Select(g => int.Parse(g.Value, CultureInfo.InvariantCulture))];
                Assert.Equal(plan.Passes.Length, passes[1]);
                Assert.InRange(passes[0], 1, passes[1] - 1);
            }
        }

        Assert.NotEqual(0, told);
    }

    [GeneratedRegex("it is ([0-9]+) instead of ([0-9]+) passes")]
    private static partial Regex PassesInWords();

    [Fact]
    public void With_an_area_alone_the_walk_asks_for_the_sides()
    {
        var rate = ApplicationRate.FromPoundsPerAcre(10);
        var walk = SowingWalk.For(rate, PlotArea.Stated(Area.FromAcres(0.5)), Length.FromFeet(12));
        Near.Assert(21_780 / 12.0, walk.Distance.Feet);
        Assert.Contains(walk.Findings, f => f.Code == "spread-sides-needed");
        Assert.DoesNotContain(SowingWalk.For(rate, PlotArea.FromRectangle(Length.FromFeet(200), Length.FromFeet(100)), Length.FromFeet(12)).Findings, f => f.Code == "spread-sides-needed");
    }

    [Fact]
    public void Values_outside_their_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Lay(Plot, swath: 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lay(Plot, swath: -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lay(Plot, pounds: 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lay(Plot, speed: 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lay(Plot, first: (FirstPassPlacement)5));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredBucket.Weighed(Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredBucket.FromVolume(Volume.Zero, Density.FromPoundsPerCubicFoot(40)));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredBucket.Weighed(Mass.FromPounds(1)).Count(Mass.FromPounds(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bearing.FromDegrees(360.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bearing.FromDegrees(double.NaN));
        foreach (var options in new[]
        {
            new FieldPassesRequest { Rate = ApplicationRate.FromPoundsPerAcre(1), Swath = Length.FromFeet(1), Speed = Speed.FromMilesPerHour(1), TurnTime = TimeSpan.FromSeconds(-1) },
            new FieldPassesRequest { Rate = ApplicationRate.FromPoundsPerAcre(1), Swath = Length.FromFeet(1), Speed = Speed.FromMilesPerHour(1), RefillTime = TimeSpan.FromSeconds(-1) },
            new FieldPassesRequest { Rate = ApplicationRate.FromPoundsPerAcre(1), Swath = Length.FromFeet(1), Speed = Speed.FromMilesPerHour(1), HopperHolds = Mass.Zero },
        })
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => FieldPasses.Lay(Plot, options));
        }
    }

    [Fact]
    public void More_strips_or_fillings_than_anyone_drives_are_refused()
    {
        Assert.Contains("Swath: more than 10000 strips", Assert.Throws<ArgumentException>(() => Lay(Plot, swath: 0.05)).Message, StringComparison.Ordinal);
        Assert.NotEmpty(Lay(Plot, swath: 0.06).Passes);
        var options = new FieldPassesRequest { Rate = ApplicationRate.FromPoundsPerAcre(4000), Swath = Length.FromFeet(20), Speed = Speed.FromMilesPerHour(3), HopperHolds = Mass.FromPounds(0.4) };
        Assert.Contains("HopperHolds", Assert.Throws<ArgumentException>(() => FieldPasses.Lay(Plot, options)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void A_first_pass_needs_a_swath(double feet) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FirstPassEffect.For(SpreadPattern.Bell(Length.FromFeet(4)), Length.FromFeet(feet), FirstPassPlacement.OnEdge));

    [Theory]
    [InlineData(FirstPassPlacement.HalfSpacingInside)]
    [InlineData(FirstPassPlacement.OnEdge)]
    public void What_the_edges_lose_is_missing_inside(FirstPassPlacement placement)
    {
        // Eight passes of a triangle of half base 15 ft, 12 ft apart, and what each throws between the two edges, summed apart.
        const int Passes = 8;
        double first = placement == FirstPassPlacement.OnEdge ? 0 : 6, width = placement == FirstPassPlacement.OnEdge ? 12 * (Passes - 1) : 12 * Passes;
        double inside = 0;
        for (int pass = 0; pass < Passes; pass++)
        {
            double path = first + 12 * pass;
            inside += Cumulative((width - path) / 15) - Cumulative(-path / 15);
        }

        double lost = FirstPassEffect.For(SpreadPattern.Triangle(Length.FromFeet(15), Length.FromFeet(15)), Length.FromFeet(12), placement).LostPart;
        Assert.Equal(Passes - inside, 2 * lost, 1e-4);
    }

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void The_working_does_not_follow_the_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        var work = Lay(Plot).ShowWork();
        Assert.Equal("Spacing = width / strips = 100 / 7 = 14.29 ft", work[1].ToString());
        Assert.Equal("157.5 degrees (S)", Bearing.FromDegrees(157.5).ToString());
    }

    private static FieldPasses Lay(PlotOutline outline, double swath = 15, double pounds = 10, double speed = 3, bool lap = false, FirstPassPlacement first = FirstPassPlacement.HalfSpacingInside) =>
        FieldPasses.Lay(outline, new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(pounds),
            Swath = Length.FromFeet(swath),
            Speed = Speed.FromMilesPerHour(speed),
            HeadlandLap = lap,
            FirstPass = first,
        });

    /// <summary>Part of a triangular pattern left of a place; the place in half bases.</summary>
    private static double Cumulative(double place) =>
        place <= -1 ? 0 : place >= 1 ? 1 : place < 0 ? (1 + place) * (1 + place) / 2 : 1 - (1 - place) * (1 - place) / 2;
}
