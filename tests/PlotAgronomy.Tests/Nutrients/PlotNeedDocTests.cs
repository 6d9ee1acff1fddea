using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>The worked example of docs/plot-need.md.</summary>
public class PlotNeedDocTests
{
    [Fact]
    public void The_worked_example_of_the_page_is_what_the_code_writes() =>
        DocExample.AssertCurrent("docs/plot-need.md", "tests/PlotAgronomy.Tests/Nutrients/PlotNeedDocTests.cs", Example);

    private static void Example(TextWriter output)
    {
        // begin example
        var report = new SoilReport
        {
            Laboratory = "North Carolina",
            SoilClass = SoilClass.Mineral,
            WaterPh = WaterPh.FromValue(6.0),
            Readings =
            [
                SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 25, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3),
                SoilReading.FromPrinted(SoilAnalyte.Potassium, 15, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3),
            ],
        };
        var kinds = KindCatalog.Standard;
        var need = PlotNeed.For(new PlotNeedRequest
        {
            Soil = report,
            System = RecommendationSystem.NorthCarolina,
            Kinds =
            [
                KindShare.FromShare(kinds.Find("oats-winter"), 0.5),
                KindShare.FromShare(kinds.Find("rape-dwarf-essex"), 0.3),
                KindShare.FromShare(kinds.Find("crimson-clover"), 0.15),
            ],
            Printed = PrintedRecommendation.FromRates("North Carolina", "deer and turkey plot",
                PrintedRate.FromRate(PlantNutrient.Potash, ApplicationRate.FromPoundsPerAcre(110))),
        });

        foreach (var line in need.ShowWork())
        {
            output.WriteLine(line);
        }

        foreach (var dose in need.NitrogenDoses)
        {
            output.WriteLine($"{Amounts.Print(dose.Low)} to {Amounts.Print(dose.High)} {dose.When}");
        }

        foreach (var finding in need.Findings)
        {
            output.WriteLine(finding);
        }
        // end example
    }
}
