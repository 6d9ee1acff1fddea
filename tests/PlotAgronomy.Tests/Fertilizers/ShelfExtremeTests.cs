using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>Plots too large to count and too small to weigh break nothing.</summary>
public class ShelfExtremeTests
{
    private static PlotNeed Need(double pounds) =>
        PlotNeed.Stated(
            NutrientTarget.Create(PlantNutrient.Phosphate, ApplicationRate.FromPoundsPerAcre(pounds), null, "stated"),
            NutrientTarget.Create(PlantNutrient.Potash, ApplicationRate.FromPoundsPerAcre(pounds), null, "stated"));

    private static FertilizerShelf Shelf => FertilizerShelf.FromOffers(FertilizerShelfTests.Bag("0-20-20", 26), FertilizerShelfTests.Bag("0-46-0", 36), FertilizerShelfTests.Bag("0-0-60", 27));

    /// <summary>By hand: 40 lb on 1e9 acre are 4e9 bags of 10 lb and more; no count says "nothing".</summary>
    [Theory]
    [InlineData(1e9), InlineData(1e12), InlineData(1e15)]
    public void More_packages_than_can_be_counted_are_undecided(double acres)
    {
        foreach (var form in (PurchaseForm[])[PurchaseForm.BuyWholePackages, PurchaseForm.SpreadWholePackages])
        {
            var bought = Shelf.Cheapest(Need(40), Area.FromAcres(acres), form);
            Assert.True(bought.IsUndecided);
            Assert.Contains(bought.Findings, f => f.Code == FertilizerCodes.SearchUndecided);
            Assert.Null(Shelf.NextCheapest(Need(40), Area.FromAcres(acres), form));
            Assert.Null(Shelf.FewestProducts(Need(40), Area.FromAcres(acres), form));
        }
    }

    [Theory]
    [InlineData(1e-9, 40), InlineData(1e-12, 40), InlineData(1, 1e-9), InlineData(1e-6, 1e-6), InlineData(1e-5, 40), InlineData(1e-7, 40)]
    public void A_need_that_nobody_can_weigh_breaks_nothing(double acres, double pounds)
    {
        foreach (var form in Enum.GetValues<PurchaseForm>())
        {
            var bought = Shelf.Cheapest(Need(pounds), Area.FromAcres(acres), form);
            Assert.False(bought.IsUndecided);
            Assert.NotEmpty(bought.ShowWork());
        }
    }
}
