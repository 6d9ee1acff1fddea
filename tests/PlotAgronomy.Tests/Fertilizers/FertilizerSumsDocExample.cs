using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>The sums people look for, as the page shows them.</summary>
public class FertilizerSumsDocExample
{
    [Fact]
    public void The_sums_of_the_page_are_what_the_code_writes() =>
        DocExample.AssertCurrent("docs/fertilizers.md", "tests/PlotAgronomy.Tests/Fertilizers/FertilizerSumsDocExample.cs", Run, block: 1);

    internal static void Run(TextWriter output)
    {
        // begin example
        // A rate for a garden spreader.
        var rate = ApplicationRate.FromOuncesPerThousandSquareFeet(11);
        output.WriteLine($"{rate} = {Amounts.Print(rate.OuncesPerThousandSquareFeet, 1)} oz/1000 ft2");

        // A jug of liquid: what to buy, what to spread, and what comes along that nobody asked for.
        var liquid = FertilizerProduct.Liquid(
            "liquid", FertilizerAnalysis.FromGrade("10-34-0"), Density.FromPoundsPerUSGallon(11.65)).InJugs(Volume.FromUsGallons(2.5), pricePerJug: 30);
        var need = PlotNeed.Stated(NutrientTarget.Create(PlantNutrient.Phosphate, ApplicationRate.FromPoundsPerAcre(40), null, "soil test low"));
        var purchase = FertilizerShelf.FromOffers(liquid).Cheapest(need, Area.FromAcres(0.5));
        var line = purchase.Line("liquid")!;
        output.WriteLine($"{line}, {Amounts.Print(line.SpreadVolume!.Value, "gal", 1)} to spread");
        output.WriteLine($"nitrogen nobody asked for: {purchase.Balance(PlantNutrient.Nitrogen)?.Surplus}");

        // Beside the seed: the most of a product the row bears.
        var limit = SeedPlacedLimit.All.First(l => l.Crop == SeedRowCrop.Corn);
        output.WriteLine($"in the corn row at most {limit.MostProduct(FertilizerAnalysis.FromGrade("10-34-0"))} of 10-34-0");

        // What urea does to the soil, and how salty it is a pound of nutrient.
        var urea = FertilizerMaterial.Find("urea-granular");
        output.WriteLine($"{urea}: {urea.LimeValuePerPoundOfNitrogen:0.00} lb of lime value a pound of nitrogen");
        var chloride = FertilizerMaterial.Find("potassium-chloride-muriate-of-potash");
        output.WriteLine($"{chloride}: salt index {chloride.Figure(MaterialProperty.SaltIndex)?.Value:0.0}, {chloride.SaltIndexPerUnitOfNutrient:0.00} a pound of nutrient");
        output.WriteLine(FertilizerMaterial.Find("triple-superphosphate").AnalysisFromMemory()?.Caution);

        // Litter that a laboratory analyzed: sized by its phosphate, and what that brings.
        var litter = Manure.Analyzed("broiler litter", nitrogen: 56, phosphate: 53, potash: 46);
        var nitrogen = NitrogenAvailability.FromFraction(Fraction.FromPercent(60));
        output.WriteLine(litter.ForPhosphate(ApplicationRate.FromPoundsPerAcre(60), PhosphateAvailability.All, nitrogen).ShowWork()[0]);
        output.WriteLine(litter.ForNitrogen(ApplicationRate.FromPoundsPerAcre(60), nitrogen).ShowWork()[0]);

        // How far a lot was from its label, in money.
        var found = LabelIndex.For(FertilizerAnalysis.FromGrade("13-13-13"), FertilizerAnalysis.FromPercent(12.4, 13.2, 12.8), 0.6m, 0.5m, 0.4m);
        output.WriteLine($"the lot is worth {found.Percent:0.0} % of its label");

        output.WriteLine($"{FertilizerAnalysis.BaggedGrades.Length} grades are commonly bagged");
        // end example
    }
}
