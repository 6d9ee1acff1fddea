using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>From the report to an order of lime: the printed rate first, ours beside it; which offer is bought, the liming room
/// says.</summary>
internal static class LimeSolver
{
    internal static Answer<LimeAnswer> Solve(PlotPlan plan, IReadOnlyList<KindShare> kinds, Purchase? fertilizer)
    {
        var (target, wanted) = Aim(plan, kinds);
        var soil = plan.Soil;
        double targetPh = TargetFor(plan, wanted);
        var computed = plan.LimeMethod.NeedFor(soil, targetPh, plan.EarlierLime);
        var printed = plan.Printed?.Lime;
        var need = printed is not null ? Due(soil, printed.Rate) : computed.Published ?? computed.Rate;
        bool isWeak = WeaklyBufferedLime.AppliesTo(soil, targetPh);
        var used = need is not null && isWeak && printed is null ? Capped(plan, need) : need;
        var offers = Offers(plan, used, isWeak, WithNitrogen(plan, fertilizer));
        var expected = Outlook(plan, need, used, offers?.CheapestForPlot);
        var lime = new LimeAnswer(plan, expected, day => Solve(plan with { LimeDate = day }, kinds, fertilizer).Told.Expected)
        {
            Target = target,
            TargetPh = targetPh,
            Printed = printed,
            Check = printed?.Rate is { } rate
                ? PrintedLimeCheck.For(
                    rate,
                    plan.LimeMethod.NeedFor(soil, plan.LimeMethod.ClosestTarget(rate.TargetPh), plan.EarlierLime)
                )
                : null,
            Computed = computed,
            Need = need,
            WeaklyBuffered = used == need ? null : WeaklyBufferedLime.For(soil, targetPh, plan.LimeMethod),
            Rate = LimeParts.Rate(plan, used, computed),
            Offers = offers,
        };
        return Whole(plan, lime, changed => Solve(changed, kinds, fertilizer));
    }

    /// <summary>The pH the plan aims at before a method takes its own closest: stated, asked for by a kind, or the method's
    /// lowest.</summary>
    internal static (LimeTarget Target, double Ph) Aim(PlotPlan plan, IReadOnlyList<KindShare> kinds)
    {
        var target = LimeTarget.ForBlend(kinds, plan.LimeMethod.Institution, plan.Soil.SoilClass ?? SoilClass.Mineral);
        return (
            target,
            plan.StatedTargetPh
                ?? target.Ph
                ?? plan.LimeMethod.TargetPhs.DefaultIfEmpty(LimingConstants.All["fallback-target"]).Min()
        );
    }

    /// <summary>A pH that the plan states is met or refused. For one that the kinds ask for, a method's closest will do while it
    /// lies no more above than its institution would go.</summary>
    private static double TargetFor(PlotPlan plan, double wanted) =>
        plan.StatedTargetPh
        ?? (
            plan.LimeMethod.ClosestTarget(wanted) is var closest
            && Tolerance.IsAbove(closest - wanted, LimingConstants.All["target-farthest-above"])
                ? wanted
                : closest
        );

    private static LimeRate Capped(PlotPlan plan, LimeRate need) =>
        WeakBuffering.Capped(plan.LimeMethod, need, TreatedDepth(plan) ?? LimePlacementRule.DepthOf(need, LimePlacing.Of(plan)));

    private static Length? TreatedDepth(PlotPlan plan) =>
        LimePlacing.Of(plan) == LimePlacement.WorkedIn ? plan.TillageDepth : null;

    /// <summary>A printed rate, none of it where the soil has the pH already.</summary>
    private static LimeRate? Due(PlotSoil soil, LimeRate? rate) =>
        rate is not null && LimeCautions.IsAtTarget(soil, rate) ? rate.With(ApplicationRate.Zero) : rate;

    /// <summary>The answer of the room: open without a rate, and then with what a method or a label would make of it.</summary>
    private static Answer<LimeAnswer> Whole(PlotPlan plan, LimeAnswer lime, Func<PlotPlan, Answer<LimeAnswer>> again) =>
        lime.Rate.State switch
        {
            AnswerState.Open => Answers.OpenButFor(
                lime,
                () => [.. lime.Questions],
                () => [.. lime.Rate.Questions.SelectMany(q => Cases(plan, q, again))],
                () => lime.Findings
            ),
            AnswerState.NoneNeeded => new(
                AnswerState.NoneNeeded,
                true,
                lime,
                () => [.. lime.Questions],
                null,
                () => lime.Findings
            ),
            _ => Answers.Given(lime, () => lime.Findings, () => [.. lime.Questions]),
        };

