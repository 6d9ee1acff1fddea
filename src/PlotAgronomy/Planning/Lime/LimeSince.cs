using PlotAgronomy.Liming;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Lime that went on since the sample was taken, against what the sample asks for.</summary>
internal static class LimeSince
{
    /// <summary>The depth that lime is worked to; null where it stays on the surface, or nobody says.</summary>
    internal static Length? TreatedDepth(PlotPlan plan) =>
        LimePlacing.Of(plan) == LimePlacement.WorkedIn ? plan.TillageDepth : null;

    /// <summary>The rate for the soil that is really treated, as it is ordered.</summary>
    internal static LimeRate AtTreatedDepth(PlotPlan plan, LimeRate rate) =>
        rate.AtDepth(
            (rate.Silent.HasFlag(LimeLabels.Depth) ? rate.Depth : TreatedDepth(plan))
                ?? LimePlacementRule.DepthOf(rate, LimePlacing.Of(plan))
        );

    /// <summary>What goes on now, without what went on since the sample was taken.</summary>
    internal static LimeRate? StillToGo(PlotPlan plan, LimeRate? rate)
    {
        if (rate is null || plan.LimeSinceSample is not { } since)
        {
            return rate;
        }

        double whole = AtTreatedDepth(plan, rate).OfBasis.PoundsPerAcre;
        double left = LimeSums.LessCredit(whole, since.PoundsPerAcre);
        return left * 100 < whole * PlanningConstants.All["lime-left-least"] ? rate.With(ApplicationRate.Zero)
            : whole > 0 ? rate.With(rate.OfBasis * (left / whole))
            : rate;
    }

    /// <summary>The part of the need that went on since the sample was taken.</summary>
    internal static double Part(PlotPlan plan, LimeRate need) =>
        plan.LimeSinceSample is { } since && AtTreatedDepth(plan, need).OfBasis is { PoundsPerAcre: > 0 } whole
            ? since / whole
            : 0;
}
