using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

public class FertilizerShelfTests
{
    internal static FertilizerProduct Bag(string grade, decimal price, double pounds = 50) =>
        FertilizerProduct.Create(grade, FertilizerAnalysis.OfGrade(grade), Mass.FromPounds(pounds), price);

    internal static PlotNeed Need(double nitrogen, double phosphate, double potash, double? mostNitrogen = null, double? mostPhosphate = null, double? mostPotash = null) => PlotNeed.Stated(
        Target(PlantNutrient.Nitrogen, nitrogen, mostNitrogen), Target(PlantNutrient.Phosphate, phosphate, mostPhosphate), Target(PlantNutrient.Potash, potash, mostPotash));

    internal static NutrientTarget Target(PlantNutrient nutrient, double atLeast, double? atMost = null) =>
        NutrientTarget.Create(nutrient, ApplicationRate.FromPoundsPerAcre(atLeast), atMost is { } most ? ApplicationRate.FromPoundsPerAcre(most) : null, "stated");

    [Fact]
    public void Whole_bags_of_a_mixed_shelf()
    {
        var shelf = FertilizerShelf.Of(Bag("46-0-0", 24), Bag("18-46-0", 36), Bag("0-0-60", 26), Bag("13-13-13", 19), Bag("19-19-19", 27));
        var plan = shelf.Cheapest(Need(60, 60, 80), Area.FromAcres(0.75), PurchaseForm.SpreadWholePackages);
        Assert.Equal(156m, plan.TotalCost);
        Assert.Equal(1, plan.Line("0-0-60")!.Packages);
        Assert.Equal(4, plan.Line("13-13-13")!.Packages);
        Assert.Equal(2, plan.Line("19-19-19")!.Packages);
        Assert.Equal(159m, shelf.NextCheapest(Need(60, 60, 80), Area.FromAcres(0.75), PurchaseForm.SpreadWholePackages)!.TotalCost);
        Assert.Equal(140.895m, shelf.Cheapest(Need(60, 60, 80), Area.FromAcres(0.75), PurchaseForm.WeighExact).TotalCost, 3);
    }
}
