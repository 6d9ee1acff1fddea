using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The soil pH at which liming starts: a small margin below the target (tri-state 1995: 0.2 to 0.3).</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeTrigger : IWorkedResult
{
    private LimeTrigger(double targetPh, double marginPh)
    {
        TargetPh = targetPh;
        MarginPh = marginPh;
    }

    /// <summary>Gets the pH aimed at.</summary>
    public double TargetPh { get; }

    /// <summary>Gets the margin below it, in pH.</summary>
    public double MarginPh { get; }

    /// <summary>Gets the pH at or below which to lime; null when the margin is not plausible.</summary>
    public double? Ph => MarginPh > LimingConstants.All["largest-trigger"] ? null : LimeTimes.Trigger(TargetPh, MarginPh);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Ph is null ? [FindingCatalog.Create(LimingCodes.TriggerImplausible, ("margin", LimeText.Ph(MarginPh)))] : [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => LimingFormulas.All["lime-trigger"].Origin!.Sources;

    /// <summary>Finds the pH at which liming starts.</summary>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <param name="marginPh">Margin below it; at least 0. Above 0.5 it is a slip and gives no answer.</param>
    /// <returns>The trigger.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static LimeTrigger Below(double targetPh, double marginPh)
    {
        LimeLimits.TargetPh(targetPh, nameof(targetPh));
        Guard.AtLeast(marginPh, 0, "pH");
        return new(targetPh, marginPh);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        Ph is { } ph
            ?
            [
                LimingFormulas
                    .All["lime-trigger"]
                    .Line($"pH {LimeText.Ph(ph)}", ("target", LimeText.Ph(TargetPh)), ("margin", LimeText.Ph(MarginPh))),
            ]
            : [];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
