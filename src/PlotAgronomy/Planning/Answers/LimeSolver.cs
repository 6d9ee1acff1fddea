using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>From the report to an order of lime: the printed rate first, ours beside it; which offer is bought, the liming room
/// says.</summary>
internal static class LimeSolver
{
    internal static Answer<LimeAnswer> Solve(PlotPlan plan, IReadOnlyList<KindShare> kinds, Purchase? fertilizer)
    {
        var (target, wanted) = Aim(plan, kinds);
        var soil = plan.Soil;
        double targetPh = plan.LimeMethod.ClosestTarget(wanted);
        var computed = plan.LimeMethod.NeedFor(soil, targetPh, plan.EarlierLime);
        var printed = plan.Printed?.Lime;
        var weak = WeaklyBufferedLime.AppliesTo(soil, targetPh) ? WeaklyBufferedLime.For(soil, targetPh, plan.LimeMethod) : null;
        var used = printed is not null ? Due(soil, printed.Rate) : weak?.FirstDressing ?? computed.Published ?? computed.Rate;
        var offers = Offers(plan, used, weak, WithNitrogen(plan, fertilizer));
        var expected = Outlook(plan, used, offers?.CheapestForPlot, printed is null ? weak : null);
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
            WeaklyBuffered = weak,
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

    private static LimingMaterialComparison? Offers(PlotPlan plan, LimeRate? used, WeaklyBufferedLime? weak, bool withNitrogen) =>
        used is null || used.OfBasis == ApplicationRate.Zero || plan.LimeOffers.IsEmpty
            ? null
            : LimingMaterialComparison.For(
                new LimeOrderRequest
                {
                    Rate = used,
                    Material = plan.LimeOffers[0].Item,
                    Area = plan.Plot.Area,
                    Placement = Placement(plan),
                    WorkedDepth = Placement(plan) == LimePlacement.WorkedIn ? plan.TillageDepth : null,
                    Soil = plan.Soil,
                    EarlierLime = plan.Printed?.Lime is null ? null : plan.EarlierLime,
                    WithUreaOrAmmonium = withNitrogen,
                    MostAtOnce = weak?.FirstDressing.OfBasis,
                    FirstDressingOn = plan.LimeDate,
                },
                plan.LimeOffers
            );

    private static LimePlacement Placement(PlotPlan plan) =>
        plan.Method == PlantingMethod.TilledAndPacked ? LimePlacement.WorkedIn : LimePlacement.Surface;

    private static bool WithNitrogen(PlotPlan plan, Purchase? fertilizer) =>
        plan.LimeDate is { } limed
        && plan.PlantingDate.DayNumber - limed.DayNumber is >= 0 and var days
        && days < LimingConstants.All["days-from-nitrogen"]
        && fertilizer?.Lines.Any(l =>
            l.Product.Analysis.Percent(PlantNutrient.Nitrogen) > 0
            && l.Product.Substance is not (FertilizerSubstance.CalciumNitrate or FertilizerSubstance.PotassiumNitrate)
        ) == true;

    /// <summary>On weakly buffered soil (<paramref name="range"/>) the first dressing is only a part of what the rule asks
    /// for.</summary>
    private static LimeOutlook? Outlook(PlotPlan plan, LimeRate? used, LimeOfferCost? bought, WeaklyBufferedLime? range) =>
        used is null
        || bought?.Order is not { } order
        || plan.LimeDate is not DateOnly limed
        || plan.Soil is not { WaterPh: not null } soil
        || limed > plan.PlantingDate
            ? null
            : LimeOutlook.For(
                new LimeOutlookRequest
                {
                    Soil = soil,
                    Rate = used,
                    ShareDelivered = Fraction.FromValue(
                        range is null
                            ? Math.Min(1, order.Dressings[0].Mass.Pounds / order.Product.Pounds)
                            : Math.Min(1, range.FirstDressing.RatioTo(range.RuleHigh))
                    ),
                    Material = bought.Offer.Item,
                    Placement = Placement(plan),
                    LimedOn = limed,
                    PlantingOn = plan.PlantingDate,
                    Kinds = [.. plan.Kinds.Select(k => k.Kind)],
                }
            );
}