    private static ImmutableArray<AnswerCase<LimeAnswer>> Cases(
        PlotPlan plan,
        OpenQuestion question,
        Func<PlotPlan, Answer<LimeAnswer>> again
    ) =>
        question switch
        {
            OpenQuestion<LimeMethod> method => method.Cases(m => again(plan with { LimeMethod = m })),
            OpenQuestion<LimeBasis> basis => basis.Cases(b => again(Labelled(plan, printed => Read(printed, basis: b)))),
            _ => [],
        };

    private static PlotPlan Labelled(PlotPlan plan, Func<PrintedLimeRate, PrintedLimeRate> label) =>
        plan with
        {
            Printed = plan.Printed! with { Lime = label(plan.Printed.Lime!) },
        };

    private static PrintedLimeRate Read(PrintedLimeRate printed, LimeBasis basis) =>
        PrintedLimeRate.Read(printed.OfBasis, printed.TargetPh, printed.Depth, basis, printed.Institution);

    private static LimingMaterialComparison? Offers(PlotPlan plan, LimeRate? used, bool isWeak, bool withNitrogen) =>
        used is null || used.OfBasis == ApplicationRate.Zero || plan.LimeOffers.IsEmpty
            ? null
            : LimingMaterialComparison.For(
                new LimeOrderRequest
                {
                    Rate = used,
                    Material = plan.LimeOffers[0].Item,
                    Area = plan.Plot.Area,
                    Placement = LimePlacing.Of(plan),
                    WorkedDepth = TreatedDepth(plan),
                    Soil = plan.Soil,
                    EarlierLime = plan.Printed?.Lime is null ? null : plan.EarlierLime,
                    WithUreaOrAmmonium = withNitrogen,
                    MostAtOnce = isWeak && plan.Printed?.Lime is not null ? WeakBuffering.MostOfAny : null,
                    FirstDressingOn = plan.LimeDate,
                    SowingOn = plan.PlantingDate,
                    StandsForYears = plan.Kinds.Any(k => k.Kind.LifeCycle == LifeCycle.Perennial),
                },
                plan.LimeOffers
            );

    private static bool WithNitrogen(PlotPlan plan, Purchase? fertilizer) =>
        plan.LimeDate is { } limed
        && plan.PlantingDate.DayNumber - limed.DayNumber is >= 0 and var days
        && days < LimingConstants.All["days-from-nitrogen"]
        && fertilizer?.Lines.Any(l =>
            l.Product.Analysis.Percent(PlantNutrient.Nitrogen) > 0
            && l.Product.Substance is not (FertilizerSubstance.CalciumNitrate or FertilizerSubstance.PotassiumNitrate)
        ) == true;

    /// <summary>The pH to expect, by the very need that the rate is made of: what goes on by then is a part of it.</summary>
    private static LimeOutlook? Outlook(PlotPlan plan, LimeRate? need, LimeRate? used, LimeOfferCost? bought) =>
        need is not { OfBasis.PoundsPerAcre: > 0 }
        || used is null
        || bought?.Order is not { } order
        || plan.LimeDate is not DateOnly limed
        || plan.Soil is not { WaterPh: not null } soil
        || limed > plan.PlantingDate
            ? null
            : LimeOutlook.For(
                new LimeOutlookRequest
                {
                    Soil = soil,
                    Rate = need,
                    ShareDelivered = Fraction.FromValue(Math.Min(1, used.RatioTo(need) * ShareAtFirst(order))),
                    Material = bought.Offer.Item,
                    Placement = LimePlacing.Of(plan),
                    LimedOn = limed,
                    PlantingOn = plan.PlantingDate,
                    Kinds = [.. plan.Kinds.Select(k => k.Kind)],
                }
            );

    /// <summary>All of it where nothing is left to buy, because earlier lime is credited with it.</summary>
    private static double ShareAtFirst(LimeOrder order) =>
        order.Product.Pounds > 0
            ? order.Dressings.Where(d => d.MonthsAfterFirst == 0).Sum(d => d.Mass.Pounds) / order.Product.Pounds
            : 1;
}
