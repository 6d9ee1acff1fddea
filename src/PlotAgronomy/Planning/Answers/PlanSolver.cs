using System.Collections.Immutable;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

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
        var need = NeedSolver.Solve(plan, kinds);
        var fertilizer = PurchaseSolver.Solve(plan, need);
        var ground = SpreadingSolver.Ground(plan);
        var seed = SeedSolver.Solve(plan, blend, PurchaseSolver.Nitrogen(fertilizer), ground?.OutsideShare ?? 0);
        return new PlotAnswers
        {
            Plan = plan,
            Soil = Soil(plan),
            Need = need,
            Lime = LimeSolver.Solve(plan, kinds, fertilizer.Told.Purchase.OrNull()),
            Fertilizer = fertilizer,
            Seed = seed,
            Spreading = SpreadingSolver.Solve(plan, seed, ground),
        };
    }

    private static Answer<SoilAnswer> Soil(PlotPlan plan)
    {
        var soil = new SoilAnswer(plan);
        return Answers.Given(soil, () => soil.ReportFindings, () => [.. soil.Questions]);
    }
}
