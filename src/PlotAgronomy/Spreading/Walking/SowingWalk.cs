using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Seed, distance and time to sow a plot on foot or by machine, turns and refills left out.</summary>
public sealed class SowingWalk : IWorkedResult
{
    internal SowingWalk() { }

    /// <summary>Gets the seed, lime or fertilizer to load for the plot.</summary>
    public required Mass Load { get; init; }

    /// <summary>Gets the distance walked spreading.</summary>
    public required Length Distance { get; init; }

    /// <summary>Gets the time spent spreading; null when no speed was given.</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>Gets the flow that must leave the hopper; null when no speed was given.</summary>
    public MassFlow? Flow { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.UnitSources;

    internal Func<ImmutableArray<WorkedLine>> Lines { get; init; } = () => [];

    /// <summary>Plans the walk over a plot.</summary>
    /// <param name="rate">Rate; above 0.</param>
    /// <param name="plot">Plot area; above 0.</param>
    /// <param name="swath">Effective swath, or the hopper width of a drop spreader; above 0.</param>
    /// <param name="speed">Ground speed, when it is known.</param>
    /// <returns>The walk; a walk of more than about 3 miles carries a finding.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>Distance = area / swath; load = rate x area; time = distance / speed; flow = R v S / 495. Whole passes, turns and
    /// headlands are not considered.</remarks>
    public static SowingWalk For(ApplicationRate rate, Area plot, Length swath, Speed? speed = null)
    {
        double poundsPerAcre = Guard.Above(rate.PoundsPerAcre, 0, "lb/ac", nameof(rate));
        double squareFeet = plot.SquareFeet;
        double feet = swath.Feet;
        var distance = CalibrationCourse.LengthFor(plot, swath);
        double walkFeet = distance.Feet;
        double walkMiles = distance.Miles;
        double limit = SpreadingConstants.All["walk-on-foot"];
        double pounds = SpreaderMath.PoundsOverArea(poundsPerAcre, squareFeet);
        return new()
        {
            Load = Mass.FromPounds(pounds),
            Distance = distance,
            Time = speed is { } pace ? WalkingPace.TimeFor(distance, pace) : null,
            Flow = speed is { } kept ? SpreaderRate.FlowFor(rate, kept, swath).Flow : null,
            Findings = Tolerance.IsAbove(walkMiles, limit)
                ?
                [
                    FindingCatalog.Create(
                        SpreadingCodes.LongWalk,
                        ("miles", Amounts.Print(walkMiles, 1)),
                        ("limit", Amounts.Print(limit, 0)),
                        ("swath", Amounts.Print(feet, 1))
                    ),
                ]
                : [],
            Lines = () =>
                [
                    SpreadingFormulas
                        .All["spread-load"]
                        .Line(
                            $"{Amounts.Print(pounds, 3)} lb",
                            ("rate", Amounts.Print(poundsPerAcre, 3)),
                            ("area", Amounts.Print(squareFeet / ExactUnits.SquareFeetPerAcre, 4))
                        ),
                    SpreadingFormulas
                        .All["spread-walk-distance"]
                        .Line(
                            $"{Amounts.Print(walkFeet, 1)} ft",
                            ("area", Amounts.Print(squareFeet, 0)),
                            ("swath", Amounts.Print(feet, 3))
                        ),
                ],
        };
    }

    /// <summary>Plans the walk over a plot whose outline may not be known: then a finding asks for the sides.</summary>
    /// <param name="rate">Rate; above 0.</param>
    /// <param name="plot">Plot.</param>
    /// <param name="swath">Effective swath; above 0.</param>
    /// <param name="speed">Ground speed, when it is known.</param>
    /// <returns>The walk, with the plot's own findings.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SowingWalk For(ApplicationRate rate, PlotArea plot, Length swath, Speed? speed = null)
    {
        ArgumentNullException.ThrowIfNull(plot);
        var walk = For(rate, plot.Area, swath, speed);
        return new()
        {
            Load = walk.Load,
            Distance = walk.Distance,
            Time = walk.Time,
            Flow = walk.Flow,
            Lines = walk.Lines,
            Findings = Finding.InOrder([
                .. plot.Findings,
                .. walk.Findings,
                .. plot.Outline is null ? [FindingCatalog.Create(SpreadingCodes.SidesNeeded)] : Array.Empty<Finding>(),
            ]),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => Lines();
}
