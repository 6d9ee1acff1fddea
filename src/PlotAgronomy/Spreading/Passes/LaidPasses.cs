using System.Collections.Immutable;
using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Lap and passes as they lie on a plot, whatever is spread and however fast.</summary>
internal sealed class LaidPasses
{
    private readonly double swathFeet;

    private LaidPasses(PlotOutline outline, ImmutableArray<PlotOutline> lap, PassLayout? layout, double swathFeet)
    {
        Lap = lap;
        Layout = layout;
        this.swathFeet = swathFeet;
        Ground = lap.IsEmpty
            ? SeededGround.WithoutLap(outline.Area.SquareFeet, layout!.Direction.ThrownSquareFeet)
            : SeededGround.WithLap(outline, lap, swathFeet, layout);
    }

    /// <summary>Gets the lines of the headland lap; empty without one.</summary>
    internal ImmutableArray<PlotOutline> Lap { get; }

    /// <summary>Gets the passes; none when the headland lap sows everything.</summary>
    internal PassLayout? Layout { get; }

    /// <summary>Gets what they do to the ground.</summary>
    internal SeededGround Ground { get; }

    internal double SpacingFeet => Layout?.Direction.SpacingFeet ?? swathFeet;

    /// <summary>Gets the direction of the first pass.</summary>
    internal Bearing Direction
    {
        get
        {
            double degrees = Layout?.Direction.Bearing.Degrees ?? 90;
            return Bearing.FromDegrees(Layout is { StartsUpwards: false } ? (degrees + 180) % 360 : degrees);
        }
    }

    internal double LapSquareFeet => SpreaderMath.ThrownSquareFeet(LapFeet, swathFeet);

    internal double LapFeet => Lap.Sum(l => l.PerimeterFeet);

    internal double PathFeet => SpreaderMath.PathFeet(LapFeet, Layout?.Direction.LengthFeet ?? 0, Layout?.WalkFeet ?? 0);

    internal static LaidPasses Over(PlotOutline outline, FieldPassesRequest request)
    {
        double swathFeet = request.SwathFeet;
        StripLimits.Refuse(StripLimits.StripsAtMost(outline, swathFeet), "Swath", "strips");
        var lap = request.HeadlandLap ? outline.Inset(Length.FromFeet(swathFeet / 2)).Parts : [];
        ImmutableArray<ImmutableArray<PlanePoint>> rings = lap.IsEmpty
            ? [outline.Corners]
            : [.. outline.Inset(Length.FromFeet(swathFeet)).Parts.Select(p => p.Corners)];
        var first = lap.IsEmpty ? request.FirstPass : FirstPassPlacement.HalfSpacingInside;
        return new(outline, lap, rings.IsEmpty ? null : LayoutOf(outline, rings, request, first), swathFeet);
    }

    private static PassLayout LayoutOf(
        PlotOutline outline,
        ImmutableArray<ImmutableArray<PlanePoint>> rings,
        FieldPassesRequest request,
        FirstPassPlacement first
    ) =>
        request.Along is { } along
            ? PassLayout.Along((450 - along.Degrees) % 360, rings, request.SwathFeet, first)
            : PassLayout.LeastSeed(outline.Corners, rings, request.SwathFeet, first);
}
