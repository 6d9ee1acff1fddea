using System.Collections.Immutable;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy;

/// <summary>Asks the rooms about a plan, in the order of the work.</summary>
/// <example>
/// <code>
/// var plan = PlanFile.Read(File.ReadAllText("my-plot.json")).Plan!;
/// var answers = plan.Solve();
/// Console.WriteLine(plan.Currency.Print(answers.TotalCost));
/// // 362.40 USD
/// </code>
/// </example>
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
        var judged = VerdictSolver.Judge(plan);
        var sown = VerdictSolver.OfTheSown(plan, judged);
        var limed = VerdictSolver.OfTheLimed(plan, judged);
        bool waits = sown.Kinds.IsEmpty && !plan.Kinds.IsEmpty;
        var fed = waits ? limed : sown;
        var blend = SeedSolver.BlendOf(sown);
        ImmutableArray<KindShare> kinds = blend?.KindShares ?? GrownKinds.Of(fed);
        var limeMethod = MethodChoices.Lime(limed, GrownKinds.Of(limed));
        var system = MethodChoices.Nutrients(fed, kinds);
        var need = NeedSolver.Solve(Chosen(fed), system, kinds);
        var fertilizer = PurchaseSolver.Solve(Chosen(fed), need, waits, kinds);
        var lime = LimeSolver.Solve(Chosen(limed), limeMethod, GrownKinds.Of(limed), fertilizer.Told.Purchase.OrNull());
        var ground = SpreadingSolver.Ground(plan);
        var weighedFor = SpreadingSolver.SownGround(plan, ground);
        var seed = SeedSolver.Solve(sown, blend, PurchaseSolver.Nitrogen(fertilizer), weighedFor);
        return new PlotAnswers
        {
            Plan = plan,
            Verdict = VerdictSolver.Solve(plan, judged, lime.Told.Expected, () => seed.OrNull()?.Fit),
            LimeMethod = limeMethod,
            NutrientSystem = system,
            Soil = Soil(plan),
            Need = need,
            Lime = lime,
            Fertilizer = fertilizer,
            Seed = seed,
            Spreading = SpreadingSolver.Solve(sown, seed, ground),
        };

        PlotPlan Chosen(PlotPlan part) => part with { LimeMethod = limeMethod.Chosen, NutrientSystem = system.Chosen };
    }

    private static Answer<SoilAnswer> Soil(PlotPlan plan)
    {
        var soil = new SoilAnswer(plan);
        return !plan.IsTested
            ? Answers.OpenButFor(soil, () => [SoilQuestions.Report(), .. soil.Questions], null, () => soil.ReportFindings)
            : Answers.Given(soil, () => soil.ReportFindings, () => [.. soil.Questions]);
    }
}
