using System.Collections.Immutable;

namespace PlotAgronomy.Spreading;

/// <summary>Kinds that may share one pass.</summary>
public sealed class SizeGroup
{
    /// <summary>Gets the kinds, largest first.</summary>
    public required ImmutableArray<HopperKind> Kinds { get; init; }

    /// <summary>Gets the ratio of the largest to the smallest kind under the rule; a pure number of at least 1.</summary>
    public double LargestToSmallest => SpreaderMath.Ratio(Largest, Smallest);

    /// <summary>Gets a value indicating whether the pass is of chaffy seed.</summary>
    public required bool Chaffy { get; init; }

    /// <summary>Gets a value indicating whether the pass is sown before the ground is covered; else it is pressed in
    /// afterwards.</summary>
    public required bool SownBeforeCovering { get; init; }

    internal double Largest { get; init; }

    internal double Smallest { get; init; }
}
