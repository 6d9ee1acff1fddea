using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>From the report to an order of lime: the printed rate first, ours beside it; which offer is bought, the liming room
/// says.</summary>
internal static class LimeSolver
{
    /// <param name="plan">Plan with its method chosen, where one could be.</param>
    /// <param name="choice">Who chose it, or between which nobody did.</param>
    /// <param name="kinds">Kinds with their shares; may be none.</param>
    /// <param name="fertilizer">What goes on beside the lime, or null.</param>
    internal static Answer<LimeAnswer> Solve(
        PlotPlan plan,
        MethodChoice<LimeMethod> choice,
        IReadOnlyList<KindShare> kinds,
        Purchase? fertilizer
    )
    {
        var (target, wanted) = LimeAim.Of(plan, kinds);
        var soil = plan.Soil;
        double? targetPh = wanted is { } aimed ? LimeAim.Taken(plan, aimed) : null;
        double counted = targetPh ?? LimingConstants.All["fallback-target"];
        var computed = targetPh is { } ph ? plan.LimeMethod?.NeedFor(soil, ph, plan.EarlierLime) : null;
        var printed = plan.Printed?.Lime;
        var need =
            printed is not null ? Due(soil, printed.AsItStands(Worked(plan), counted))
            : computed is not null ? computed.Published ?? computed.Rate
            : NoneBy(soil, targetPh);
        bool isWeak = WeaklyBufferedLime.AppliesTo(soil, counted);
        var capped = need is not null && isWeak && printed is null ? Capped(plan, need) : need;
        var used = LimeSinceSample.StillToGo(plan, capped);
        var offers = Offers(plan, used, isWeak, WithNitrogen(plan, fertilizer));
        var expected = printed is { TargetPh: null } ? null : Outlook(plan, need, used, offers?.CheapestForPlot);
        ImmutableArray<OpenQuestion> missing = [.. Missing(plan, choice, need, computed, counted)];
        var lime = new LimeAnswer(plan, expected, day => Again(plan with { LimeDate = day }).Told.Expected)
        {
            Target = target,
            TargetPh = targetPh,
            Printed = printed,
            Check =
                printed?.Rate is { } rate && plan.LimeMethod is { } method
                    ? PrintedLimeCheck.For(rate, method.NeedFor(soil, method.ClosestTarget(rate.TargetPh), plan.EarlierLime))
                    : null,
            Computed = computed,
            ByHomePh =
                soil.WaterPh is null && plan.HomePh is { } read && printed is null
                    ? LimeByHomePh.For(soil, read, targetPh)
                    : null,
            Need = need,
            WeaklyBuffered = capped == need ? null : WeaklyBufferedLime.For(soil, counted, [.. Named(plan)]),
            Rate = LimeParts.Rate(used, missing),
            Offers = offers,
            Missing = missing,
            Cases = Cases,
        };
        return Whole(plan, lime);

        ImmutableArray<AnswerCase<LimeAnswer>> Cases() => [.. missing.SelectMany(q => LimeCases.Of(plan, q, Again))];

        Answer<LimeAnswer> Again(PlotPlan changed) =>
            changed.LimeMethod is not { } method || method == plan.LimeMethod
                ? Solve(changed, choice, kinds, fertilizer)
                : Solve(changed, MethodChoice<LimeMethod>.Named(method), kinds, fertilizer);
    }

    /// <summary>Whether anything in the plan has to do with lime.</summary>
    private static bool IsAsked(PlotPlan plan) =>
        plan.ReportOrNone.PrintsReadings
        || plan.HomePh is not null
        || plan.Printed?.Lime is not null
        || plan.LimeMethod is not null
        || !plan.LimeOffers.IsEmpty;

    private static IEnumerable<LimeMethod> Named(PlotPlan plan) => plan.LimeMethod is { } method ? [method] : [];

    /// <summary>The depth that lime goes to, where the report does not say for which its rate is.</summary>
    private static Length Worked(PlotPlan plan) => plan.TillageDepth ?? Length.FromInches(LimingConstants.All["furrow-slice"]);

    /// <summary>No lime at the pH aimed at, whatever method would say so.</summary>
    private static LimeRate? NoneBy(PlotSoil soil, double? targetPh) =>
        targetPh is { } target && soil.WaterPh is { } ph && !Tolerance.IsBelow(ph.Value, target)
            ? LimeRate.FromBasis(
                ApplicationRate.Zero,
                target,
                Length.FromInches(LimingConstants.All["furrow-slice"]),
                LimeBasis.GroundLimestone,
                Institution.Practice
            )
            : null;

