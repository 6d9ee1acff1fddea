using System.Collections.Immutable;
using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Lap and passes as they lie on a plot, before loads and remarks.</summary>
internal sealed class LaidPasses
{
    private readonly PassLayout? layout;
    private readonly double swathFeet;

    private LaidPasses(ImmutableArray<PlotOutline> lap, double lapSquareFeet, PassLayout? layout, FieldPassesRequest request)
    {
        Lap = lap;
        LapSquareFeet = lapSquareFeet;
        this.layout = layout;
        swathFeet = request.SwathFeet;
        double poundsPerFoot = SpacingFeet * request.PoundsPerSquareFoot;
        Passes = layout is null ? [] : [.. layout.Passes.Select((p, i) => Pass(i + 1, p, poundsPerFoot))];
    }

    /// <summary>Gets the lines of the headland lap; empty without one.</summary>
    internal ImmutableArray<PlotOutline> Lap { get; }

    internal double LapSquareFeet { get; }

    /// <summary>Gets the passes; none when the headland lap sows everything.</summary>
    internal ImmutableArray<SpreaderPass> Passes { get; }

    internal double SpacingFeet => layout?.SpacingFeet ?? swathFeet;

    /// <summary>Gets the direction of the first pass.</summary>
    internal Bearing Direction => Bearing.FromDegrees((450 - (layout?.AlongDegrees ?? 0)) % 360);

    internal double CoveredSquareFeet => LapSquareFeet + LengthFeet * SpacingFeet;

    internal double PathFeet => Lap.Sum(l => l.Perimeter.Feet) + LengthFeet;

    private double LengthFeet => layout?.LengthFeet ?? 0;

    internal static LaidPasses Over(PlotOutline outline, FieldPassesRequest request)
    {
        double swathFeet = request.SwathFeet;
        _ = request.PoundsPerAcre + request.MilesPerHour + request.TurnMinutes + request.RefillMinutes;
        Limit(StripsAtMost(outline, swathFeet), "Swath", "strips", request);
        Limit(
            request.PoundsPerAcre * outline.Area.Acres / (request.HopperPounds ?? double.PositiveInfinity),
            "HopperHolds",
            "fillings",
            request
        );
        var lap = request.HeadlandLap ? outline.Inset(Length.FromFeet(swathFeet / 2)).Parts : [];
        ImmutableArray<ImmutableArray<PlanePoint>> rings = lap.IsEmpty
            ? [outline.Corners]
            : [.. outline.Inset(Length.FromFeet(swathFeet)).Parts.Select(p => p.Corners)];
        double lapSquareFeet = lap.IsEmpty ? 0 : outline.Area.SquareFeet - rings.Sum(r => LandMath.SignedSquareFeet(r.AsSpan()));
        var first = lap.IsEmpty ? request.FirstPass : FirstPassPlacement.HalfSpacingInside;
        return new(lap, lapSquareFeet, rings.IsEmpty ? null : Layout(outline, rings, request, first), request);
    }

    /// <summary>No outline is wider than half the way round it.</summary>
    internal static double StripsAtMost(PlotOutline outline, double swathFeet) => outline.PerimeterFeet / 2 / swathFeet;

    private static void Limit(double count, string property, string what, FieldPassesRequest request)
    {
        double most = SpreadingConstants.All["most-strips"];
        if (count > most)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"{property}: more than {most} {what} on this plot; is its unit right?"),
                nameof(request)
            );
        }
    }

    private static PassLayout Layout(
        PlotOutline outline,
        ImmutableArray<ImmutableArray<PlanePoint>> rings,
        FieldPassesRequest request,
        FirstPassPlacement first
    ) =>
        request.Along is { } along
            ? PassLayout.Along((450 - along.Degrees) % 360, rings, request.SwathFeet, first)
            : PassLayout.FewestTurns(outline.Corners, rings, request.SwathFeet, first);

    private static SpreaderPass Pass(int number, (int Strip, PlanePoint Start, PlanePoint End) pass, double poundsPerFoot)
    {
        double feet = LandMath.DistanceFeet(pass.Start, pass.End);
        return new SpreaderPass
        {
            Number = number,
            Strip = pass.Strip,
            Start = pass.Start,
            End = pass.End,
            Seed = Mass.FromPounds(feet * poundsPerFoot),
        };
    }
}
