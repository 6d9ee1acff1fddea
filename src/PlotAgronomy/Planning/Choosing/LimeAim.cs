using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>The pH a plan aims at.</summary>
internal static class LimeAim
{
    /// <summary>The pH before a method takes its own closest: stated, asked for by a kind, or the method's lowest; without a
    /// method what the laboratory printed; null where nobody says.</summary>
    internal static (LimeTarget? Target, double? Ph) Of(PlotPlan plan, IReadOnlyList<KindShare> kinds)
    {
        var institution = plan.LimeMethod?.Institution ?? Institution.Practice;
        var target = kinds.Count == 0 ? null : LimeTarget.ForBlend(kinds, institution, plan.Soil.SoilClass ?? SoilClass.Mineral);
        return (
            target,
            plan.StatedTargetPh
                ?? target?.Ph
                ?? (
                    plan.LimeMethod is { } method
                        ? method.TargetPhs.DefaultIfEmpty(LimingConstants.All["fallback-target"]).Min()
                        : plan.Printed?.Lime?.TargetPh
                )
        );
    }

    /// <summary>A pH that the plan states is met or refused. For one that the kinds ask for, a method's closest will do while it
    /// lies no more above than its institution would go.</summary>
    internal static double Taken(PlotPlan plan, double wanted) =>
        plan.StatedTargetPh ?? (plan.LimeMethod is { } method ? For(method, wanted) : wanted);

    internal static double For(LimeMethod method, double wanted) =>
        method.ClosestTarget(wanted) is var closest
        && Tolerance.IsAbove(closest - wanted, LimingConstants.All["target-farthest-above"])
            ? wanted
            : closest;
}
