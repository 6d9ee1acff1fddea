using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>What a plan leaves open, side by side.</summary>
public static class PlanComparing
{
    /// <summary>Takes a plan's soil through every lime method that accepts its reading, in one material at one depth.</summary>
    /// <param name="plan">Plan. The method it names is asked by name.</param>
    /// <param name="targetPh">pH aimed at, from 4 to 9; null takes the plan's own.</param>
    /// <param name="includeFromMemory">Whether to ask the methods whose numbers are from memory as well; each then says
    /// so.</param>
    /// <param name="material">Common material, such as one of the plan's; null takes pure carbonate powder.</param>
    /// <returns>The answers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A pH outside its range.</exception>
    public static LimeMethodsForPlan CompareLime(
        this PlotPlan plan,
        double? targetPh = null,
        bool includeFromMemory = false,
        LimingMaterial? material = null
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        double? asked = targetPh is { } ph ? LimeLimits.TargetPh(ph, nameof(targetPh)) : null;
        var (target, wanted) = LimeSolver.Aim(plan, [.. plan.Kinds.Select(k => k.Share)]);
        var soil = plan.Soil;
        var comparison = LimeMethodComparison.For(
            soil,
            asked ?? wanted,
            plan.TillageDepth ?? plan.LimeMethod.Depth,
            material,
            m => includeFromMemory || m.Status != DataStatus.Memory || m == plan.LimeMethod
        );
        return new LimeMethodsForPlan
        {
            Plan = plan,
            Target = target,
            AskedPh = asked,
            Comparison = comparison,
            KeptBack = [.. LimeMethod.Accepting(soil, includeFromMemory: true).Except(comparison.Answers.Select(a => a.Method))],
        };
    }
}
