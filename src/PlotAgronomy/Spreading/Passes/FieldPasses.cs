using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Passes laid over a plot's outline: where each starts and ends, how far, how long, and what to fill in.</summary>
/// <remarks>A pass covers its whole strip: the gate opens where the strip first meets the plot and closes where it last does.
/// The pieces of a plot whose strips fall apart are finished one after the other, the nearest next; the walk between them, gate
/// shut, is in path and time. Any other way from pass to pass is in the turn time.</remarks>
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
    public Length LapLength => Length.FromFeet(laid.LapFeet);

    /// <summary>Gets the walk with a shut gate from piece to piece of a plot whose strips fall apart, in straight
    /// lines.</summary>
    public Length WalkBetween => Length.FromFeet(laid.Layout?.WalkFeet ?? 0);

    /// <summary>Gets the length of the lap, all passes and the walk between pieces.</summary>
    public Length Path => Length.FromFeet(laid.PathFeet);

    /// <summary>What lap and passes do to the ground, for the picture.</summary>
    internal SeededGround Ground => laid.Ground;

    /// <summary>The length of the longest pass, in ft.</summary>
    internal double LongestFeet => Passes.Max(p => p.LengthFeet);

    /// <summary>Gets the number of turns.</summary>
    public int Turns => Math.Max(0, Passes.Length + (Lap.IsEmpty ? 0 : 1) - 1);

    /// <summary>Gets the fillings of the hopper.</summary>
    public required ImmutableArray<HopperLoad> Loads { get; init; }

    /// <summary>Gets the mass to take along: rate x (plot + what is sown twice or beside it).</summary>
    public Mass Seed => Mass.FromPounds(Loads.Sum(l => l.Mass.Pounds));

    /// <summary>Gets the ground beside the plot that is sown, as a part of the plot; a pure number.</summary>
    public double OutsideShare => laid.Ground.Outside / Outline.Area.SquareFeet;

    /// <summary>Gets the ground of the plot that is sown once more, where passes run into the lap or the lap into
    /// itself.</summary>
    public Area SownTwice => Area.FromSquareFeet(laid.Ground.SownTwice);

    /// <summary>Gets the ground of the plot that neither lap nor passes reach, to be sown by hand; its seed is counted.</summary>
    public Area Missed => Area.FromSquareFeet(laid.Ground.Missed);

    /// <summary>Gets the plan along the next best direction; null when the direction was given, or when no other one is nearly as
    /// good.</summary>
    public FieldPasses? RunnerUp => laid.Layout?.Other is { } other ? Lay(Outline, Request.Towards(other.Bearing)) : null;

    /// <summary>Ground sown once a pass is done: what to set against the weight left in the hopper.</summary>
    /// <param name="pass">Number of the pass just done; 0 after the headland lap alone.</param>
    /// <returns>Area covered so far by the lap and the passes, what is sown twice or beside the plot included: seed so far /
    /// rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or above the number of passes.</exception>
    public Area CoveredAfter(int pass)
    {
        Guard.Between(pass, 0, Passes.Length, "(the number of a pass)");
        double passesFeet = Passes.Take(pass).Sum(p => p.LengthFeet);
        return Area.FromSquareFeet(laid.LapSquareFeet + SpreaderMath.ThrownSquareFeet(passesFeet, laid.SpacingFeet));
    }

    /// <summary>Gets the number of refills after the first filling.</summary>
    public int Refills => Loads.Length - 1;

    /// <summary>Gets the time spent spreading.</summary>
    public TimeSpan SpreadingTime =>
        TimeOf(Length.FromFeet(laid.PathFeet - WalkBetween.Feet), Request.Speed, TimeSpan.Zero, TimeSpan.Zero);

    /// <summary>Gets the whole time: spreading, the walk between pieces, turns and refills.</summary>
    public TimeSpan TotalTime => TimeOf(Path, Request.Speed, Turns * Request.TurnTime, Refills * Request.RefillTime);

    /// <summary>Gets the part of the whole time spent spreading.</summary>
    internal Fraction FieldEfficiency => Fraction.FromValue(Math.Min(1, SpreadingTime / TotalTime));

    /// <summary>Gets the rate that lands between the passes when the gate stays set for the swath while the spacing is evened
    /// out.</summary>
    /// <remarks>rate x swath / spacing. Better: set the gate for the spacing.</remarks>
    public ChangedRate RateIfGateStays => ChangedRate.AtSpacing(Request.Rate, Request.Swath, Spacing);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(PassFindings.Of(Outline, Request, laid));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.UnitSources;

    /// <summary>Lays passes over an outline.</summary>
    /// <param name="outline">Outline of the plot.</param>
    /// <param name="request">Rate, swath, speed and choices.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value of the request outside its range.</exception>
    /// <exception cref="ArgumentException">More than 10,000 strips or fillings.</exception>
    /// <exception cref="InvalidOperationException">The corners lie too close together for a lap of this swath.</exception>
    /// <remarks>Strips n = ceiling(width / swath), spacing = width / n. The direction is the one that throws the least seed,
    /// path x
    /// spacing, with at most one turn more than the fewest; along a side where that costs nothing. With a headland lap the
    /// passes cover what is left inside the strip one swath wide along the edge. Seed = rate x (length of each pass x spacing +
    /// lap x swath + ground that neither reaches). Time = path / speed + turns + refills. Gaps shorter than the swath are sown
    /// across. A plot nowhere wider than one swath has no room for a lap: it is sown in passes and a finding says so.</remarks>
    public static FieldPasses Lay(PlotOutline outline, FieldPassesRequest request)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(request);
        Guard.Defined(request.FirstPass);
        request.Check(outline);
        return Make(outline, request, LaidPasses.Over(outline, request));
    }

    /// <summary>The same passes for another rate and pace.</summary>
    internal FieldPasses For(ApplicationRate rate, Speed speed)
    {
        var request = Request.Spreading(rate, speed);
        request.Check(Outline);
        return Make(Outline, request, laid);
    }

    private static FieldPasses Make(PlotOutline outline, FieldPassesRequest request, LaidPasses laid)
    {
        double pounds = request.PoundsPerSquareFoot;
        ImmutableArray<SpreaderPass> passes =
        [
            .. (laid.Layout?.Passes ?? []).Select((p, i) => SpreaderPass.Over(i + 1, p, laid.SpacingFeet * pounds)),
        ];
        return new FieldPasses(laid)
        {
            Outline = outline,
            Request = request,
            Passes = passes,
            Spacing = Length.FromFeet(laid.SpacingFeet),
            Direction = laid.Direction,
            Lap = laid.Lap,
            Loads = HopperLoads.Of(laid.LapSquareFeet * pounds, passes, laid.Ground.Missed * pounds, request),
        };
    }

    /// <summary>Whether <see cref="Lay"/> refuses a swath as far too narrow for the outline.</summary>
    internal static bool HasTooManyStrips(PlotOutline outline, Length swath)
    {
        double feet = swath.Feet;
        return StripLimits.StripsAtMost(outline, feet) > SpreadingConstants.All["most-strips"];
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
                    ("all passes", $"{Amounts.Print(Passes.Sum(p => p.LengthFeet), 0)} ft"),
                    ("walk between", Amounts.Print(WalkBetween, decimals: 0))
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
                    ("ground covered", Amounts.Print(Area.FromAcres(Seed.Pounds / Request.PoundsPerAcre), decimals: 4))
                )
        );
        if (laid.Layout?.Other is { } other && RunnerUp is { } otherWay)
        {
            double lapAndCorners = Lap.IsEmpty ? 0 : otherWay.laid.LapSquareFeet + otherWay.laid.Ground.Missed;
            lines.Add(
                SpreadingFormulas
                    .All["spread-other-way"]
                    .Line(
                        $"{Amounts.Print(otherWay.Seed, decimals: 3)} in "
                            + $"{Amounts.Print(other.Passes, 0)} passes towards {other.Bearing}",
                        ("rate", Amounts.Print(Request.PoundsPerAcre, 2)),
                        ("length of the passes", Amounts.Print(other.LengthFeet, 0)),
                        ("spacing", Amounts.Print(other.SpacingFeet, 2)),
                        ("lap and corners", $"{Amounts.Print(lapAndCorners, 0)} ft2"),
                        FormulaTable.SquareFeetPerAcre
                    )
            );
        }

        return lines.ToImmutable();
    }

    internal static TimeSpan TimeOf(Length path, Speed speed, TimeSpan turns, TimeSpan refills) =>
        WalkingPace.TimeFor(path, speed) + turns + refills;

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
