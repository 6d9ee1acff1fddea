using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The fertilizer to buy and spread.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class FertilizerAnswer
{
    private readonly PlotPlan plan;
    private readonly PlotNeed asked;
    private readonly PlotNeed need;

    /// <param name="plan">Plan.</param>
    /// <param name="asked">Need of the season.</param>
    /// <param name="need">What of it is bought for the sowing.</param>
    internal FertilizerAnswer(PlotPlan plan, PlotNeed asked, PlotNeed need)
    {
        this.plan = plan;
        this.asked = asked;
        this.need = need;
    }

    /// <summary>Gets a value indicating whether any nutrient is needed for the sowing in an amount worth buying.</summary>
    public bool IsNeeded => !Waits && NeedSolver.IsNeeded(need);

    /// <summary>Gets a value indicating whether the purchase waits, because the plan names seed and none of it is sown now; the
    /// need is told for the day it is.</summary>
    public bool Waits { get; init; }

    /// <summary>Gets the nitrogen that is given to the stand and bought apart; not needed where all of it goes on for the
    /// sowing.</summary>
    public required Answer<LaterNitrogen> LaterNitrogen { get; init; }

    /// <summary>Gets the cheapest set on offer for the sowing, in whole packages; open where something is needed and nothing is
    /// on offer.</summary>
    public required Answer<Purchase> Purchase { get; init; }

    /// <summary>Gets other sets that meet every need and really differ from the cheapest.</summary>
    public required ImmutableArray<OtherPurchase> Others { get; init; }

    /// <summary>Gets how well each product on offer would fit alone, best first; none where nothing is needed.</summary>
    public ImmutableArray<ProductFit> Fits =>
        IsNeeded && !plan.FertilizerOffers.IsEmpty ? ProductFit.Rank(need, [.. plan.FertilizerOffers.Select(o => o.Item)]) : [];

    /// <summary>Gets what each product on offer would take alone to meet every need it serves, in the order of the offers, and
    /// what that would overshoot.</summary>
    public ImmutableArray<SingleProductRate> Alone =>
        [
            .. (Waits ? [] : plan.FertilizerOffers)
                .Select(o => SingleProductRate.MeetingAll(o.Item.Analysis, need))
                .Where(single => single.SetBy is not null),
        ];

    /// <summary>Gets the best product alone in packages for the plot: exact, to the nearest package and rounded up; not needed
    /// where no product serves a need, open where nothing is known of what to buy.</summary>
    public Answer<RoundedAmounts> BestAlone =>
        Purchase.State == AnswerState.Open && !plan.FertilizerOffers.IsEmpty
            ? Answers.Open<RoundedAmounts>(() => Purchase.Questions)
        : Fits is [{ Rate.PoundsPerAcre: > 0 } best, ..]
            ? Answers.Given(RoundedAmounts.For(OfferOf(best.Product), best.Rate, need, plan.Plot.Area))
        : Answers.NoneNeeded<RoundedAmounts>();

    /// <summary>Gets the acid that the nitrogen of the purchase adds, product by product, as published for planning; products
    /// without a figure are left out.</summary>
    public ImmutableArray<NitrogenAcidity> Acidity => FertilizerParts.Acidity(Purchase.OrNull());

    /// <summary>Gets the nitrogen that urea of the purchase may lose to the air without a week's rain; not needed where no urea
    /// is spread on the surface, open until the soil's temperature is known.</summary>
    public Answer<PercentRange> UreaLoss => FertilizerParts.UreaLoss(plan, Purchase.OrNull());

    /// <summary>Gets rules of several places on fertilizer near water, as examples: your own law goes first. Not needed where
    /// none is spread; whether water is near is asked.</summary>
    public Answer<ImmutableArray<SetbackRule>> Setbacks => FertilizerParts.Setbacks(Purchase.OrNull());

    /// <summary>Each need with what the purchase brings of it; null where nothing is bought for it.</summary>
    internal IEnumerable<(NutrientTarget Target, NutrientBalance? Balance)> Brought
    {
        get
        {
            var bought = Purchase.OrNull();
            return asked.Targets.Select(t => (t, bought?.Balance(t.Nutrient)));
        }
    }

    /// <summary>What is spread on the stand.</summary>
    internal ImmutableArray<PurchaseLine> Later => LaterNitrogen.OrNull()?.Purchase.OrNull()?.Lines ?? [];

    /// <summary>The dressings that something is bought for, or has still to be found for.</summary>
    internal ImmutableArray<NitrogenDose> Dressed =>
        LaterNitrogen.OrNull() is { Purchase.State: not AnswerState.NoneNeeded } later ? later.Doses : [];

    /// <summary>What is spread for the sowing.</summary>
    internal ImmutableArray<PurchaseLine> AtSowing => Purchase.OrNull()?.Lines ?? [];

    /// <summary>What stands open here.</summary>
    internal IEnumerable<OpenQuestion> Questions =>
        [.. Purchase.Questions, .. LaterNitrogen.Questions, .. UreaLoss.Questions, .. Setbacks.Questions];

    /// <summary>The results that no section of the sheet tells.</summary>
    internal IEnumerable<IWorkedResult?> WithoutSection => Acidity;

    private Offer<FertilizerProduct> OfferOf(FertilizerProduct product) => plan.FertilizerOffers.First(o => o.Item == product);

    /// <summary>What is bought.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => IsNeeded ? $"fertilizer {Purchase}" : "no fertilizer needed";
}