    /// <summary>What stands between the plan and a rate, or what a printed rate leaves open beside it.</summary>
    private static IEnumerable<OpenQuestion> Missing(
        PlotPlan plan,
        MethodChoice<LimeMethod> choice,
        LimeRate? need,
        LimeNeed? computed,
        double targetPh
    ) =>
        plan.Printed?.Lime is { } printed
            ? LimeQuestions
                .For(printed, plan.ReportOrNone.Laboratory)
                .Where(q => q is not OpenQuestion<Length> || LimePlacing.TreatedDepth(plan) is not null)
        : need is not null ? []
        : computed is not null ? computed.Questions
        : !plan.IsTested ? [SoilQuestions.Report()]
        : LimeQuestions.ForNoMethod(plan.Soil, targetPh, choice.Fitting);

    private static LimeRate Capped(PlotPlan plan, LimeRate need) =>
        WeakBuffering.Capped(
            plan.LimeMethod!,
            need,
            LimePlacing.TreatedDepth(plan) ?? LimePlacementRule.DepthOf(need, LimePlacing.Of(plan))
        );

    /// <summary>A printed rate, none of it where the soil has the pH already.</summary>
    private static LimeRate? Due(PlotSoil soil, LimeRate? rate) =>
        rate is not null && LimeCautions.IsAtTarget(soil, rate) ? rate.With(ApplicationRate.Zero) : rate;

    /// <summary>The answer of the room: open without a rate, and then with what a method or a label would make of it; not asked
    /// where neither soil, print nor offer has anything to do with lime.</summary>
    private static Answer<LimeAnswer> Whole(PlotPlan plan, LimeAnswer lime) =>
        lime.Rate.State switch
        {
            AnswerState.Open when !IsAsked(plan) => Answers.NotAsked(lime),
            AnswerState.Open => Answers.OpenButFor(lime, () => [.. lime.Questions], lime.Cases, () => lime.Findings),
            AnswerState.NoneNeeded => new(
                AnswerState.NoneNeeded,
                true,
                lime,
                () => [.. lime.Questions],
                null,
                () => lime.Findings
            ),
            _ => new(AnswerState.Given, true, lime, () => [.. lime.Questions], lime.Cases, () => lime.Findings),
        };

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
                    WorkedDepth = LimePlacing.WorkedDepth(plan, used),
                    Soil = plan.Soil,
                    EarlierLime = plan.Printed?.Lime is null ? null : plan.EarlierLime,
                    WithUreaOrAmmonium = withNitrogen,
                    MostAtOnce = isWeak && plan.Printed?.Lime is not null ? WeakBuffering.MostOfAny : null,
                    FirstDressingOn = plan.LimeDate,
                    SowingOn = plan.PlantingDate,
                    StandsForYears = GrownKinds.Of(plan).Any(k => k.Kind.LifeCycle == LifeCycle.Perennial),
                },
                plan.LimeOffers
            );

    private static bool WithNitrogen(PlotPlan plan, Purchase? fertilizer) =>
        plan.LimeDate is { } limed
        && plan.PlantingDate?.DayNumber - limed.DayNumber is >= 0 and var days
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
        || plan.PlantingDate is not DateOnly planting
        || plan.Soil is not { WaterPh: not null } soil
        || limed > planting
            ? null
            : LimeOutlook.For(
                new LimeOutlookRequest
                {
                    Soil = soil,
                    Rate = need,
                    ShareDelivered = Fraction.FromValue(
                        Math.Min(1, (used.RatioTo(need) * ShareAtFirst(order)) + LimeSinceSample.Part(plan, need))
                    ),
                    Material = bought.Offer.Item,
                    Placement = LimePlacing.Of(plan),
                    LimedOn = limed,
                    PlantingOn = planting,
                    Kinds = [.. plan.Kinds.Select(k => k.Kind)],
                }
            );

    /// <summary>All of it where nothing is left to buy, because earlier lime is credited with it.</summary>
    private static double ShareAtFirst(LimeOrder order) =>
        order.Product.Pounds > 0
            ? order.Dressings.Where(d => d.MonthsAfterFirst == 0).Sum(d => d.Mass.Pounds) / order.Product.Pounds
            : 1;
}
