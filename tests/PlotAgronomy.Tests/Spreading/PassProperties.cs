using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Land;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Land;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

[Properties(Arbitrary = [typeof(PlotArbitraries), typeof(LandArbitraries)])]
public class PassProperties
{
    [Property(MaxTest = 50)]
    public bool Passes_cover_every_place_of_the_outline(PlotOutline outline, PositiveInt swath, bool onEdge) =>
        Uncovered(Lay(outline, 5 + swath.Get % 60, onEdge ? FirstPassPlacement.OnEdge : FirstPassPlacement.HalfSpacingInside), Geometry.Of(outline)) < 1e-6 * outline.Area.SquareFeet;

    [Property(MaxTest = 50)]
    public bool Lap_and_passes_cover_every_place_of_the_outline(PlotOutline outline, PositiveInt swath)
    {
        double feet = 3 + swath.Get % 15;
        if (outline.Inset(Length.FromFeet(feet / 2)).Parts.IsEmpty)
        {
            return true;
        }

        var plan = Lay(outline, feet, lap: true);
        // The lap sows a swath inside the edge and leaves the rest to the passes; the library draws its arcs in other chords.
        var inner = Geometry.Inset(Geometry.Of(outline), feet * 1.001);
        var whole = Geometry.Of(outline).Buffer(1e-6);
        return Uncovered(plan, inner) < 1e-6 * outline.Area.SquareFeet && plan.Lap.All(l => whole.Contains(Geometry.Of(l)));
    }

    [Property(MaxTest = 30)]
    public bool A_plot_without_room_for_a_lap_is_told(PlotOutline outline, PositiveInt swath)
    {
        var plan = Lay(outline, 3 + swath.Get % 60, lap: true);
        return plan.Findings.Any(f => f.Code == "spread-lap-no-room") == plan.Lap.IsEmpty;
    }

    [Property(MaxTest = 50)]
    public bool A_lap_keeps_half_a_swath_from_the_edge(PlotOutline outline, PositiveInt swath)
    {
        double feet = 3 + swath.Get % 15;
        var lap = outline.Inset(Length.FromFeet(feet / 2)).Parts;
        var edge = Geometry.Of(outline).Boundary;
        return lap.IsEmpty || Lay(outline, feet, lap: true).Lap.SelectMany(l => l.Corners)
            .All(c => Math.Abs(edge.Distance(new NetTopologySuite.Geometries.Point(c.EastFeet, c.NorthFeet)) - feet / 2) < 1e-6 * feet + 1e-5);
    }

    [Property]
    public bool Load_less_what_falls_outside_is_rate_times_area(PlotOutline outline, PositiveInt swath, PositiveInt rate)
    {
        var plan = Lay(outline, 5 + swath.Get % 60, pounds: rate.Get);
        double inside = plan.Seed.Pounds / (1 + plan.OutsideShare);
        return Near.Equal(rate.Get * outline.Area.Acres, inside, 1e-9) && plan.OutsideShare >= 0;
    }

    [Property]
    public bool Passes_are_no_wider_apart_than_the_swath_and_wider_ones_would_be_fewer(PlotOutline outline, PositiveInt swath)
    {
        double feet = 5 + swath.Get % 60;
        var plan = Lay(outline, feet, along: 0);
        int strips = plan.Passes.Max(p => p.Strip);
        double width = plan.Spacing.Feet * strips;
        return plan.Spacing.Feet <= feet * (1 + 1e-9) && (strips == 1 || width / (strips - 1) > feet);
    }

    [Property]
    public bool No_other_direction_saves_more_than_a_turn(PlotOutline outline, PositiveInt swath, PositiveInt direction)
    {
        double feet = 8 + swath.Get % 60;
        return Lay(outline, feet).Passes.Length <= Lay(outline, feet, along: direction.Get % 180).Passes.Length + 1;
    }

    [Property(MaxTest = 50)]
    public bool Twice_the_rate_is_twice_the_seed_over_the_same_passes(PlotOutline outline, PositiveInt swath)
    {
        double feet = 8 + swath.Get % 60;
        var once = Lay(outline, feet, pounds: 7);
        var twice = Lay(outline, feet, pounds: 14);
        return Near.Equal(2 * once.Seed.Pounds, twice.Seed.Pounds) && once.Passes.Select(p => p.Start).SequenceEqual(twice.Passes.Select(p => p.Start));
    }

