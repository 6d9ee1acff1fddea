using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Planning;

/// <summary>One walk over the plot with the spreader: what is in the hopper, and how it is walked.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlannedWalk
{
    internal PlannedWalk() { }

    /// <summary>Gets what is spread: a product by its name on the shelf, or the kinds of a pass.</summary>
    public required string What { get; init; }

    /// <summary>Gets how it is walked.</summary>
    public required WalkedPass Pass { get; init; }

    /// <summary>Gets the pass of seed; null for lime and fertilizer.</summary>
    public SowingPass? Seed { get; init; }

    /// <summary>Gets the dressing of lime; null for seed and fertilizer.</summary>
    public LimeDressing? Lime { get; init; }

    /// <summary>What must be left half way; null where it is not walked with this spreader, or cannot be weighed.</summary>
    internal HalfWay? HalfWay { get; init; }

    /// <summary>The drawing of its passes; null where they are not laid.</summary>
    internal string? Drawing => Seed?.Laid.OrNull()?.ToSvg();

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{What}: {Pass}";
}
