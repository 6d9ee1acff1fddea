using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>While walking: how it goes, and the pace or gate with which the seed ends with the plot.</summary>
/// <remarks>Rate of a stretch = weight that left / ground sown between two readings. Rate needed = weight left / ground left. At
/// the
/// same gate the pace changes by rate / rate needed; at the same pace the flow changes by rate needed / rate. The rate is taken
/// since the last change of gate or pace. A thin stretch is not mended by a thick one: evenness is told apart.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SowingProgress : IWorkedResult
{
    internal SowingProgress() { }

    /// <summary>Gets the rates of the stretches between readings, in order.</summary>
    public required ImmutableArray<ApplicationRate> Stretches { get; init; }

    /// <summary>Gets the rate over all ground sown so far.</summary>
    public required ApplicationRate RateSoFar { get; init; }

    /// <summary>Gets the rate since the last change of gate or pace; null right after a change.</summary>
    public required ApplicationRate? RateNow { get; init; }

    /// <summary>Gets the rate that would use up the seed with the plot; null when the plot is done.</summary>
    public required ApplicationRate? RateNeeded { get; init; }

    /// <summary>Gets the CV of the rate over the ground sown so far, in percent, each stretch weighted by its ground.</summary>
    public required double EvennessSoFarCvPercent { get; init; }

    /// <summary>Gets the same over the whole plot, if the rest is sown at the rate needed; null when the plot is done.</summary>
    public required double? EvennessWholeCvPercent { get; init; }

    /// <summary>Gets the factor for the pace at the same gate: 1.1 is 10 % faster; null when unknown or when no seed is
    /// left.</summary>
    public double? PaceFactor => RateNow is { } now && RateNeeded is { PoundsPerAcre: > 0 } needed ? now / needed : null;

    /// <summary>Gets the factor for the flow at the same pace: 0.9 is 10 % less; null when unknown.</summary>
    public double? FlowFactor => RateNow is { PoundsPerAcre: > 0 } now && RateNeeded is { } needed ? needed / now : null;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [.. Remarks()];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.UnitSources;

    private double PlotAcres { get; init; }

    private double PoundsLoaded { get; init; }

    private double PoundsUsed { get; init; }

    private double PoundsLeft { get; init; }

    private double AcresDone { get; init; }

    /// <summary>Takes stock after one or more readings.</summary>
    /// <param name="loaded">Whole load for the plot; above 0.</param>
    /// <param name="plot">Plot area; above 0.</param>
    /// <param name="readings">Readings in the order they were taken; ground sown must grow, weight left must not.</param>
    /// <returns>How it goes.</returns>
    /// <exception cref="ArgumentException">No reading, or readings that contradict each other, the load or the plot.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SowingProgress After(Mass loaded, Area plot, IReadOnlyList<HopperCheck> readings)
    {
        double load = loaded.Pounds;
        double acres = plot.Acres;
        Guard.Above(load, 0, "lb", nameof(loaded));
        Guard.Above(acres, 0, "ac", nameof(plot));
        var stretches = Cut(Guard.NotEmpty(readings), load, acres);
        int count = readings.Count;
        var last = readings[count - 1];
        double used = load - last.PoundsLeft;
        double soFar = SpreaderMath.PoundsPerAcreSown(used, last.AcresDone);
        double groundLeft = acres - last.AcresDone;
        double? needed = groundLeft > acres * Tolerance.Dust ? SpreaderMath.PoundsPerAcreSown(last.PoundsLeft, groundLeft) : null;
        int since = SinceChange(readings);
        double? now = since < count ? MeanRate(stretches.AsSpan(since, count - since)) : null;
        stretches[count] = (last.PoundsLeft, groundLeft);
        return new SowingProgress
        {
            Stretches = Rates(stretches.AsSpan(0, count)),
            RateSoFar = ApplicationRate.FromPoundsPerAcre(soFar),
            RateNow = now is { } rate ? ApplicationRate.FromPoundsPerAcre(rate) : null,
            RateNeeded = needed is { } rest ? ApplicationRate.FromPoundsPerAcre(rest) : null,
            EvennessSoFarCvPercent = Cv(stretches.AsSpan(0, count)),
            EvennessWholeCvPercent = needed is null ? null : Cv(stretches),
            PlotAcres = acres,
            PoundsLoaded = load,
            PoundsUsed = used,
            PoundsLeft = last.PoundsLeft,
            AcresDone = last.AcresDone,
        };
    }

    /// <summary>The new pace at the same gate.</summary>
    /// <param name="pace">Pace kept since the last change; above 0.</param>
    /// <returns>The new pace; null when unknown or when no seed is left.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public Speed? NewPace(Speed pace)
    {
        double milesPerHour = pace.MilesPerHour;
        Guard.Above(milesPerHour, 0, "mph", nameof(pace));
        return PaceFactor is { } factor ? Speed.FromMilesPerHour(milesPerHour * factor) : null;
    }

    /// <summary>The new gate setting at the same pace.</summary>
    /// <param name="table">Gate table of the material.</param>
    /// <param name="setting">Setting since the last change, inside the table.</param>
    /// <returns>The answer of the table for the flow it gave there times the flow factor; null when the factor is unknown or
    /// zero.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The setting lies outside the table.</exception>
    public GateAnswer? NewGate(GateTable table, double setting)
    {
        ArgumentNullException.ThrowIfNull(table);
        double flow = table.FlowAt(setting).Flow is { } there
            ? there.PoundsPerMinute
            : throw new ArgumentOutOfRangeException(nameof(setting), setting, "Must be a setting inside the gate table.");
        return FlowFactor is > 0 and var factor && flow > 0
            ? table.SettingFor(MassFlow.FromPoundsPerMinute(flow * factor))
            : null;
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SpreadingFormulas
                .All["spread-rate-so-far"]
                .Line(
                    $"{Amounts.Print(RateSoFar.PoundsPerAcre, 3)} lb/ac",
                    ("weight used", Amounts.Print(PoundsUsed, 3)),
                    ("ground sown", Amounts.Print(AcresDone, 4))
                ),
            .. RateNeeded is { } needed
                ?
                [
                    SpreadingFormulas
                        .All["spread-rate-needed"]
                        .Line(
                            $"{Amounts.Print(needed.PoundsPerAcre, 3)} lb/ac",
                            ("weight left", Amounts.Print(PoundsLeft, 3)),
                            ("ground left", Amounts.Print(PlotAcres - AcresDone, 4))
                        ),
                ]
                : ImmutableArray<WorkedLine>.Empty,
        ];

    /// <summary>The stretches between readings, with room for the one that is left.</summary>
    private static (double Pounds, double Acres)[] Cut(IReadOnlyList<HopperCheck> readings, double load, double acres)
    {
        var stretches = new (double, double)[readings.Count + 1];
        double left = load;
        double done = 0;
        for (int i = 0; i < readings.Count; i++)
        {
            var reading = readings[i];
            if (!(reading.AcresDone > done) || reading.PoundsLeft > left || Tolerance.IsAbove(reading.AcresDone, acres))
            {
                throw new ArgumentException(
                    "Ground sown must grow from reading to reading up to the plot, and the weight left must not grow.",
                    nameof(readings)
                );
            }

            stretches[i] = (left - reading.PoundsLeft, reading.AcresDone - done);
            (left, done) = (reading.PoundsLeft, reading.AcresDone);
        }

        return stretches;
    }

    /// <summary>The first stretch after the last change of gate or pace.</summary>
    private static int SinceChange(IReadOnlyList<HopperCheck> readings)
    {
        int since = readings.Count;
        while (since > 0 && !readings[since - 1].SettingChanged)
        {
            since--;
        }

        return since;
    }

    private static ImmutableArray<ApplicationRate> Rates(ReadOnlySpan<(double Pounds, double Acres)> stretches)
    {
        var rates = ImmutableArray.CreateBuilder<ApplicationRate>(stretches.Length);
        foreach (var (pounds, acres) in stretches)
        {
            rates.Add(ApplicationRate.FromPoundsPerAcre(pounds / acres));
        }

        return rates.MoveToImmutable();
    }

    private static double MeanRate(ReadOnlySpan<(double Pounds, double Acres)> stretches)
    {
        double pounds = 0,
            acres = 0;
        foreach (var stretch in stretches)
        {
            pounds += stretch.Pounds;
            acres += stretch.Acres;
        }

        return pounds / acres;
    }

    private static double Cv(ReadOnlySpan<(double Pounds, double Acres)> stretches)
    {
        double mean = MeanRate(stretches);
        if (mean == 0)
        {
            return 0;
        }

        double squares = 0,
            ground = 0;
        foreach (var (pounds, acres) in stretches)
        {
            squares += acres * Math.Pow((pounds / acres) - mean, 2);
            ground += acres;
        }

        return Math.Sqrt(squares / ground) / mean * 100;
    }

    private IEnumerable<Finding> Remarks()
    {
        if (RateNeeded is not { } needed)
        {
            if (PoundsLeft > PoundsLoaded * SpreadingConstants.All["target-tolerance"] / 100)
            {
                yield return FindingCatalog.Create(
                    SpreadingCodes.SeedLeft,
                    ("left", Amounts.Print(PoundsLeft, 2)),
                    ("share", Amounts.Print(PoundsLeft / PoundsLoaded * 100, 0))
                );
            }
        }
        else if (PoundsLeft == 0)
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.SeedGone,
                ("share", Amounts.Print((1 - (AcresDone / PlotAcres)) * 100, 0))
            );
        }
        else if (
            RateNow is { } now
            && Tolerance.IsAbove(
                Math.Abs((now.PoundsPerAcre / needed.PoundsPerAcre) - 1) * 100,
                SpreadingConstants.All["target-tolerance"]
            )
        )
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.Adjust,
                ("now", Amounts.Print(now.PoundsPerAcre, 2)),
                ("needed", Amounts.Print(needed.PoundsPerAcre, 2))
            );
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