    [Property]
    public bool Loads_sum_to_the_seed_and_none_is_more_than_the_hopper_holds(PlotOutline outline, PositiveInt hopper)
    {
        double holds = 0.5 + hopper.Get / 4.0;
        var plan = FieldPasses.Lay(outline, new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(50),
            Swath = Length.FromFeet(20),
            Speed = Speed.FromMilesPerHour(3),
            HopperHolds = Mass.FromPounds(holds),
        });
        double passes = plan.Passes.Sum(p => p.Seed.Pounds);
        return Near.Equal(passes, plan.Loads.Sum(l => l.Mass.Pounds), 1e-9)
            && plan.Loads.All(l => l.Mass.Pounds <= holds * (1 + 1e-9))
            && (plan.Loads.Length - 1) * holds < passes
            && plan.Loads.Zip(plan.Loads.Skip(1)).All(p => p.First.RunsOutInPass <= p.Second.RunsOutInPass)
            && plan.Loads[^1].RunsOutInPass == plan.Passes.Length;
    }

    [Property]
    public bool A_plan_in_meters_is_the_plan_in_feet(PositiveInt length, PositiveInt width, PositiveInt swath)
    {
        double l = 20 + length.Get % 900, w = 20 + width.Get % 900, s = 3 + swath.Get % 40;
        var feet = FieldPasses.Lay(PlotOutline.Rectangle(Length.FromFeet(l), Length.FromFeet(w)), Options(Length.FromFeet(s), 20));
        var meters = FieldPasses.Lay(PlotOutline.Rectangle(Length.FromMeters(l * 0.3048), Length.FromMeters(w * 0.3048)), Options(Length.FromMeters(s * 0.3048), 20));
        return feet.Passes.Length == meters.Passes.Length && Near.Equal(feet.Path.Feet, meters.Path.Feet, 1e-9) && Near.Equal(feet.Seed.Pounds, meters.Seed.Pounds, 1e-9);
    }

    [Property(MaxTest = 50)]
    public bool Back_and_forth_passes_turn_round_at_each_strip(PlotOutline outline, PositiveInt swath)
    {
        var plan = Lay(outline, 5 + swath.Get % 60);
        bool whole = plan.Passes.All(p => p.Number == p.Strip);
        return plan.Passes.Zip(plan.Passes.Skip(1)).All(p => !whole || Along(p.First, p.Second) < 0)
            && plan.Passes.Select((p, i) => p.Number == i + 1).All(n => n);

        static double Along(SpreaderPass one, SpreaderPass other) =>
            (one.End.EastFeet - one.Start.EastFeet) * (other.End.EastFeet - other.Start.EastFeet)
            + (one.End.NorthFeet - one.Start.NorthFeet) * (other.End.NorthFeet - other.Start.NorthFeet);
    }

    private static FieldPasses Lay(PlotOutline outline, double swathFeet, FirstPassPlacement first = FirstPassPlacement.HalfSpacingInside, double pounds = 10, double? along = null, bool lap = false) =>
        FieldPasses.Lay(outline, Options(Length.FromFeet(swathFeet), pounds, first, along, lap));

    private static FieldPassesRequest Options(Length swath, double pounds, FirstPassPlacement first = FirstPassPlacement.HalfSpacingInside, double? along = null, bool lap = false) => new()
    {
        Rate = ApplicationRate.FromPoundsPerAcre(pounds),
        Swath = swath,
        Speed = Speed.FromMilesPerHour(3),
        FirstPass = first,
        Along = along is { } degrees ? Bearing.FromDegrees(degrees) : null,
        HeadlandLap = lap,
    };

    /// <summary>Square feet of a shape that no pass covers, by the general geometry library.</summary>
    private static double Uncovered(FieldPasses plan, NetTopologySuite.Geometries.Geometry shape)
    {
        double half = plan.Spacing.Feet / 2 + 1e-6;
        foreach (var pass in plan.Passes)
        {
            double east = pass.End.EastFeet - pass.Start.EastFeet, north = pass.End.NorthFeet - pass.Start.NorthFeet, length = Math.Sqrt(east * east + north * north);
            double e = east / length, n = north / length;
            PlanePoint At(PlanePoint p, double along, double across) => PlanePoint.FromFeet(p.EastFeet + along * e - across * n, p.NorthFeet + along * n + across * e);
            shape = shape.Difference(Geometry.Of([At(pass.Start, -1e-6, -half), At(pass.End, 1e-6, -half), At(pass.End, 1e-6, half), At(pass.Start, -1e-6, half)]));
        }

        return shape.Area;
    }
}
