using System.Collections.Immutable;
using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Lap and passes as they lie on a plot, before loads and remarks.</summary>
internal sealed class LaidPasses
{
    private readonly PassLayout? layout;
    private readonly double swathFeet;

    private LaidPasses(ImmutableArray<PlotOutline> lap, double lapSquareFeet, PassLayout? layout, PassOptions options)
    {
        Lap = lap;
        LapSquareFeet = lapSquareFeet;
        this.layout = layout;
        swathFeet = options.SwathFeet;
        double poundsPerFoot = SpacingFeet * options.PoundsPerSquareFoot;
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

    internal static LaidPasses Over(PlotOutline outline, PassOptions options)
    {
        double swathFeet = options.SwathFeet;
        _ = options.PoundsPerAcre + options.MilesPerHour + options.TurnMinutes + options.RefillMinutes;
        Limit(outline.Perimeter.Feet / 2 / swathFeet, "Swath", "strips", options);
        Limit(
            options.PoundsPerAcre * outline.Area.Acres / (options.HopperPounds ?? double.PositiveInfinity),
            "HopperHolds",
            "fillings",
            options
        );
        var lap = options.HeadlandLap ? outline.Inset(Length.FromFeet(swathFeet / 2)).Parts : [];
        ImmutableArray<ImmutableArray<PlanePoint>> rings = lap.IsEmpty
            ? [outline.Corners]
            : [.. outline.Inset(Length.FromFeet(swathFeet)).Parts.Select(p => p.Corners)];
        double lapSquareFeet = lap.IsEmpty ? 0 : outline.Area.SquareFeet - rings.Sum(r => LandMath.SignedSquareFeet(r.AsSpan()));
        var first = lap.IsEmpty ? options.FirstPass : FirstPassPlacement.HalfSpacingInside;
        return new(lap, lapSquareFeet, rings.IsEmpty ? null : Layout(outline, rings, options, first), options);
    }

    private static void Limit(double count, string property, string what, PassOptions options)
    {
        double most = SpreadingConstants.All["most-strips"];
        if (count > most)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"{property}: more than {most} {what} on this plot; is its unit right?"),
                nameof(options)
            );
        }
    }

    private static PassLayout Layout(
        PlotOutline outline,
        ImmutableArray<ImmutableArray<PlanePoint>> rings,
        PassOptions options,
        FirstPassPlacement first
    ) =>
        options.Along is { } along
            ? PassLayout.Along((450 - along.Degrees) % 360, rings, options.SwathFeet, first)
            : PassLayout.FewestTurns(outline.Corners, rings, options.SwathFeet, first);

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
