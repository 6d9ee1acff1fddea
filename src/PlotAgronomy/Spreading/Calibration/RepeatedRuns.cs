using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>Calibration runs made again under the same settings, with their mean, spread and a verdict.</summary>
/// <remarks>Spread = (highest - lowest) / mean; runs agree at 10 % or less (common practice). The mean is accepted within 5 % of
/// the target (SPREAD-S14). Three runs are asked for (common practice). Limits belong to the accepted side.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class RepeatedRuns : IWorkedResult
{
    internal RepeatedRuns() { }

    /// <summary>Gets the rates of the runs, in the order given.</summary>
    public required ImmutableArray<ApplicationRate> Runs { get; init; }

    /// <summary>Gets the rate wanted.</summary>
    public required ApplicationRate Target { get; init; }

    /// <summary>Gets the mean of the runs.</summary>
    public required ApplicationRate Mean { get; init; }

    /// <summary>Gets highest less lowest over the mean, in percent.</summary>
    public required double SpreadPercent { get; init; }

    /// <summary>Gets the sample standard deviation (n - 1) over the mean, in percent; null for a single run.</summary>
    public required double? SampleCvPercent { get; init; }

    /// <summary>Gets how far the mean is above (positive) or below the target, in percent.</summary>
    public required double OffTargetPercent { get; init; }

    /// <summary>Gets the verdict.</summary>
    public required RepeatVerdict Verdict { get; init; }

    /// <summary>Gets the factor by which the flow, at the same pace and swath, must change to reach the target; a pure
    /// number.</summary>
    public double FlowFactor => Target / Mean;

    /// <summary>Gets the factor by which the pace, at the same gate and swath, must change to reach the target; a pure
    /// number.</summary>
    public double PaceFactor => Mean / Target;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.All.SourcesOf(SpreadingCodes.OffTarget, "spread-spread-of-runs");

    /// <summary>Judges repeated runs.</summary>
    /// <param name="runs">Rates measured under the same settings; at least one, each above 0.</param>
    /// <param name="target">Rate wanted; above 0.</param>
    /// <returns>Mean, spread and verdict.</returns>
    /// <exception cref="ArgumentException">No run.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero.</exception>
    public static RepeatedRuns Judge(IReadOnlyList<ApplicationRate> runs, ApplicationRate target)
    {
        var rates = Guard.NotEmpty(runs).Select(r => Guard.Above(r.PoundsPerAcre, 0, "lb/ac", nameof(runs))).ToList();
        double wanted = Guard.Above(target.PoundsPerAcre, 0, "lb/ac", nameof(target));
        double mean = SpreaderMath.Mean(rates.Sum(), rates.Count);
        double spread = SpreaderMath.RelativeSpread(rates.Max(), rates.Min(), mean) * 100;
        double off = SpreaderMath.RelativeOff(mean, wanted) * 100;
        var verdict =
            rates.Count < SpreadingConstants.All["repeat-runs"] ? RepeatVerdict.TooFewRuns
            : Disagree(spread) ? RepeatVerdict.RunsDisagree
            : Tolerance.IsAbove(Math.Abs(off), SpreadingConstants.All["target-tolerance"]) ? RepeatVerdict.OffTarget
            : RepeatVerdict.Accepted;
        return new RepeatedRuns
        {
            Runs = [.. runs],
            Target = target,
            Mean = ApplicationRate.FromPoundsPerAcre(mean),
            SpreadPercent = spread,
            SampleCvPercent =
                rates.Count > 1 ? Math.Sqrt(rates.Sum(r => (r - mean) * (r - mean)) / (rates.Count - 1)) / mean * 100 : null,
            OffTargetPercent = off,
            Verdict = verdict,
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        string mean = Amounts.Print(Mean.PoundsPerAcre, 3);
        return
        [
            SpreadingFormulas
                .All["spread-mean-of-runs"]
                .Line(
                    $"{mean} lb/ac",
                    ("sum of runs", Amounts.Print(Runs.Sum(r => r.PoundsPerAcre), 3)),
                    ("number of runs", Amounts.Print(Runs.Length, 0))
                ),
            SpreadingFormulas
                .All["spread-spread-of-runs"]
                .Line(
                    $"{Amounts.Print(SpreadPercent, 2)} %",
                    ("highest", Amounts.Print(Runs.Max(r => r.PoundsPerAcre), 3)),
                    ("lowest", Amounts.Print(Runs.Min(r => r.PoundsPerAcre), 3)),
                    ("mean", mean)
                ),
            SpreadingFormulas
                .All[SpreadingCodes.OffTarget]
                .Line(
                    $"{Amounts.Print(OffTargetPercent, 2)} %",
                    ("mean", mean),
                    ("target", Amounts.Print(Target.PoundsPerAcre, 3))
                ),
        ];
    }

    private static bool Disagree(double spreadPercent) =>
        Tolerance.IsAbove(spreadPercent, SpreadingConstants.All["repeat-spread"]);

    private IEnumerable<Finding> Remarks()
    {
        if (Verdict == RepeatVerdict.TooFewRuns)
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.FewRuns,
                ("runs", Amounts.Print(Runs.Length, 0)),
                ("needed", Amounts.Print(SpreadingConstants.All["repeat-runs"], 0))
            );
        }

        if (Disagree(SpreadPercent))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.RunsDisagree,
                ("spread", Amounts.Print(SpreadPercent, 1)),
                ("limit", Amounts.Print(SpreadingConstants.All["repeat-spread"], 0))
            );
        }

        if (Verdict == RepeatVerdict.OffTarget)
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.OffTarget,
                ("off", Amounts.Print(OffTargetPercent, 1)),
                ("limit", Amounts.Print(SpreadingConstants.All["target-tolerance"], 0))
            );
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
