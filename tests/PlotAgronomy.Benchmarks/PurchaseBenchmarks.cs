using BenchmarkDotNet.Attributes;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Benchmarks;

/// <summary>The whole plan as an app asks for it: solver, balances, marginal costs and cautions.</summary>
[MemoryDiagnoser]
public class PurchaseBenchmarks
{
    private readonly FertilizerShelf shelf = FertilizerShelf.FromOffers(
        Bag("46-0-0", 27.50m), Bag("18-46-0", 39m), Bag("0-46-0", 36.50m), Bag("0-0-60", 28.50m),
        Bag("13-13-13", 18.75m), Bag("19-19-19", 28m), Bag("6-24-24", 32.50m), Bag("21-0-0-24S", 22m));

    private readonly PlotNeed need = PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 60), Target(PlantNutrient.Phosphate, 40), Target(PlantNutrient.Potash, 80));

    /// <summary>Gets or sets the form.</summary>
    [Params(PurchaseForm.WeighExact, PurchaseForm.BuyWholePackages, PurchaseForm.SpreadWholePackages)]
    public PurchaseForm Form { get; set; }

    /// <summary>The cheapest plan.</summary>
    /// <returns>The plan.</returns>
    [Benchmark]
    public Purchase Cheapest() => shelf.Cheapest(need, Area.FromAcres(1.2), Form);

    private static Offer<FertilizerProduct> Bag(string grade, decimal price) =>
        Offer.InBags(FertilizerProduct.Create(grade, FertilizerAnalysis.FromGrade(grade)), Mass.FromPounds(50), price);

    private static NutrientTarget Target(PlantNutrient nutrient, double rate) =>
        NutrientTarget.Create(nutrient, ApplicationRate.FromPoundsPerAcre(rate), null, "benchmark");
}
