using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>Where a plan's lime goes.</summary>
internal static class LimePlacing
{
    /// <summary>Lime is worked in where the ground is: for a tilled seedbed, before a drill where a depth is stated, and where
    /// nothing is settled yet, for a rate is printed for lime worked in.</summary>
    internal static LimePlacement Of(PlotPlan plan) =>
        GrownKinds.IsTilled(plan) || plan is { Method: PlantingMethod.Drilled, TillageDepth: not null, Kinds.IsEmpty: false }
            ? LimePlacement.WorkedIn
            : LimePlacement.Surface;
}
