using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Planning;

/// <summary>Chooses the published methods of a plan: what it names, else by whose recommendation is printed, by the laboratory,
/// by the place. None whose numbers were not checked is chosen by itself.</summary>
internal static class MethodChoices
{
    internal static MethodChoice<LimeMethod> Lime(PlotPlan plan, IReadOnlyList<KindShare> kinds)
    {
        if (plan.LimeMethod is { } named)
        {
            return MethodChoice<LimeMethod>.Named(named);
        }

        ImmutableArray<LimeMethod> fitting = [.. LimeMethod.Accepting(plan.Soil).Where(m => GivesRate(plan, m, kinds))];
        ImmutableArray<LimeMethod> published = [.. fitting.Where(m => m.Institution != Institution.Practice)];
        return published.IsEmpty && fitting is [var practice, ..]
            ? new(practice, ChosenBy.NothingElseReads, "", fitting)
            : MethodWitness.Choose(plan, published, i => i.LimeMethods, _ => false);
    }

    internal static MethodChoice<RecommendationSystem> Nutrients(PlotPlan plan, IReadOnlyList<KindShare> kinds) =>
        plan.NutrientSystem is { } named
            ? MethodChoice<RecommendationSystem>.Named(named)
            : MethodWitness.Choose(
                plan,
                [.. RecommendationSystem.All.Where(s => kinds.Any(k => Reads(plan, s, k.Kind)))],
                i => i.NutrientSystems,
                s => s.Record is { NextId: not null } or { NextInWords: not null }
            );

    private static bool GivesRate(PlotPlan plan, LimeMethod method, IReadOnlyList<KindShare> kinds)
    {
        var (_, ph) = LimeAim.Of(plan with { LimeMethod = method }, kinds);
        return ph is { } target && method.NeedFor(plan.Soil, LimeAim.For(method, target)).Rate is not null;
    }

    private static bool Reads(PlotPlan plan, RecommendationSystem system, CropKind kind)
    {
        PlantNutrient[] asked = [PlantNutrient.Phosphate, PlantNutrient.Potash];
        return asked.Any(n =>
            KindProxy.For(kind).RowIn(system, n, !plan.Plot.IsCarriedOff) is { } row && system.WouldServe(plan.Soil, row, n)
        );
    }
}
