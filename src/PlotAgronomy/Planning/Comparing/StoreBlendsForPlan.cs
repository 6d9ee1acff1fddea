using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>Each of a plan's store blends beside the nearest blend from plain lots.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class StoreBlendsForPlan
{
    internal StoreBlendsForPlan() { }

    /// <summary>Gets the plan.</summary>
    public required PlotPlan Plan { get; init; }

    /// <summary>Gets the comparisons, in the order of the offers.</summary>
    public required ImmutableArray<StoreBlendForPlan> Blends { get; init; }

    /// <summary>Gets the findings, most serious first.</summary>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(Blends.SelectMany(b => b.Comparison.Findings.Concat(b.Comparison.AsClaimed.Findings)));

    /// <summary>The blends.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", Blends);
}
