using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Nutrients;

public class NutrientsDocExample
{
    [Fact]
    public void The_example_of_the_page_runs() =>
        DocExample.AssertCurrent("docs/nutrients.md", "tests/PlotAgronomy.Tests/Nutrients/NutrientsDocExample.cs", Run);

    private static void Run(TextWriter output)
    {
        // begin example
        var report = new SoilReport
        {
            Laboratory = "an invented laboratory",
            SoilClass = SoilClass.Mineral,
            Readings =
            [
                SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 40, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3),
                SoilReading.FromPrinted(SoilAnalyte.Potassium, 90, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3),
                SoilReading.FromPrinted(SoilAnalyte.Potassium, 95, SoilTestUnit.PartsPerMillion, Extractant.AmmoniumAcetate),
            ],
        };

        var answer = RecommendationSystem.NorthCarolina.Recommend(report, CropUse.Browsed(CropRow.DeerTurkeyPlot));
        foreach (var need in answer.Needs)
        {
            output.WriteLine(need);
            output.WriteLine($"  advice {Amounts.Print(need.PublishedLow, decimals: 1)} to {Amounts.Print(need.PublishedHigh, decimals: 1)}");
            output.WriteLine($"  {need.Rating}");
        }

        var soil = PlotSoil.For(report) with { ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(8) };
        var corn = CropUse.Browsed(CropRow.Corn, CropYield.FromBushelsPerAcre(80));
        var comparison = SystemComparison.For(soil, corn, [RecommendationSystem.TriState1995, RecommendationSystem.Kansas]);
        output.WriteLine(comparison.About(PlantNutrient.Potash));
        output.WriteLine(comparison.About(PlantNutrient.Potash)!.Why);
        // end example
    }
}
