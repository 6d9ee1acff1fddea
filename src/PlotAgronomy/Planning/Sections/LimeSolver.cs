using PlotAgronomy.Blends;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning.Sections;

/// <summary>From the report to an order of lime: the printed rate first, ours beside it, the cheapest offer of those that can be counted.</summary>
internal static class LimeSolver
{
    /// <summary>A printed rate that differs from ours by more than this part is worth a remark (common practice).</summary>
    private const double RealDifference = 0.15;

    internal static LimeAnswer Solve(PlanContent plan, Blend blend)
    {
        var (target, wanted) = Aim(plan, blend.KindShares);
        double targetPh = plan.LimeMethod.ClosestTarget(wanted);
        var computed = plan.LimeMethod.NeedFor(plan.Report, targetPh, plan.EarlierLime);
        var printed = plan.Printed?.Lime;
        var used = printed is null ? computed.Published ?? computed.Rate : printed.Rate;
        var weak = computed.Findings.Any(f => f.Code == "lime-weakly-buffered") ? WeaklyBufferedLime.For(LimeSample.From(plan.Report), targetPh, plan.LimeMethod) : null;
        var (offer, order) = CheapestOrder(plan, used, weak);
        return new LimeAnswer
        {
            Target = target,
            TargetPh = targetPh,
            TargetReason = Reason(plan, target, targetPh),
            Printed = printed,
            Computed = computed,
            WeaklyBuffered = weak,
            Used = used,
            Offer = offer,
            Order = order,
            Outlook = Outlook(plan, used, offer, order),
            Findings = [.. OwnFindings(plan, printed, computed, used, offer)],
        };
    }

    /// <summary>The pH the plan aims at before a method takes its own closest: stated, asked for by a kind, or the method's lowest.</summary>
    internal static (LimeTarget Target, double Ph) Aim(PlanContent plan, IReadOnlyList<KindShare> kinds)
    {
        var target = LimeTarget.ForBlend(kinds, plan.LimeMethod.Institution, plan.Report.SoilClass ?? SoilClass.Mineral);
        return (target, plan.StatedTargetPh ?? target.Ph ?? plan.LimeMethod.TargetPhs.DefaultIfEmpty(6).Min());
    }

    private static string Reason(PlanContent plan, LimeTarget target, double targetPh) =>
        plan.StatedTargetPh is not null ? "as the plan states."
        : target is { SetBy: { } kind, Ph: { } ph } && ph == targetPh ? $"what {SheetText.Name(kind)}, the most demanding kind, asks for."
        : target is { SetBy: { } other, Ph: { } asked } ? $"the method's closest to {Amounts.Print(asked, 1)}, which {SheetText.Name(other)} asks for."
        : "the method's own.";

    private static (LimeOffer? Offer, LimeOrder? Order) CheapestOrder(PlanContent plan, LimeRate? used, WeaklyBufferedLime? weak) =>
        used is null || used.OfBasis == ApplicationRate.Zero
            ? (null, null)
            : plan.LimeOffers.Where(o => CanBeCounted(o, used))
                .Select(o => ((LimeOffer?)o, (LimeOrder?)Order(plan, used, o, weak)))
                .OrderBy(pair => pair.Item2!.Cost).FirstOrDefault();

    private static bool CanBeCounted(LimeOffer offer, LimeRate rate) =>
        offer.Material.Neutralizes && (rate.Basis.Figure is not { } figure || offer.Material.TryFigureIn(figure.Index, out _, out _));

    private static LimeOrder Order(PlanContent plan, LimeRate rate, LimeOffer offer, WeaklyBufferedLime? weak) => LimeOrder.For(new LimeOrderTerms
    {
        Rate = rate,
        Material = offer.Material,
        Area = plan.Site.Area,
        Placement = Placement(plan),
        WorkedDepth = Placement(plan) == LimePlacement.WorkedIn ? plan.TillageDepth : null,
        SoilClass = plan.Report.SoilClass ?? SoilClass.Mineral,
        MostAtOnce = weak?.FirstDressing,
        FirstDressingOn = plan.LimeDate,
        Bag = offer.Bag,
        PricePerBag = offer.Price,
    });

    private static LimePlacement Placement(PlanContent plan) =>
        plan.Method == PlantingMethod.TilledAndPacked ? LimePlacement.WorkedIn : LimePlacement.Surface;

    private static LimeOutlook? Outlook(PlanContent plan, LimeRate? used, LimeOffer? offer, LimeOrder? order) =>
        used is null || offer is null || order is null || plan.LimeDate is not DateOnly limed || plan.Report.WaterPh is not { } ph || limed > plan.PlantingDate
            ? null
            : LimeOutlook.For(new LimeOutlookTerms
            {
                SoilPh = ph,
                Rate = used,
                ShareDelivered = Fraction.FromValue(Math.Min(1, order.Dressings[0].Mass.Pounds / order.Product.Pounds)),
                Material = offer.Material,
                Placement = Placement(plan),
                LimedOn = limed,
                PlantingOn = plan.PlantingDate,
                Kinds = [.. plan.Kinds.Select(k => k.Kind)],
                Texture = plan.Site.Texture,
                ExchangeCapacity = plan.Report.PrintedExchangeCapacity,
            });

    private static IEnumerable<Finding> OwnFindings(PlanContent plan, PrintedLimeRate? printed, LimeNeed computed, LimeRate? used, LimeOffer? offer)
    {
        if (printed?.Rate is { } theirs && computed.Rate is { } ours && theirs.Basis.Id == ours.Basis.Id && theirs.TargetPh == ours.TargetPh
            && Math.Abs(theirs.OfBasis.PoundsPerAcre - ours.OfBasis.PoundsPerAcre) > RealDifference * Math.Max(theirs.OfBasis.PoundsPerAcre, ours.OfBasis.PoundsPerAcre))
        {
            yield return FindingCatalog.Create("plan-printed-lime-differs", ("printed", Amounts.Print(theirs.OfBasis, "ton/ac", 2)), ("ours", Amounts.Print(ours.OfBasis, "ton/ac", 2)), ("method", computed.Method.Name));
        }

        bool needed = used is not null && used.OfBasis > ApplicationRate.Zero;
        if (needed && offer is null)
        {
            yield return plan.LimeOffers.IsEmpty
                ? FindingCatalog.Create("plan-no-lime-offered")
                : FindingCatalog.Create("plan-lime-not-countable", ("basis", used!.Basis.Name));
        }

        if (needed && (plan.LimeDate is null || plan.LimeDate > plan.PlantingDate))
        {
            yield return FindingCatalog.Create("plan-no-lime-date");
        }
    }
}
