using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Planning;

/// <summary>What the plot needs: the laboratory's printed rates first, ours beside them.</summary>
internal static class NeedSolver
{
    internal static PlotNeed Solve(PlotPlan plan, Blend blend) =>
        PlotNeed.For(
            new PlotNeedRequest
            {
                Soil = plan.Soil,
                Kinds = blend.KindShares,
                System = plan.NutrientSystem,
                BuildUpYears = plan.BuildUpYears,
                Printed = Printed(plan),
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
        return rates.Length == 0 ? null : PrintedRecommendation.FromRates(plan.Report.Laboratory, printed.Crop, rates);
    }

    private static IEnumerable<PrintedRate> Rate(PlantNutrient nutrient, ApplicationRate? rate) =>
        rate is { } printed ? [PrintedRate.FromRate(nutrient, printed)] : [];

    /// <summary>Only a legume that grew there before, or stands there, leaves nitrogen.</summary>
    private static LegumeCreditAnswer? Credit(PlotPlan plan) =>
        plan.LegumeCredit is not { } credit ? null
        : plan.Plot.Cover == GroundCover.LegumeStand || plan.Plot.CoverKind is { IsLegume: true }
            ? credit.For(LegumeStand.Existing)
        : plan.Plot.GrewBefore is { IsLegume: true } ? credit.For(LegumeStand.Earlier)
        : null;
}
