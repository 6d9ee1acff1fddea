using PlotAgronomy.Liming;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Where a plan's lime goes.</summary>
internal static class LimePlacing
{
    /// <summary>Lime is worked in where the ground is: for a tilled seedbed, before a drill where a depth is stated, and where
    /// nothing is settled yet, for a rate is printed for lime worked in. After the seed no ground is worked.</summary>
    internal static LimePlacement Of(PlotPlan plan) =>
        !IsAfterSeed(plan) && WorksTheGround(plan) ? LimePlacement.WorkedIn : LimePlacement.Surface;

    /// <summary>Whether the lime goes on after the seed.</summary>
    internal static bool IsAfterSeed(PlotPlan plan) => !plan.Kinds.IsEmpty && plan.LimeDate > plan.PlantingDate;

    /// <summary>Whether the ground is worked before the seed.</summary>
    internal static bool WorksTheGround(PlotPlan plan) =>
        GrownKinds.IsTilled(plan) || plan is { Method: PlantingMethod.Drilled, TillageDepth: not null, Kinds.IsEmpty: false };

    /// <summary>The depth that lime is worked to; null where it stays on the surface, or nobody says.</summary>
    internal static Length? TreatedDepth(PlotPlan plan) => Of(plan) == LimePlacement.WorkedIn ? plan.TillageDepth : null;

    /// <summary>The depth that a rate is worked to: its own where no depth is printed with it.</summary>
    internal static Length? WorkedDepth(PlotPlan plan, LimeRate rate) =>
        rate.Silent.HasFlag(LimeLabels.Depth) ? rate.Depth : TreatedDepth(plan);

    /// <summary>The rate for the soil that is really treated, as it is ordered.</summary>
    internal static LimeRate AtTreatedDepth(PlotPlan plan, LimeRate rate) =>
        rate.AtDepth(WorkedDepth(plan, rate) ?? LimePlacementRule.DepthOf(rate, Of(plan)));
}
