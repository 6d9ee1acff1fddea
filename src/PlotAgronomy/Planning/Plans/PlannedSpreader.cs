using System.Collections.Immutable;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>The spreader of a plan and what was measured with it.</summary>
internal sealed class PlannedSpreader
{
    internal required string Name { get; init; }

    internal required Length Swath { get; init; }

    internal Volume? Hopper { get; init; }

    internal ImmutableArray<SpreaderRun> Runs { get; init; } = [];
}
