using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The soil pH at which liming starts: a small margin below the target (tri-state 1995: 0.2 to 0.3).</summary>
public sealed class LimeTrigger : IWorkedResult
{
    private readonly double target;
    private readonly double margin;

    private LimeTrigger(double target, double margin)
    {
        this.target = target;
        this.margin = margin;
    }

    /// <summary>Gets the pH at or below which to lime; null when the margin is not plausible.</summary>
    public double? Ph { get; private init; }

    /// <inheritdoc/>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => [LimingFormulas.All["lime-trigger"].Origin!.SourceId];

    /// <summary>Finds the pH at which liming starts.</summary>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <param name="marginPh">Margin below it; at least 0. Above 0.5 it is a slip and gives no answer.</param>
    /// <returns>The trigger.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static LimeTrigger Below(double targetPh, double marginPh)
    {
        Guard.Between(targetPh, 4, 9, "pH");
        Guard.AtLeast(marginPh, 0, "pH");
        return marginPh > LimingConstants.All["largest-trigger"]
            ? new(targetPh, marginPh)
            {
                Findings = [FindingCatalog.Create(LimingCodes.TriggerImplausible, ("margin", LimeText.Ph(marginPh)))],
            }
            : new(targetPh, marginPh) { Ph = LimeTimes.Trigger(targetPh, marginPh), Findings = [] };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        Ph is { } ph
            ?
            [
                LimingFormulas
                    .All["lime-trigger"]
                    .Line($"pH {LimeText.Ph(ph)}", ("target", LimeText.Ph(target)), ("margin", LimeText.Ph(margin))),
            ]
            : [];
}
