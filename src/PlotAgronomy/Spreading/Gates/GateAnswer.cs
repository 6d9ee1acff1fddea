using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>A setting and a flow that belong together, or the reason why the table gives none.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class GateAnswer : IWorkedResult
{
    internal GateAnswer() { }

    /// <summary>Gets the material the table was measured with.</summary>
    public required string Material { get; init; }

    /// <summary>Gets the setting, a pure number on the user's own scale; null when the table gives none.</summary>
    public double? Setting { get; init; }

    /// <summary>Gets the flow; null when the table gives none.</summary>
    public MassFlow? Flow { get; init; }

    /// <summary>Gets a value indicating whether the answer lies up to one step above the highest measured setting.</summary>
    public bool AboveTable { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.All.SourcesOf("spread-gate-inside-table");

    internal Func<ImmutableArray<Finding>> Remarks { get; init; } = () => [];

    internal Func<ImmutableArray<WorkedLine>> Lines { get; init; } = () => [];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => Lines();

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
