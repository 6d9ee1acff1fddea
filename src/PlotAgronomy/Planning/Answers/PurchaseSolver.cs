using System.Collections.Immutable;
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
    /// <param name="kinds">Kinds that grow, with their shares.</param>
    internal static Answer<FertilizerAnswer> Solve(
        PlotPlan plan,
        Answer<PlotNeed> asked,
        bool waits,
        ImmutableArray<KindShare> kinds
    )
    {
        if (waits)
        {
            return Waiting(plan, asked);
        }

        var nitrogen = new SeasonNitrogen(asked.Told.WorthBuying, kinds, GrownKinds.IsUpkeep(plan));
        var (sets, need) = ForSowing(plan, nitrogen);
        bool isNeeded = NeedSolver.IsNeeded(need);
        bool isNotKnown = asked.State == AnswerState.Open || (!isNeeded && need.NotKnown.Any());
        var taken = sets.Taken;
        var fertilizer = new FertilizerAnswer(plan, asked.Told, need)
        {
            LaterNitrogen = LaterNitrogenSolver.Solve(
                plan,
                nitrogen.Later(Brought(taken)),
                nitrogen.Along(Brought(taken)),
                taken
            ),
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
            : isNeeded || fertilizer.LaterNitrogen.State == AnswerState.Given ? AnswerState.Given
            : AnswerState.NoneNeeded;
        return new(
            state,
            true,
            fertilizer,
            () => [.. isNotKnown ? asked.Questions : [], .. fertilizer.Questions],
            () => [.. asked.Cases.SelectMany(end => AtEnd(plan, end, kinds))],
            () => [.. FindingsFor(plan, fertilizer), .. sets.Findings(), .. fertilizer.LaterNitrogen.Findings]
        );
    }

    private static Answer<FertilizerAnswer> Waiting(PlotPlan plan, Answer<PlotNeed> asked)
    {
        var nothing = new FertilizerAnswer(plan, asked.Told, asked.Told.WorthBuying)
        {
            LaterNitrogen = Answers.NoneNeeded<LaterNitrogen>(),
            Waits = true,
            Purchase = Answers.NoneNeeded<Purchase>(),
            Others = [],
        };
        return asked.State == AnswerState.Open ? Answers.OpenButFor(nothing, () => asked.Questions) : Answers.NoneNeeded(nothing);
    }

    /// <summary>What would be bought at one end of a printed range; nothing for other cases.</summary>
    private static IEnumerable<AnswerCase<FertilizerAnswer>> AtEnd(
        PlotPlan plan,
        AnswerCase<PlotNeed> end,
        ImmutableArray<KindShare> kinds
    ) =>
        end.TryGetAssumed<ApplicationRate>(out var meant)
            ? [new(end.Question, meant, end.Assumption, Solve(plan, Answers.Given(end.Value), waits: false, kinds).Told)]
            : [];

    /// <summary>The sets for the first of the needs that the offers meet; where they meet none, for the last.</summary>
    private static (PurchaseSets Sets, PlotNeed Need) ForSowing(PlotPlan plan, SeasonNitrogen nitrogen)
    {
        var tried = nitrogen
            .ForSowing.Select(need => (Sets: new PurchaseSets(plan, need, NeedSolver.IsNeeded(need)), Need: need))
            .ToList();
        return tried.Find(t => t.Sets.Taken is not { MeetsEveryNeed: false }) is { Sets: not null } met ? met : tried[^1];
    }

    private static ApplicationRate Brought(Purchase? bought) =>
        bought?.Balance(PlantNutrient.Nitrogen)?.Delivered ?? ApplicationRate.Zero;

    /// <summary>The nitrogen that is bought, for the sowing and for the stand; null while that is open.</summary>
    internal static ApplicationRate? Nitrogen(Answer<FertilizerAnswer> fertilizer) =>
        fertilizer.State == AnswerState.NoneNeeded ? ApplicationRate.Zero
        : fertilizer.Told.Purchase.State == AnswerState.Open ? null
        : Brought(fertilizer.Told.Purchase.OrNull()) + Brought(fertilizer.Told.LaterNitrogen.OrNull()?.Purchase.OrNull());

    internal static IEnumerable<Finding> FindingsFor(PlotPlan plan, FertilizerAnswer fertilizer) =>
        !fertilizer.IsNeeded || fertilizer.Purchase.State != AnswerState.Open ? []
        : plan.FertilizerOffers.IsEmpty ? [FindingCatalog.Create(PlanningCodes.NoFertilizerOffered)]
        : [FindingCatalog.Create(FertilizerCodes.SearchUndecided)];
}
