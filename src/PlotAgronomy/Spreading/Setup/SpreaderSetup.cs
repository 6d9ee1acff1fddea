using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>How to set the spreader for a pass by what was weighed: the gate of the run that comes closest and the pace for it,
/// and, where several runs of its kind make a table, the gate for the usual pace.</summary>
/// <remarks>The run taken is of the kind that has most weight in the pass; of several runs of it, the one whose
/// rate comes closest. A mix of kinds does not flow like its main kind: the first test run decides.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SpreaderSetup : IWorkedResult
{
    private SpreaderSetup() { }

    /// <summary>Gets the rate of the pass, all kinds.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the effective swath, the spacing of the passes.</summary>
    public required Length Swath { get; init; }

    /// <summary>Gets the usual pace, for which a gate is looked up.</summary>
    public required Speed UsualPace { get; init; }

    /// <summary>Gets the runs of the kinds of the pass: those of the kind with most weight first, and of a kind the one whose
    /// rate comes closest.</summary>
    public required ImmutableArray<MeasuredRun> Runs { get; init; }

    /// <summary>Gets the run taken; null when none of the kinds was run.</summary>
    public MeasuredRun? Taken => Runs.IsEmpty ? null : Runs[0];

    /// <summary>Gets the pace that gives the rate at the gate of the run taken; null when none was run, it was not timed, or what
    /// was weighed asks for a pace that never ends.</summary>
    public SpreaderSetting? PaceForGate { get; init; }

    /// <summary>Gets the table of the runs of the kind taken; null when they make none (<see cref="WhyNoTable"/> says
    /// why).</summary>
    public GateTable? Gates { get; init; }

    /// <summary>Gets why the runs make no table; null when they do.</summary>
    public string? WhyNoTable { get; init; }

    /// <summary>Gets the flow that gives the rate at the usual pace; null without a table.</summary>
    public SpreaderSetting? FlowForPace { get; init; }

    /// <summary>Gets the gate that gives the rate at the usual pace; null without a table.</summary>
    public GateAnswer? GateForPace { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Parts.SelectMany(p => p.Findings));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Parts.SelectMany(p => p.Sources).Distinct()];

    private IEnumerable<IWorkedResult> Parts =>
        new IWorkedResult?[] { Taken?.Rate, PaceForGate, FlowForPace, GateForPace }.OfType<IWorkedResult>();

    /// <summary>Sets the spreader for a pass.</summary>
    /// <param name="kinds">Kinds of the pass with their bulk rates; at least one, together above 0.</param>
    /// <param name="swath">Effective swath; above 0.</param>
    /// <param name="runs">Weighed runs with this spreader, of any kinds.</param>
    /// <param name="usualPace">Pace to look up a gate for; above 0.</param>
    /// <returns>The setup.</returns>
    /// <exception cref="ArgumentException">No kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SpreaderSetup For(
        IReadOnlyList<(CropKind Kind, ApplicationRate Rate)> kinds,
        Length swath,
        IReadOnlyList<SpreaderRun> runs,
        Speed usualPace
    )
    {
        Guard.WithoutNulls(runs);
        foreach (var (kind, _) in Guard.NotEmpty(kinds))
        {
            ArgumentNullException.ThrowIfNull(kind, nameof(kinds));
        }

        var rate = kinds.Aggregate(ApplicationRate.Zero, (sum, k) => sum + k.Rate);
        ImmutableArray<MeasuredRun> measured =
        [
            .. runs.Where(r => kinds.Any(k => k.Kind == r.Kind))
                .OrderByDescending(r => kinds.First(k => k.Kind == r.Kind).Rate.PoundsPerAcre)
                .Select(r => new MeasuredRun(r, swath))
                .GroupBy(m => m.Run.Kind)
                .SelectMany(g => g.OrderBy(m => Math.Abs(Math.Log(m.Rate.Rate.PoundsPerAcre / rate.PoundsPerAcre)))),
        ];
        string? whyNoTable = null;
        var table = measured.IsEmpty
            ? null
            : TableOf([.. measured.Where(m => m.Run.Kind == measured[0].Run.Kind)], out whyNoTable);
        var flowForPace = table is null ? null : SpreaderSetting.FlowFor(rate, usualPace, swath);
        return new SpreaderSetup
        {
            Rate = rate,
            Swath = swath,
            UsualPace = usualPace,
            Runs = measured,
            PaceForGate =
                !measured.IsEmpty
                && measured[0].Rate.Flow is { } flow
                && SpreaderSetting.SpeedFor(rate, flow, swath) is var setting
                && WalkingPace.Ends(SpreaderSetting.TimedDistance, setting.Speed)
                    ? setting
                    : null,
            Gates = table,
            WhyNoTable = measured.IsEmpty ? "none of the kinds was run" : whyNoTable,
            FlowForPace = flowForPace,
            GateForPace = flowForPace is null ? null : table!.SettingFor(flowForPace.Flow),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Parts.SelectMany(p => p.ShowWork())];

    private static GateTable? TableOf(IReadOnlyList<MeasuredRun> runs, out string? whyNot)
    {
        GatePoint[] timed =
        [
            .. runs.Where(r => r.Rate.Flow is not null).Select(r => GatePoint.FromFlow(r.Run.Gate, r.Rate.Flow!.Value)),
        ];
        bool isTable = GateTable.TryFromPoints(runs[0].Run.Kind.ShortName, timed, out var table, out string problem);
        whyNot = isTable ? null : problem;
        return table;
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
