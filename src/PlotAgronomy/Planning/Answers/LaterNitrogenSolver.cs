using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>From the dressings of the season to what is bought for them.</summary>
internal static class LaterNitrogenSolver
{
    /// <param name="plan">Plan.</param>
    /// <param name="doses">What is left for the stand.</param>
    /// <param name="along">What comes along with the fertilizer for the sowing beyond the dose at sowing.</param>
    /// <param name="forSowing">That fertilizer; null where none is bought.</param>
    internal static Answer<LaterNitrogen> Solve(
        PlotPlan plan,
        ImmutableArray<NitrogenDose> doses,
        ApplicationRate along,
        Purchase? forSowing
    )
    {
        if (doses.IsEmpty)
        {
            return Answers.NoneNeeded<LaterNitrogen>();
        }

        bool isTooLittle =
            along > ApplicationRate.Zero && doses.Sum(d => d.Low.PoundsPerAcre) < PurchaseFloor.PoundsOf(PlantNutrient.Nitrogen);
        var later = new LaterNitrogen
        {
            Doses = doses,
            CameAlong = along,
            Purchase = isTooLittle ? Answers.NoneNeeded<Purchase>() : Bought(plan, doses, forSowing),
        };
        return Answers.Given(later, () => later.Purchase.OrNull()?.Findings ?? [], () => later.Purchase.Questions);
    }

    private static Answer<Purchase> Bought(PlotPlan plan, ImmutableArray<NitrogenDose> doses, Purchase? forSowing)
    {
        Offer<FertilizerProduct>[] offers =
        [
            .. LeftOver(forSowing),
            .. plan.FertilizerOffers.Where(o => PurchaseSets.IsNitrogenAlone(o.Item)),
        ];
        if (offers.Length == 0)
        {
            return Answers.Open<Purchase>(() => [FertilizerQuestions.Offer()]);
        }

        double low = doses.Sum(d => d.Low.PoundsPerAcre);
        double high = doses.Sum(d => d.High.PoundsPerAcre);
        var need = PlotNeed.Stated(
            NutrientTarget.Create(
                PlantNutrient.Nitrogen,
                ApplicationRate.FromPoundsPerAcre(low),
                ApplicationRate.FromPoundsPerAcre(Math.Max(low, high)),
                () => string.Join(", then ", doses.Select(d => d.When))
            )
        );
        var purchase = FertilizerShelf
            .FromOffers(offers)
            .Cheapest(need, plan.Plot.Area, field: PurchaseSets.Field(plan, need, onTheStand: true));
        return purchase.IsUndecided
            ? Answers.Open<Purchase>(() => [FertilizerQuestions.Offer()])
            : Answers.Given(purchase, () => purchase.Findings);
    }

    /// <summary>What is left of a bag that was opened for the sowing costs nothing more.</summary>
    private static IEnumerable<Offer<FertilizerProduct>> LeftOver(Purchase? forSowing) =>
        from line in forSowing?.Lines ?? []
        where PurchaseSets.IsNitrogenAlone(line.Product) && line.Leftover > Mass.Zero
        select Offer.InBags(line.Product, line.Leftover, 0) with
        {
            Available = 1,
        };
}
