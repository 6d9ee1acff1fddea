using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What one mixed hopper would do: two bounds and no forecast.</summary>
/// <remarks>Bound one: the hopper stays mixed and the composition is the same to the end. Bound two: it sifts fully, and the
/// kinds leave
/// one after another, smallest first, each at its own flow through the gate as it is set. The load empties in the same time in
/// both, the sum of weight / flow alone: the flow of a mixture is not a sum of its parts (within about 10 % by bulk density,
/// SPREAD-S57), so no flow of the blend is forecast. The truth lies between; the gap is the reason for separate passes. Overlap
/// of
/// the passes and unlike throw are not considered.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class MixedHopper : IWorkedResult
{
    internal MixedHopper() { }

    /// <summary>Gets the kinds, smallest seed first.</summary>
    public required ImmutableArray<KindOutlook> Kinds { get; init; }

    /// <summary>Gets the time to walk the plot.</summary>
    public required TimeSpan Walk { get; init; }

    /// <summary>Gets the time until the hopper is empty.</summary>
    public required TimeSpan Empties { get; init; }

    /// <summary>Gets what is left in the hopper when the plot is walked; zero when it empties before.</summary>
    public Mass Left => Mass.FromPounds(Loaded * Math.Max(0, 1 - SpreaderMath.PartLeft(Walk.TotalMinutes, Empties.TotalMinutes)));

    private double Loaded => Shares.Sum(s => s.Pounds);

    /// <summary>The kinds in the order they were named.</summary>
    private ImmutableArray<HopperShare> Shares { get; init; }

    private double SquareFeet { get; init; }

    private double SwathFeet { get; init; }

    private double MilesPerHour { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.All.SourcesOf("spread-hopper-empties", "spread-hopper-outlook");

    /// <summary>Sets out the two bounds.</summary>
    /// <param name="shares">Kinds in the hopper; at least two.</param>
    /// <param name="plot">Plot area; above 0.</param>
    /// <param name="speed">Ground speed; above 0.</param>
    /// <param name="swath">Effective swath; above 0.</param>
    /// <returns>The bounds.</returns>
    /// <exception cref="ArgumentException">Fewer than two kinds.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static MixedHopper Bounds(IReadOnlyList<HopperShare> shares, Area plot, Speed speed, Length swath)
    {
        if (Guard.NotEmpty(shares).Count < 2)
        {
            throw new ArgumentException("A mixed hopper holds at least two kinds.", nameof(shares));
        }

        double squareFeet = plot.SquareFeet;
        var walk = WalkingPace.TimeFor(MeasuredRate.CourseLengthFor(plot, swath), speed);
        double minutes = walk.TotalMinutes;
        double squareFeetPerMinute = squareFeet / minutes;
        double empties = shares.Sum(s => s.MinutesAlone);
        var kinds = ImmutableArray.CreateBuilder<KindOutlook>(shares.Count);
        double gone = 0;
        foreach (var share in SmallestFirst(shares))
        {
            double plantsPerPound = share.SeedsPerPound * share.PlantsPerSeed;
            double alone = share.MinutesAlone;
            kinds.Add(
                new KindOutlook
                {
                    Kind = share.Kind,
                    WantedPlantsPerSquareFoot = share.Pounds * plantsPerPound / squareFeet,
                    IfMixed = Stretch(0, empties, minutes, share.Pounds / empties * plantsPerPound / squareFeetPerMinute),
                    IfSifted = Stretch(gone, gone + alone, minutes, share.PoundsPerMinute * plantsPerPound / squareFeetPerMinute),
                    LeftIfMixed = LeftAt(0, empties, minutes),
                    LeftIfSifted = LeftAt(gone, gone + alone, minutes),
                    AloneTimesWanted = minutes / alone,
                }
            );
            gone += alone;
        }

        return new MixedHopper
        {
            Kinds = kinds.MoveToImmutable(),
            Shares = [.. shares],
            Walk = walk,
            SquareFeet = squareFeet,
            SwathFeet = swath.Feet,
            MilesPerHour = speed.MilesPerHour,
            Empties = TimeSpan.FromMinutes(empties),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SpreadingFormulas
                .All["spread-hopper-walk"]
                .Line(
                    $"{Amounts.Print(Walk.TotalMinutes, 2)} min",
                    ("area", Amounts.Print(SquareFeet, 0)),
                    ("swath", Amounts.Print(SwathFeet, 3)),
                    ("speed", Amounts.Print(MilesPerHour, 3)),
                    SpreadingFormulas.FeetPerMinutePerMph
                ),
            .. Shares.Select(s =>
                SpreadingFormulas
                    .All["spread-hopper-alone"]
                    .Line(
                        $"{Amounts.Print(s.MinutesAlone, 2)} min",
                        ("kind", s.Kind.Name),
                        ("weight", Amounts.Print(s.Pounds, 3)),
                        ("flow alone", Amounts.Print(s.PoundsPerMinute, 3))
                    )
            ),
            SpreadingFormulas.All["spread-hopper-empties"].Line($"{Amounts.Print(Empties.TotalMinutes, 2)} min"),
            .. Kinds.Select(k =>
                SpreadingFormulas
                    .All["spread-hopper-outlook"]
                    .Line(
                        $"{Amounts.Print(k.WantedPlantsPerSquareFoot, 1)}; {Describe(k.IfMixed)}; {Describe(k.IfSifted)}",
                        ("kind", k.Kind.Name)
                    )
            ),
        ];

    private static IEnumerable<HopperShare> SmallestFirst(IReadOnlyList<HopperShare> shares)
    {
        bool measured = shares.All(s => s.Kind.Diameter is not null);
        return shares.OrderBy(s => measured ? s.Kind.Diameter!.Value.Millimeters : s.Kind.MilligramsPerSeed);
    }

    private static StandStretch Stretch(double from, double to, double minutes, double plantsPerSquareFoot) =>
        new(Fraction.FromValue(Math.Min(1, from / minutes)), Fraction.FromValue(Math.Min(1, to / minutes)), plantsPerSquareFoot);

    /// <summary>Part of what flows out between two times that has not when the walk ends.</summary>
    private static Fraction LeftAt(double from, double to, double minutes) =>
        Fraction.FromValue(
            minutes >= to ? 0
            : minutes <= from ? 1
            : SpreaderMath.PartLeft(to - minutes, to - from)
        );

    private static string Describe(StandStretch stretch) =>
        $"{Amounts.Print(stretch.PlantsPerSquareFoot, 1)} from {Amounts.Print(stretch.From, 0)} to "
        + $"{Amounts.Print(stretch.To, 0)} of the walk";

    private IEnumerable<Finding> Remarks()
    {
        yield return FindingCatalog.Create(SpreadingCodes.MixedHopper);
        foreach (var finding in Balance())
        {
            yield return finding;
        }

        foreach (var kind in Kinds.Where(k => Tolerance.IsAbove(k.AloneTimesWanted, SpreadingConstants.All["too-fast-alone"])))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.TooFastAlone,
                ("kind", kind.Kind.Name),
                ("times", Amounts.Print(kind.AloneTimesWanted, 1))
            );
        }

        if (
            SeedSizes.ThrowRatio([.. Shares.Select(s => s.Kind)]) is { } ratio
            && Tolerance.IsAbove(ratio, SpreadingConstants.All["pass-density-diameter-ratio"])
        )
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.ThrowUnlike,
                ("kinds", string.Join(", ", Shares.Select(s => s.Kind.Name))),
                ("ratio", Amounts.Print(ratio, 2))
            );
        }
    }

    /// <summary>Whether the load ends with the plot, and whether pace, swath and flows are those of a spreader.</summary>
    private IEnumerable<Finding> Balance()
    {
        double tolerance = SpreadingConstants.All["target-tolerance"] / 100,
            walk = Walk.TotalMinutes,
            empties = Empties.TotalMinutes;
        if (Tolerance.IsBelow(empties, walk * (1 - tolerance)))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.HopperEarly,
                ("share", Amounts.Print(100 * empties / walk, 0)),
                ("bare", Amounts.Print(100 * (1 - empties / walk), 0))
            );
        }
        else if (Tolerance.IsAbove(empties * (1 - tolerance), walk))
        {
            double left = Left.Pounds;
            yield return FindingCatalog.Create(
                SpreadingCodes.HopperLate,
                ("left", Amounts.PrintForScale(Left)),
                ("share", Amounts.Print(100 * left / Loaded, 0)),
                ("kinds", string.Join(", ", Kinds.Select(k => $"{k.Kind.Name} {Amounts.Print(k.LeftIfSifted, 0)}")))
            );
        }

        var flows = Shares.Select(s => MassFlow.FromPoundsPerMinute(s.PoundsPerMinute)).ToList();
        foreach (
            var finding in SpreadingPlausibility
                .Of(Speed.FromMilesPerHour(MilesPerHour), Length.FromFeet(SwathFeet))
                .Concat(flows.SelectMany(f => SpreadingPlausibility.Of(flow: f)))
        )
        {
            yield return finding;
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
