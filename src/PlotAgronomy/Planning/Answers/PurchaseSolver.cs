using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The cheapest honest set of fertilizer on offer.</summary>
internal static class PurchaseSolver
{
    /// <summary>Open while the need is open, or where something is needed and nothing is on offer.</summary>
    internal static Answer<FertilizerAnswer> Solve(PlotPlan plan, Answer<PlotNeed> asked)
    {
        var need = asked.Told;
        bool isNeeded = NeedSolver.IsNeeded(need);
        var cheapest =
            isNeeded && !plan.FertilizerOffers.IsEmpty
                ? FertilizerShelf.FromOffers(plan.FertilizerOffers).Cheapest(need, plan.Plot.Area, field: Field(plan))
                : null;
        var fertilizer = new FertilizerAnswer(plan, need)
        {
            Purchase =
                cheapest is { IsUndecided: true } ? Answers.Open<Purchase>(() => [FertilizerQuestions.Offer()])
                : cheapest is not null ? Answers.Given(cheapest, () => cheapest.Findings)
                : isNeeded ? Answers.Open<Purchase>(() => [FertilizerQuestions.Offer()])
                : Answers.NoneNeeded<Purchase>(),
            Others = Others(plan, need, cheapest),
        };
        var state =
            asked.State == AnswerState.Open || fertilizer.Purchase.State == AnswerState.Open ? AnswerState.Open
            : isNeeded ? AnswerState.Given
            : AnswerState.NoneNeeded;
        return new(
            state,
            true,
            fertilizer,
            () => [.. asked.State == AnswerState.Open ? asked.Questions : [], .. fertilizer.Questions],
            null,
            () => [.. FindingsFor(plan, fertilizer)]
        );
    }

    /// <summary>The nitrogen that is bought; null while that is open.</summary>
    internal static ApplicationRate? Nitrogen(Answer<FertilizerAnswer> fertilizer) =>
        fertilizer.State == AnswerState.NoneNeeded ? ApplicationRate.Zero
        : fertilizer.Told.Purchase.OrNull() is { } bought
            ? bought.Balance(PlantNutrient.Nitrogen)?.Delivered ?? ApplicationRate.Zero
        : null;

    /// <summary>Runner-ups that meet every need and differ from the cheapest set.</summary>
    private static ImmutableArray<OtherPurchase> Others(PlotPlan plan, PlotNeed need, Purchase? cheapest)
    {
        if (cheapest is not { MeetsEveryNeed: true })
        {
            return [];
        }

        var shelf = FertilizerShelf.FromOffers(plan.FertilizerOffers);
        var field = Field(plan);
        var others = ImmutableArray.CreateBuilder<OtherPurchase>();
        Add(RunnerUp.NextCheapest, shelf.NextCheapest(need, plan.Plot.Area, field: field));
        Add(RunnerUp.FewestProducts, shelf.FewestProducts(need, plan.Plot.Area, field: field));
        return others.ToImmutable();

        void Add(RunnerUp kind, Purchase? other)
        {
            if (
                other is { MeetsEveryNeed: true }
                && !BuysTheSame(other, cheapest)
                && !others.Any(known => BuysTheSame(known.Purchase, other))
            )
            {
                others.Add(new OtherPurchase { Is = kind, Purchase = other });
            }
        }
    }

    private static bool BuysTheSame(Purchase one, Purchase other) =>
        one.Lines.Select(Bought).SequenceEqual(other.Lines.Select(Bought));

    /// <summary>A thousandth of a package more or less is the same purchase.</summary>
    private static (double Packages, string Product) Bought(PurchaseLine line) =>
        (Math.Round(line.Packages, 3, MidpointRounding.AwayFromZero), line.Product.Name);

    private static FieldConditions Field(PlotPlan plan) =>
        new()
        {
            IsIncorporated = plan.Method == PlantingMethod.TilledAndPacked,
            IsNearWater = plan.Plot.IsNearWater,
            Soil = plan.Soil,
            IsLegumeStand = plan.Plot.Cover == GroundCover.LegumeStand || plan.Kinds.All(k => k.Kind.IsLegume),
        };

    internal static IEnumerable<Finding> FindingsFor(PlotPlan plan, FertilizerAnswer fertilizer) =>
        !fertilizer.IsNeeded || fertilizer.Purchase.State != AnswerState.Open ? []
        : plan.FertilizerOffers.IsEmpty ? [FindingCatalog.Create(PlanningCodes.NoFertilizerOffered)]
        : [FindingCatalog.Create(FertilizerCodes.SearchUndecided)];
}
