using BenchmarkDotNet.Attributes;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.Fertilizers.Solver;
using UnitsNet;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>The cheapest whole bags of eight products for three nutrients.</summary>
[MemoryDiagnoser]
public class FertilizersBenchmarks
{
    private static readonly PackageProblem Problem = RandomShelves.Draw(new Random(1), 8, 3, kind: 7);

    private static readonly FertilizerShelf Shelf = FertilizerShelf.FromOffers(
        [.. "46-0-0 18-46-0 0-46-0 0-0-60 13-13-13 19-19-19 6-24-24 10-20-20".Split(' ').Select(Bag)]);

    private static readonly PlotNeed Need = PlotNeed.Stated(
        Target(PlantNutrient.Nitrogen, 60),
        Target(PlantNutrient.Phosphate, 40),
        Target(PlantNutrient.Potash, 80));

    /// <summary>The search alone, on a drawn shelf of the same size.</summary>
    /// <returns>The cost.</returns>
    [Benchmark(Baseline = true)]
    public double Search() => PackageSearch.Cheapest(PackageReduction.Of(Problem, spreadWhole: false).Problem, spreadWhole: false).Cost;

    /// <summary>By the typed call.</summary>
    /// <returns>The cost.</returns>
    [Benchmark]
    public decimal Typed() => Shelf.Cheapest(Need, Area.FromAcres(1.2), PurchaseForm.BuyWholePackages).TotalCost;

    private static Offer<FertilizerProduct> Bag(string grade) =>
        Offer.InBags(FertilizerProduct.Create(grade, FertilizerAnalysis.FromGrade(grade)), Mass.FromPounds(50), 15 + grade.Length);

    private static NutrientTarget Target(PlantNutrient nutrient, double pounds) =>
        NutrientTarget.Create(nutrient, ApplicationRate.FromPoundsPerAcre(pounds), null, "benchmark");
}
