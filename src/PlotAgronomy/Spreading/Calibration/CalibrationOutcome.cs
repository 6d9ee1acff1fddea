using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What a calibration leads to: the gate at this pace, the pace at this gate, and how sure the rate is.</summary>
/// <remarks>Flow needed = rate wanted x pace x swath / 495. Pace at this gate = pace x measured rate / rate wanted. The gate
/// comes from
/// a gate table, moved to meet the runs when the setting they were made at is known. Expected error = root of (measuring error of
/// one
/// run)^2 + (standard error of the mean of the runs)^2: on the safe side, since weighing errors stand in both.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class CalibrationOutcome : IWorkedResult
{
    internal CalibrationOutcome() { }

    /// <summary>The unit library rounds metric flows to about this part.</summary>
    private const double UnitLibraryRounding = 3e-6;

    /// <summary>Gets the runs with their verdict.</summary>
    public required RepeatedRuns Runs { get; init; }

    /// <summary>Gets flow, pace and swath that belong to the mean of the runs.</summary>
    public required SpreaderSetting Measured { get; init; }

    /// <summary>Gets the flow needed at the pace and swath of the runs.</summary>
    public required SpreaderSetting AtThisPace { get; init; }

    /// <summary>Gets the pace needed at the gate and swath of the runs.</summary>
    public required SpreaderSetting AtThisGate { get; init; }

    /// <summary>Gets the gate setting for the flow needed; null without a gate table.</summary>
    public GateAnswer? Gate { get; init; }

    /// <summary>Gets the expected error of the rate, plus or minus, in percent.</summary>
    public required double ExpectedErrorPercent { get; init; }

    /// <summary>Gets the rate wanted less the expected error, never below 0.</summary>
    public ApplicationRate ExpectedLow => Runs.Target * Math.Max(0, 1 - ExpectedErrorPercent / 100);

    /// <summary>Gets the rate wanted plus the expected error.</summary>
    public ApplicationRate ExpectedHigh => Runs.Target * (1 + ExpectedErrorPercent / 100);

    /// <summary>Gets the mean of the weights of the runs.</summary>
    public required Mass MeanWeight { get; init; }

    /// <summary>Gets the weight to aim for: what the same catch, or the same course, must give for the rate wanted at the pace
    /// and swath of the runs.</summary>
    /// <remarks>mean weight x rate wanted / mean rate.</remarks>
    public Mass WeightWanted =>
        Mass.FromPounds(SpreaderMath.PoundsToAimFor(MeanWeight.Pounds, Runs.Target.PoundsPerAcre, Runs.Mean.PoundsPerAcre));

    /// <summary>Gets the measuring error of one run.</summary>
    public required RateErrorBudget MeasuringError { get; init; }

    private double StandardErrorPercent { get; init; }

    private ImmutableArray<MeasuredRate> Rates { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            .. Runs.Findings,
            .. Rates.SelectMany(r => r.Findings),
            .. Gate?.Findings ?? [],
            .. FarOff(Runs),
            .. Measured.Findings,
            .. AtThisGate.Findings.Except(Measured.Findings),
        ]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. Runs
                .Sources.Concat(Gate?.Sources ?? [])
                .Concat(SpreadingFormulas.UnitSources)
                .Distinct()
                .OrderBy(s => s.Id, StringComparer.Ordinal),
        ];

    /// <summary>Draws the conclusion from one or more runs.</summary>
    /// <param name="wanted">Rate wanted; above 0.</param>
    /// <param name="swath">Spacing of the passes; above 0.</param>
    /// <param name="pace">Pace of the runs; above 0.</param>
    /// <param name="runs">Runs under the same settings, over the same course or time; at least one.</param>
    /// <param name="gate">Gate table of the material, or null.</param>
    /// <param name="setting">Setting the runs were made at, inside the table; null when it is not known.</param>
    /// <returns>The outcome.</returns>
    /// <exception cref="ArgumentException">No run.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, or a setting outside the table.</exception>
    public static CalibrationOutcome For(
        ApplicationRate wanted,
        Length swath,
        Speed pace,
        IReadOnlyList<MeasuredRate> runs,
        GateTable? gate = null,
        double? setting = null
    )
    {
        var judged = RepeatedRuns.Judge([.. Guard.NotEmpty(runs).Select(r => r.Rate)], wanted);
        var measured = SpreaderSetting.FlowFor(judged.Mean, pace, swath);
        var atThisPace = SpreaderSetting.FlowFor(wanted, pace, swath);
        var atThisGate = SpreaderSetting.SpeedFor(wanted, measured.Flow, swath);
        var table = gate is not null && setting is { } at ? Meeting(gate, at, measured.Flow) : gate;
        var answer = table?.SettingFor(atThisPace.Flow);
        var worst = runs.MaxBy(r => r.Error.CombinedPercent)!.Error;
        double standardError = (judged.SampleCvPercent ?? 0) / Math.Sqrt(runs.Count);
        return new()
        {
            Runs = judged,
            Rates = [.. runs],
            Measured = measured,
            AtThisPace = atThisPace,
            AtThisGate = atThisGate,
            Gate = answer,
            MeanWeight = Mass.FromPounds(runs.Average(r => r.Weighed.Pounds)),
            MeasuringError = worst,
            StandardErrorPercent = standardError,
            ExpectedErrorPercent = SpreaderMath.Root(SpreaderMath.SumOfSquares(worst.CombinedPercent, standardError)),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Runs.ShowWork(),
            .. AtThisPace.ShowWork(),
            SpreadingFormulas
                .All["spread-weight-to-aim-for"]
                .Line(
                    Amounts.Print(WeightWanted, "lb", 4),
                    ("mean weight", Amounts.Print(MeanWeight.Pounds, 4)),
                    ("rate wanted", Amounts.Print(Runs.Target.PoundsPerAcre, 3)),
                    ("mean rate", Amounts.Print(Runs.Mean.PoundsPerAcre, 3))
                ),
            .. AtThisGate.ShowWork(),
            .. Gate?.ShowWork() ?? [],
            .. ExpectedErrorLines(),
        ];

    private WorkedLine[] ExpectedErrorLines()
    {
        string squares = Amounts.Print(SpreaderMath.SumOfSquares(MeasuringError.CombinedPercent, StandardErrorPercent), 3);
        return
        [
            SpreadingFormulas
                .All["spread-error-squared"]
                .Line(
                    squares,
                    ("measuring error", Amounts.Print(MeasuringError.CombinedPercent, 2)),
                    ("standard error of the runs", Amounts.Print(StandardErrorPercent, 2))
                ),
            SpreadingFormulas
                .All["spread-expected-error"]
                .Line($"{Amounts.Print(ExpectedErrorPercent, 2)} %", ("sum of squares", squares)),
        ];
    }

    /// <summary>The table as it is when it already says what the runs gave; else moved to meet them.</summary>
    private static GateTable Meeting(GateTable gate, double setting, MassFlow measured)
    {
        var moved = gate.ScaledToRun(gate.Material, setting, measured);
        double was = gate.FlowAt(setting).Flow!.Value.PoundsPerMinute,
            found = measured.PoundsPerMinute;
        return Math.Abs(found / was - 1) > UnitLibraryRounding ? moved : gate;
    }

    private static IEnumerable<Finding> FarOff(RepeatedRuns runs)
    {
        double limit = SpreadingConstants.All["far-off"];
        if (Tolerance.IsAbove(Math.Max(runs.FlowFactor, runs.PaceFactor), limit))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.FarOff,
                ("mean", Amounts.Print(runs.Mean.PoundsPerAcre, 2)),
                ("wanted", Amounts.Print(runs.Target.PoundsPerAcre, 2))
            );
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
