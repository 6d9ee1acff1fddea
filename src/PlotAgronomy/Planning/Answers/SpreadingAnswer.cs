using System.Collections.Immutable;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Planning;

/// <summary>Which kinds share the hopper, and how each pass is set.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SpreadingAnswer
{
    internal SpreadingAnswer() { }

    /// <summary>Gets the kinds sorted by the size of their seed.</summary>
    public required SizeGrouping Groups { get; init; }

    /// <summary>Gets the passes, in the order of the work.</summary>
    public required ImmutableArray<SowingPass> Passes { get; init; }
}
