using System.Collections.Immutable;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy;

/// <summary>Asks the rooms about a plan, in the order of the work.</summary>
public static class PlanSolver
{
    /// <summary>Asks every room about the plan. Where a fact is missing, the answer of that room is open and says what to
    /// ask.</summary>
    /// <param name="plan">Plan.</param>
    /// <returns>What the rooms answer.</returns>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public static PlotAnswers Solve(this PlotPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var blend = SeedSolver.BlendOf(plan);
        ImmutableArray<KindShare> kinds = blend?.KindShares ?? [.. plan.Kinds.Select(k => k.Share)];
        var limeMethod = MethodChoices.Lime(plan, kinds);
        var system = MethodChoices.Nutrients(plan, kinds);
        var chosen = plan with { LimeMethod = limeMethod.Chosen, NutrientSystem = system.Chosen };
        var need = NeedSolver.Solve(chosen, system, kinds);
        var fertilizer = PurchaseSolver.Solve(chosen, need);
        var ground = SpreadingSolver.Ground(plan);
        var seed = SeedSolver.Solve(plan, blend, PurchaseSolver.Nitrogen(fertilizer), ground?.OutsideShare ?? 0);
        return new PlotAnswers
        {
            Plan = plan,
            LimeMethod = limeMethod,
            NutrientSystem = system,
            Soil = Soil(plan),
            Need = need,
            Lime = LimeSolver.Solve(chosen, limeMethod, kinds, fertilizer.Told.Purchase.OrNull()),
            Fertilizer = fertilizer,
            Seed = seed,
            Spreading = SpreadingSolver.Solve(plan, seed, ground),
        };
    }

    private static Answer<SoilAnswer> Soil(PlotPlan plan)
    {
        var soil = new SoilAnswer(plan);
        return !plan.IsTested
            ? Answers.OpenButFor(soil, () => [SoilQuestions.Report(), .. soil.Questions], null, () => soil.ReportFindings)
            : Answers.Given(soil, () => soil.ReportFindings, () => [.. soil.Questions]);
    }
}
