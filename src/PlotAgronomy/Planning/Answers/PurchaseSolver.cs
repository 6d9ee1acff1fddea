using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The cheapest honest set of fertilizer on offer.</summary>
internal static class PurchaseSolver
{
    /// <summary>Open while the need is open, or where something is needed and nothing is on offer. Nothing is bought for kinds
    /// that are not sown.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="asked">Need.</param>
    /// <param name="waits">Whether the plan names seed and none of it is sown now.</param>
    internal static Answer<FertilizerAnswer> Solve(PlotPlan plan, Answer<PlotNeed> asked, bool waits)
    {
        if (waits)
        {
            return Waiting(plan, asked);
        }

        var need = asked.Told.WorthBuying;
        bool isNeeded = NeedSolver.IsNeeded(need);
        bool isNotKnown = asked.State == AnswerState.Open || (!isNeeded && need.NotKnown.Any());
        var sets = new PurchaseSets(plan, need, isNeeded);
        var taken = sets.Taken;
        var fertilizer = new FertilizerAnswer(plan, asked.Told)
        {
            Purchase =
                taken is { IsUndecided: true } ? Answers.Open<Purchase>(() => [FertilizerQuestions.Offer()])
                : taken is not null ? Answers.Given(taken, () => taken.Findings)
                : isNeeded ? Answers.Open<Purchase>(() => [FertilizerQuestions.Offer()])
                : Answers.NoneNeeded<Purchase>(),
            Others = sets.Others(),
        };
        var state =
            asked.State == AnswerState.NotAsked ? AnswerState.NotAsked
            : isNotKnown || fertilizer.Purchase.State == AnswerState.Open ? AnswerState.Open
            : isNeeded ? AnswerState.Given
            : AnswerState.NoneNeeded;
        return new(
            state,
            true,
            fertilizer,
            () => [.. isNotKnown ? asked.Questions : [], .. fertilizer.Questions],
            () => [.. asked.Cases.SelectMany(end => AtEnd(plan, end))],
            () => [.. FindingsFor(plan, fertilizer), .. sets.Findings()]
        );
    }

    private static Answer<FertilizerAnswer> Waiting(PlotPlan plan, Answer<PlotNeed> asked)
    {
        var nothing = new FertilizerAnswer(plan, asked.Told)
        {
            Waits = true,
            Purchase = Answers.NoneNeeded<Purchase>(),
            Others = [],
        };
        return asked.State == AnswerState.Open ? Answers.OpenButFor(nothing, () => asked.Questions) : Answers.NoneNeeded(nothing);
    }

    /// <summary>What would be bought at one end of a printed range; nothing for other cases.</summary>
    private static IEnumerable<AnswerCase<FertilizerAnswer>> AtEnd(PlotPlan plan, AnswerCase<PlotNeed> end) =>
        end.TryGetAssumed<ApplicationRate>(out var meant)
            ? [new(end.Question, meant, end.Assumption, Solve(plan, Answers.Given(end.Value), waits: false).Told)]
            : [];

    /// <summary>The nitrogen that is bought; null while that is open.</summary>
    internal static ApplicationRate? Nitrogen(Answer<FertilizerAnswer> fertilizer) =>
        fertilizer.State == AnswerState.NoneNeeded ? ApplicationRate.Zero
        : fertilizer.Told.Purchase.OrNull() is { } bought
            ? bought.Balance(PlantNutrient.Nitrogen)?.Delivered ?? ApplicationRate.Zero
        : null;

    internal static IEnumerable<Finding> FindingsFor(PlotPlan plan, FertilizerAnswer fertilizer) =>
        !fertilizer.IsNeeded || fertilizer.Purchase.State != AnswerState.Open ? []
        : plan.FertilizerOffers.IsEmpty ? [FindingCatalog.Create(PlanningCodes.NoFertilizerOffered)]
        : [FindingCatalog.Create(FertilizerCodes.SearchUndecided)];
}
