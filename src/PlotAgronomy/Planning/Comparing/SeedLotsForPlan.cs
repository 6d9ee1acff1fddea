using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>The kinds that a plan offers in several lots, and what the same living stand costs from each.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedLotsForPlan
{
    internal SeedLotsForPlan() { }

    /// <summary>Gets the plan.</summary>
    public required PlotPlan Plan { get; init; }

    /// <summary>Gets the kinds whose lots are ranked, in the order of the offers.</summary>
    public required ImmutableArray<SeedLotsOfKind> Kinds { get; init; }

    /// <summary>Gets the kinds without a published full rate for the way of sowing: their lots have no common stand.</summary>
    public required ImmutableArray<CropKind> WithoutRate { get; init; }

    /// <summary>Gets the findings, most serious first.</summary>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Kinds.SelectMany(k => k.Comparison.Findings));

    /// <summary>Those of the lots themselves.</summary>
    internal IEnumerable<Finding> FindingsOfLots => Kinds.SelectMany(k => k.Lots).SelectMany(l => l.Findings);

    /// <summary>The kinds in several lots.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", Kinds);
}
