using System.Collections.Immutable;
using PlotAgronomy.Seeds;
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

/// <summary>A weighed run: one kind through one gate position.</summary>
internal sealed class SpreaderRun
{
    internal required CropKind Kind { get; init; }

    internal required double Gate { get; init; }

    internal required Mass Weighed { get; init; }

    internal required Length Distance { get; init; }

    internal required TimeSpan Time { get; init; }
}
