using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Seed, distance and time to sow a plot on foot or by machine, turns and refills left out.</summary>
[JsonConverter(typeof(NotForJson))]
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
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            .. Plot?.Findings ?? [],
            .. LongWalk(),
            .. SpreadingPlausibility.Of(
                Speed,
                Length.FromFeet(SwathFeet),
                Flow,
                ApplicationRate.FromPoundsPerAcre(PoundsPerAcre)
            ),
            .. Plot is { Outline: null } ? [FindingCatalog.Create(SpreadingCodes.SidesNeeded)] : Array.Empty<Finding>(),
        ]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.UnitSources;

    /// <summary>The plot, where more than its area is known.</summary>
    private PlotArea? Plot { get; init; }

    private double PoundsPerAcre { get; init; }

    private double SquareFeet { get; init; }

    private double SwathFeet { get; init; }

    private Speed? Speed { get; init; }

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
        double squareFeet = plot.SquareFeet;
        Guard.Above(squareFeet, 0, "ft2", nameof(plot));
        return Over(null, rate, plot, swath, speed);
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
        return Over(plot, rate, plot.Area, swath, speed);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SpreadingFormulas
                .All["spread-load"]
                .Line(
                    $"{Amounts.Print(Load.Pounds, 3)} lb",
                    ("rate", Amounts.Print(PoundsPerAcre, 3)),
                    ("area", Amounts.Print(SquareFeet / ExactUnits.SquareFeetPerAcre, 4))
                ),
            SpreadingFormulas
                .All["spread-walk-distance"]
                .Line(
                    $"{Amounts.Print(Distance.Feet, 1)} ft",
                    ("area", Amounts.Print(SquareFeet, 0)),
                    ("swath", Amounts.Print(SwathFeet, 3))
                ),
        ];

    private static SowingWalk Over(PlotArea? plot, ApplicationRate rate, Area area, Length swath, Speed? speed)
    {
        double poundsPerAcre = Guard.Above(rate.PoundsPerAcre, 0, "lb/ac", nameof(rate));
        double squareFeet = area.SquareFeet;
        var distance = MeasuredRate.CourseLengthFor(area, swath);
        return new()
        {
            Load = Mass.FromPounds(SpreaderMath.PoundsOverArea(poundsPerAcre, squareFeet)),
            Distance = distance,
            Time = speed is { } pace ? WalkingPace.TimeFor(distance, pace) : null,
            Flow = speed is { } kept ? SpreaderSetting.FlowFor(rate, kept, swath).Flow : null,
            Plot = plot,
            PoundsPerAcre = poundsPerAcre,
            SquareFeet = squareFeet,
            SwathFeet = swath.Feet,
            Speed = speed,
        };
    }

    private ImmutableArray<Finding> LongWalk()
    {
        double miles = Distance.Miles;
        double limit = SpreadingConstants.All["walk-on-foot"];
        return Tolerance.IsAbove(miles, limit)
            ?
            [
                FindingCatalog.Create(
                    SpreadingCodes.LongWalk,
                    ("miles", Amounts.Print(miles, 1)),
                    ("limit", Amounts.Print(limit, 0)),
                    ("swath", Amounts.Print(SwathFeet, 1))
                ),
            ]
            : [];
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
