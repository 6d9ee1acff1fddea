using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>What is to be said of the lime, written only when asked for.</summary>
internal static class LimeRemarks
{
    /// <summary>Why the plan aims at its pH.</summary>
    internal static string TargetReason(PlotPlan plan, LimeTarget? target, double? targetPh) =>
        plan.StatedTargetPh is not null ? "as the plan states."
        : target is { SetBy: { } kind, Ph: { } ph } && ph == targetPh
            ? (
                target.SetByAll is { Length: > 1 } several
                    ? $"what {Several(several)}, the most demanding kinds, ask for."
                    : $"what {kind.ShortName}, the most demanding kind, asks for."
            )
        : target is { SetBy: { } other, Ph: { } asked }
            ? $"the method's closest to {Amounts.Print(asked, 1)}, which {other.ShortName} asks for."
        : plan.LimeMethod is null ? "as the report prints it."
        : plan.LimeMethod.TargetPhs.IsEmpty ? "common practice, as no target of these kinds is known."
        : "the lowest of the method's own, as no target of these kinds is known.";

    private static string Several(ImmutableArray<CropKind> kinds) => SentenceList.And([.. kinds.Select(k => k.ShortName)]);

    /// <param name="plan">Plan.</param>
    /// <param name="used">Rate that goes on now, or null.</param>
    /// <param name="offers">Offers held against it, or null.</param>
    /// <param name="waiting">Kinds held back that no outlook tells of.</param>
    /// <param name="capped">The whole need where weakly buffered soil caps it, or null.</param>
    /// <param name="whole">The whole need, or null.</param>
    internal static IEnumerable<Finding> Findings(
        PlotPlan plan,
        LimeRate? used,
        LimingMaterialComparison? offers,
        ImmutableArray<CropKind> waiting,
        LimeRate? capped,
        LimeRate? whole
    )
    {
        var offer = offers?.CheapestForPlot?.Offer;
        foreach (var range in PrintedRanges.OfLime(plan))
        {
            yield return range;
        }

        foreach (var held in HeldBack.Findings(waiting, plan.Soil))
        {
            yield return held;
        }

        foreach (var useless in plan.LimeOffers.Where(o => !o.Item.Neutralizes))
        {
            yield return FindingCatalog.Create(LimingCodes.OfferNotLime, ("material", useless.Item.Name));
        }

        foreach (var slip in plan.LimeOffers.Where(o => o != offer).SelectMany(o => o.Item.Check()))
        {
            yield return slip;
        }

        if (plan.Printed?.Lime?.Rate is { } printed && LimeCautions.OfTarget(plan.Soil, printed) is { } above)
        {
            yield return above;
        }

        if (plan.LimeSinceSample is { } since && used is not null)
        {
            yield return FindingCatalog.Create(
                PlanningCodes.LimeSinceSample,
                ("rate", Amounts.Print(since, "ton/ac", 2)),
                ("need", Amounts.Print(LimePlacing.AtTreatedDepth(plan, whole!).OfBasis, "ton/ac", 2))
            );
        }

        if (used is null || used.OfBasis == ApplicationRate.Zero)
        {
            yield break;
        }

        if (capped is { } need)
        {
            yield return WeakBuffering.FindingFor(plan.LimeMethod!, plan.Soil, need, used);
        }

        if (plan.TillageDepth is { } depth && !LimePlacing.WorksTheGround(plan))
        {
            yield return FindingCatalog.Create(PlanningCodes.TillageUnused, ("depth", Amounts.Print(depth, "in", 1)));
        }

        foreach (var there in offers?.OfStock ?? [])
        {
            yield return there;
        }

        foreach (var near in offers?.Costs.Select(c => c.NearSeed).OfType<Finding>() ?? [])
        {
            yield return near;
        }

        // Where fertilizer may be spread too, its own rule stands for both until water is known to be near.
        if (offer is not null && (plan.Plot.IsNearWater ?? plan.FertilizerOffers.IsEmpty))
        {
            yield return FindingCatalog.Create(PlanningCodes.LimeNearWater);
        }

        if (offers?.CheapestForPlot?.Order?.Bags is { } bags && bags >= PlanningConstants.All["lime-in-bulk-from"])
        {
            yield return FindingCatalog.Create(
                PlanningCodes.LimeInBulk,
                ("bags", Amounts.Print(bags, 0)),
                ("material", offer!.Item.Name)
            );
        }

        if (offer is null && offers?.TooFew.IsEmpty != false)
        {
            yield return plan.LimeOffers.IsEmpty
                ? FindingCatalog.Create(PlanningCodes.NoLimeOffered)
                : FindingCatalog.Create(PlanningCodes.LimeNotCountable, ("basis", used.Basis.Name));
        }

        if (!plan.Kinds.IsEmpty && (plan.LimeDate is null || plan.LimeDate > plan.PlantingDate))
        {
            yield return FindingCatalog.Create(PlanningCodes.NoLimeDate);
        }
    }
}
