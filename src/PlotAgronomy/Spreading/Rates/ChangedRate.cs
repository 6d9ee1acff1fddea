using System.Collections.Immutable;

namespace PlotAgronomy.Spreading;

/// <summary>The rate that lands when pace or pass spacing is not the one the gate was set for.</summary>
public sealed class ChangedRate : IWorkedResult
{
    internal ChangedRate() { }

    /// <summary>Gets the rate the gate was set for.</summary>
    public required ApplicationRate Intended { get; init; }

    /// <summary>Gets the rate that really lands.</summary>
    public required ApplicationRate Actual { get; init; }

    /// <summary>Gets the change in percent; positive is more than intended.</summary>
    public double ChangePercent => (Actual / Intended - 1) * 100;

    /// <summary>Gets the part of the plot that the seed weighed for it will cover; 1 when it covers all.</summary>
    public double CoveredShare => Math.Min(1, Intended / Actual);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => SpreadingFormulas.UnitSources;

    internal Func<ImmutableArray<WorkedLine>> Lines { get; init; } = () => [];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => Lines();
}
