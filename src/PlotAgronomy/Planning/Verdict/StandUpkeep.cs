using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>What is done for a stand of which nothing is sown this year.</summary>
internal sealed class StandUpkeep
{
    private readonly PlotPlan plan;

    private StandUpkeep(PlotPlan plan, CropKind kind)
    {
        this.plan = plan;
        Kind = kind;
    }

    internal CropKind Kind { get; }

    /// <summary>How much of a full stand it is; null where nobody says.</summary>
    internal double? Share => plan.Plot.CoverShare > 0 ? plan.Plot.CoverShare : null;

    /// <summary>The share of a full stand below which it is thickened.</summary>
    internal static double ThickenBelow => PlanningConstants.All["thicken-below"];

    /// <summary>Whether it is that thin today.</summary>
    internal bool IsThin => Share is { } share && Tolerance.IsBelow(share, ThickenBelow);

    /// <summary>The published days for seed of its kind where the plot lies; none while the region is not known.</summary>
    internal ImmutableArray<string> SeedingDates =>
        [.. SowingSeason.Windows(plan, Kind).Where(w => w.Rule == PlantingRule.Window).Select(w => w.ToString()).Distinct()];

    /// <summary>Null where the plan sows something, or nothing is known to stand there.</summary>
    internal static StandUpkeep? Of(PlotPlan plan) => GrownKinds.IsUpkeep(plan) ? new(plan, plan.Plot.CoverKind!) : null;
}
