using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>A rate measured on the user's own machine with the user's own seed.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class MeasuredRate : IWorkedResult
{
    internal MeasuredRate() { }

    /// <summary>Gets how it was measured.</summary>
    internal CalibrationMethod Method { get; init; }

    /// <summary>Gets the rate on the ground.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the weight that left the hopper or was caught.</summary>
    public required Mass Weighed { get; init; }

    /// <summary>Gets the ground the weight belongs to; null for a timed catch.</summary>
    public Area? Covered { get; init; }

    /// <summary>Gets the flow leaving the hopper; null when no time was measured.</summary>
    public MassFlow? Flow { get; init; }

    /// <summary>Gets the error of the rate from the errors of the measurements.</summary>
    public required RateErrorBudget Error { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Method switch
        {
            CalibrationMethod.TrayCatch => [FindingCatalog.Create(SpreadingCodes.TrayRecovery)],
            CalibrationMethod.WholePlot =>
            [
                FindingCatalog.Create(
                    SpreadingCodes.RecordSpread,
                    ("spread", Amounts.Print(Weighed, "lb", 2)),
                    ("plot", Amounts.Print(Covered!.Value, "ac", 3))
                ),
            ],
            _ => [],
        };

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        Method switch
        {
            CalibrationMethod.WeighedRun or CalibrationMethod.RunOut =>
            [
                .. SpreadingFormulas.UnitSources,
                .. SpreadingFormulas.All.SourcesOf("spread-rate-over-course"),
            ],
            CalibrationMethod.WheelTurns =>
            [
                .. SpreadingFormulas.UnitSources,
                .. SpreadingFormulas.All.SourcesOf("spread-ground-of-wheel"),
            ],
            CalibrationMethod.TrayCatch => SpreadingFormulas.All.SourcesOf("spread-rate-on-trays"),
            _ => SpreadingFormulas.UnitSources,
        };

    internal Func<ImmutableArray<WorkedLine>> Lines { get; init; } = () => [];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => Lines();

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
