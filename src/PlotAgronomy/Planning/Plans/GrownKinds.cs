using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>What a plan grows: what it sows, and without seed what stands there.</summary>
internal static class GrownKinds
{
    internal static ImmutableArray<KindShare> Of(PlotPlan plan) =>
        plan.Kinds.IsEmpty ? [.. Standing(plan)] : [.. plan.Kinds.Select(k => k.Share)];

    /// <summary>Whether a plan without seed keeps up a stand.</summary>
    internal static bool IsUpkeep(PlotPlan plan) => plan is { Kinds.IsEmpty: true, Plot.CoverKind: not null };

    /// <summary>Whether the ground is tilled, as it is taken to be where nobody says; nobody tills a stand that is
    /// kept.</summary>
    internal static bool IsTilled(PlotPlan plan) => !plan.IsUnworked && !IsUpkeep(plan);

    /// <summary>A stand of which nobody says how full it is counts as a full one.</summary>
    private static IEnumerable<KindShare> Standing(PlotPlan plan) =>
        plan.Plot.CoverKind is { } kind ? [KindShare.FromShare(kind, plan.Plot.CoverShare > 0 ? plan.Plot.CoverShare : 1)] : [];
}
