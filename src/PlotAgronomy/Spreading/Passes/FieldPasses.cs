using System.Collections.Immutable;
using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Passes laid over a plot's outline: where each starts and ends, how far, how long, and what to fill in.</summary>
/// <remarks>A pass covers its whole strip: the gate opens where the strip first meets the plot and closes where it last does.
/// The walk between passes is in the turn time, not in the path.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class FieldPasses : IWorkedResult
{
    private readonly LaidPasses laid;

    private FieldPasses(LaidPasses laid) => this.laid = laid;

    /// <summary>Gets the outline.</summary>
    public required PlotOutline Outline { get; init; }

    /// <summary>Gets what the plan was made for.</summary>
    public required FieldPassesRequest Request { get; init; }

    /// <summary>Gets the passes in the order of driving; none when the headland lap sows everything.</summary>
    public required ImmutableArray<SpreaderPass> Passes { get; init; }

    /// <summary>Gets the spacing of the passes, evened out: at most the swath.</summary>
    public required Length Spacing { get; init; }

    /// <summary>Gets the direction of the first pass.</summary>
    public required Bearing Direction { get; init; }

    /// <summary>Gets the lines of the headland lap, half a swath inside the edge; empty without one.</summary>
    public ImmutableArray<PlotOutline> Lap { get; init; } = [];

    /// <summary>Gets the length of the headland lap.</summary>
    public Length LapLength => Length.FromFeet(Lap.Sum(l => l.Perimeter.Feet));

    /// <summary>Gets the length of the lap and all passes.</summary>
    public Length Path => Length.FromFeet(SpreaderMath.PathFeet(LapLength.Feet, Passes.Sum(p => p.LengthFeet)));

    /// <summary>The length of the longest pass, in ft.</summary>
    internal double LongestFeet => Passes.Max(p => p.LengthFeet);

    /// <summary>Gets the number of turns.</summary>
    public int Turns => Math.Max(0, Passes.Length + (Lap.IsEmpty ? 0 : 1) - 1);

    /// <summary>Gets the fillings of the hopper.</summary>
    public required ImmutableArray<HopperLoad> Loads { get; init; }

    /// <summary>Gets the mass to take along: rate x (plot + what the passes cover beside it).</summary>
    public Mass Seed => Mass.FromPounds(Loads.Sum(l => l.Mass.Pounds));

    /// <summary>Gets what the passes cover beside the plot, as a part of the plot; a pure number.</summary>
    public required double OutsideShare { get; init; }

    /// <summary>Ground sown once a pass is done: what to set against the weight left in the hopper.</summary>
    /// <param name="pass">Number of the pass just done; 0 after the headland lap alone.</param>
    /// <returns>Area covered so far by the lap and the passes, what falls beside the plot included: seed so far / rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or above the number of passes.</exception>
    public Area CoveredAfter(int pass)
    {
        Guard.Between(pass, 0, Passes.Length, "(the number of a pass)");
        double allPounds = Seed.Pounds,
            stillToSow = Passes.Skip(pass).Sum(p => p.Seed.Pounds);
        return Area.FromAcres((allPounds - stillToSow) / Request.PoundsPerAcre);
    }

    /// <summary>Gets the number of refills after the first filling.</summary>
    public int Refills => Loads.Length - 1;

    /// <summary>Gets the time spent spreading.</summary>
    public TimeSpan SpreadingTime => TimeOf(Path, Request.Speed, TimeSpan.Zero, TimeSpan.Zero);

    /// <summary>Gets the whole time: spreading, turns and refills.</summary>
    public TimeSpan TotalTime => TimeOf(Path, Request.Speed, Turns * Request.TurnTime, Refills * Request.RefillTime);

    /// <summary>Gets the part of the whole time spent spreading.</summary>
    internal Fraction FieldEfficiency => Fraction.FromValue(Math.Min(1, SpreadingTime / TotalTime));

    /// <summary>Gets the rate that lands between the passes when the gate stays set for the swath while the spacing is evened
    /// out.</summary>
    /// <remarks>rate x swath / spacing. Better: set the gate for the spacing.</remarks>
    public ChangedRate RateIfGateStays => ChangedRate.AtSpacing(Request.Rate, Request.Swath, Spacing);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(PassFindings.Of(Outline, Request, laid, OutsideShare));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.UnitSources;

    /// <summary>Lays passes over an outline.</summary>
    /// <param name="outline">Outline of the plot.</param>
    /// <param name="request">Rate, swath, speed and choices.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value of the request outside its range.</exception>
    /// <exception cref="ArgumentException">More than 10,000 strips or fillings.</exception>
    /// <remarks>Strips n = ceiling(width / swath), spacing = width / n. With a headland lap the strip one swath wide along
    /// the edge is sown by the lap and the passes cover what is left. Seed = rate x (length of each pass x spacing + the
    /// lap's strip). Time = path / speed + turns + refills. Gaps shorter than the swath are sown across. A plot nowhere wider
    /// than one swath has no room for a lap: it is sown in passes and a finding says so. Where only a part is too narrow, the
    /// seed for it is counted and a finding asks to sow it apart.</remarks>
    public static FieldPasses Lay(PlotOutline outline, FieldPassesRequest request)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(request);
        Guard.Defined(request.FirstPass);
        var laid = LaidPasses.Over(outline, request);
        double outsideShare = Math.Max(0, laid.CoveredSquareFeet / outline.Area.SquareFeet - 1);
        return new FieldPasses(laid)
        {
            Outline = outline,
            Request = request,
            Passes = laid.Passes,
            Spacing = Length.FromFeet(laid.SpacingFeet),
            Direction = laid.Direction,
            Lap = laid.Lap,
            Loads = HopperLoads.Of(laid.LapSquareFeet * request.PoundsPerSquareFoot, laid.Passes, request),
            OutsideShare = outsideShare,
        };
    }

    /// <summary>Whether <see cref="Lay"/> refuses a swath as far too narrow for the outline.</summary>
    internal static bool HasTooManyStrips(PlotOutline outline, Length swath)
    {
        double feet = swath.Feet;
        return LaidPasses.StripsAtMost(outline, feet) > SpreadingConstants.All["most-strips"];
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        double swath = Request.SwathFeet,
            spacing = Spacing.Feet;
        int strips = Passes.IsEmpty ? 0 : Passes.Max(p => p.Strip);
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        if (!Lap.IsEmpty)
        {
            lines.Add(SpreadingFormulas.All["spread-headland-lap"].Line(Amounts.Print(LapLength, decimals: 0)));
        }

        if (strips > 0)
        {
            bool onEdge = Request.FirstPass == FirstPassPlacement.OnEdge && Lap.IsEmpty;
            int intervals = onEdge ? strips - 1 : strips;
            double width = spacing * intervals;
            lines.Add(
                SpreadingFormulas
                    .All["spread-swaths-across"]
                    .Line(
                        $"{Amounts.Print(SpreaderMath.SwathsAcross(width, swath), 2)}: {strips} strips",
                        ("width", Amounts.Print(width, 1)),
                        ("swath", Amounts.Print(swath, 2))
                    )
            );
            lines.Add(
                SpreadingFormulas
                    .All[onEdge ? "spread-spacing-on-edge" : "spread-spacing"]
                    .Line(
                        $"{Amounts.Print(spacing, 2)} ft",
                        ("width", Amounts.Print(width, 1)),
                        ("strips", Amounts.Print(strips, 0))
                    )
            );
            lines.Add(
                SpreadingFormulas
                    .All["spread-rate-if-gate-stays"]
                    .Line(
                        Amounts.Print(RateIfGateStays.Actual, decimals: 2),
                        ("rate", Request.Rate.ToString()),
                        ("swath", Amounts.Print(swath, 2)),
                        ("spacing", Amounts.Print(spacing, 2))
                    )
            );
        }

        lines.Add(
            SpreadingFormulas
                .All["spread-path"]
                .Line(
                    Amounts.Print(Path, decimals: 0),
                    ("lap", Amounts.Print(LapLength, decimals: 0)),
                    ("all passes", $"{Amounts.Print(Passes.Sum(p => p.LengthFeet), 0)} ft")
                )
        );
        lines.Add(
            SpreadingFormulas
                .All["spread-time"]
                .Line(
                    Amounts.Print(TotalTime, decimals: 1),
                    ("path", Amounts.Print(Path, decimals: 0)),
                    ("speed", Amounts.Print(Request.Speed, decimals: 2)),
                    ("turns", $"{Turns} x {Amounts.Print(Request.TurnTime, "s", 0)}"),
                    ("refills", $"{Refills} x {Amounts.Print(Request.RefillTime, "s", 0)}")
                )
        );
        lines.Add(
            SpreadingFormulas
                .All["spread-seed-to-take"]
                .Line(
                    Amounts.Print(Seed, decimals: 3),
                    ("rate", Request.Rate.ToString()),
                    ("ground covered", $"{Amounts.Print(CoveredAfter(Passes.Length), decimals: 4)}")
                )
        );
        return lines.ToImmutable();
    }

    internal static TimeSpan TimeOf(Length path, Speed speed, TimeSpan turns, TimeSpan refills) =>
        WalkingPace.TimeFor(path, speed) + turns + refills;
}
