using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>What the plot needs: the laboratory's printed rates first, ours beside them.</summary>
internal static class NeedSolver
{
    private static readonly ImmutableArray<PlantNutrient> FromTheReport = [PlantNutrient.Phosphate, PlantNutrient.Potash];

    /// <summary>Open where the system has no figure from the report at all, or where all that is known is that nothing else is
    /// needed; not asked where there is neither a printed figure nor, for what is sown, a report, a system or a product on offer;
    /// else the answer is given and the question on what is not known stands beside it.</summary>
    internal static Answer<PlotNeed> Solve(
        PlotPlan plan,
        MethodChoice<RecommendationSystem> choice,
        ImmutableArray<KindShare> kinds
    )
    {
        if (Printed(plan) is null && (kinds.IsEmpty || !IsAsked(plan)))
        {
            return Answers.NotAsked(PlotNeed.Nothing);
        }

        var need = NeedOf(plan, kinds);
        bool isOpen = FromTheReport.All(n => need.Find(n) is null) || (need.NotKnown.Any() && !IsNeeded(need));
        bool isZero = !isOpen && !IsNeeded(need);
        var questions = new NeedQuestions(plan, choice, kinds, need);
        return new(
            isOpen ? AnswerState.Open
                : isZero ? AnswerState.NoneNeeded
                : AnswerState.Given,
            true,
            need,
            () => [.. questions.All, .. PrintedRanges.Questions(plan)],
            () => [.. questions.Cases(NeedOf), .. PrintedRanges.Cases(plan, meant => NeedOf(meant, kinds))],
            () => [.. need.Findings, .. FindingsFor(plan)]
        );
    }

    /// <summary>Whether anything in the plan has to do with nutrients; what is to be sown alone has not.</summary>
    private static bool IsAsked(PlotPlan plan) =>
        plan.ReportOrNone.PrintsReadings || plan.NutrientSystem is not null || !plan.FertilizerOffers.IsEmpty;

    /// <summary>A credit whose legume the plot does not name is not taken, and said.</summary>
    internal static IEnumerable<Finding> FindingsFor(PlotPlan plan) =>
        CreditFindings(plan)
            .Concat(PrintedRanges.Findings(plan))
            .Concat(
                UnjudgedReadings.Of(
                    plan.ReportOrNone,
                    SoilSolver.Ratings(plan).OrNull(),
                    [.. SoilSolver.Secondary(plan).Select(a => a.Rule.Rows[0].Analyte).OfType<SoilAnalyte>()]
                )
            );

    private static IEnumerable<Finding> CreditFindings(PlotPlan plan) =>
        plan.LegumeCredit is not { } credit || HasLegumeOf(credit, plan.Plot) ? []
        : credit.IsForExistingStand ? [FindingCatalog.Create(PlanningCodes.CreditNeedsStand, ("credit", credit.ToString()))]
        : [FindingCatalog.Create(PlanningCodes.CreditNeedsEarlier, ("credit", credit.ToString()))];

    internal static bool IsNeeded(PlotNeed need) => need.Targets.Any(t => t.AtLeast != ApplicationRate.Zero);

    private static PlotNeed NeedOf(PlotPlan plan, ImmutableArray<KindShare> kinds) =>
        Printed(plan) is var printed && printed is null && kinds.IsEmpty
            ? PlotNeed.Unknown
            : PlotNeed.For(
                new PlotNeedRequest
                {
                    Soil = plan.Soil,
                    Kinds = kinds,
                    System = plan.NutrientSystem,
                    BuildUpYears = plan.BuildUpYears,
                    Printed = printed,
                    Uses = plan.Kinds.ToImmutableDictionary(
                        k => k.Kind.Id,
                        k => new KindUse { Yield = k.Yield, IsCarriedOff = plan.Plot.IsCarriedOff }
                    ),
                    LegumeCredit = Credit(plan),
                }
            );

    private static PrintedRecommendation? Printed(PlotPlan plan)
    {
        if (plan.Printed is not { } printed)
        {
            return null;
        }

        PrintedRate[] rates =
        [
            .. Rate(PlantNutrient.Nitrogen, printed.Nitrogen),
            .. Rate(PlantNutrient.Phosphate, printed.Phosphate),
            .. Rate(PlantNutrient.Potash, printed.Potash),
        ];
        return rates.Length == 0 ? null : PrintedRecommendation.FromRates(plan.ReportOrNone.Laboratory, printed.Crop, rates);
    }

    private static IEnumerable<PrintedRate> Rate(PlantNutrient nutrient, ApplicationRate? rate) =>
        rate is { } printed ? [PrintedRate.FromRate(nutrient, printed)] : [];

    /// <summary>Only a legume that grew there before, or stands there, leaves nitrogen.</summary>
    private static LegumeCreditAnswer? Credit(PlotPlan plan) =>
        plan.LegumeCredit is { } credit && HasLegumeOf(credit, plan.Plot)
            ? credit.For(credit.IsForExistingStand ? LegumeStand.Existing : LegumeStand.Earlier)
            : null;

    /// <summary>A published credit is for a legume that stands or for one that grew before, never for either.</summary>
    private static bool HasLegumeOf(LegumeCredit credit, Plot plot) =>
        credit.IsForExistingStand
            ? plot.Cover == GroundCover.LegumeStand || plot.CoverKind is { IsLegume: true }
            : plot.GrewBefore is { IsLegume: true };
}
