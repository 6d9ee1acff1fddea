using System.Globalization;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

public class FertilizerDocExample
{
    [Fact]
    public void The_example_on_the_page_runs() =>
        DocExample.AssertCurrent("docs/fertilizers.md", "tests/PlotAgronomy.Tests/Fertilizers/FertilizerDocExample.cs", Example);

    [Fact]
    public void The_page_names_every_caution_of_the_room()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/fertilizers.md"));
        Assert.Empty(FindingCatalog.Codes.Where(c => c.StartsWith("fertilizer-", StringComparison.Ordinal) && !page.Contains($"`{c}`", StringComparison.Ordinal)));
    }

    private static void Example(TextWriter output)
    {
        // begin example
        var shelf = FertilizerShelf.FromOffers(
            Offer.InBags(FertilizerProduct.Create("triple superphosphate", FertilizerAnalysis.FromGrade("0-46-0")), Mass.FromPounds(50), 33),
            Offer.InBags(FertilizerProduct.Create("potash", FertilizerAnalysis.FromGrade("0-0-60")), Mass.FromPounds(50), 26),
            Offer.InBags(FertilizerProduct.Create("balanced", FertilizerAnalysis.FromGrade("13-13-13")), Mass.FromPounds(50), 19));

        // A clover stand: phosphate and potash are needed, nitrogen is capped.
        var need = PlotNeed.Stated(
            NutrientTarget.Create(PlantNutrient.Nitrogen, ApplicationRate.Zero, ApplicationRate.FromPoundsPerAcre(10), "legumes need none"),
            NutrientTarget.Create(PlantNutrient.Phosphate, ApplicationRate.FromPoundsPerAcre(60), null, "soil test low"),
            NutrientTarget.Create(PlantNutrient.Potash, ApplicationRate.FromPoundsPerAcre(90), null, "soil test low"));

        Purchase plan = shelf.Cheapest(need, Area.FromAcres(0.6));
        foreach (var line in plan.ShowWork())
        {
            output.WriteLine(line);
        }

        foreach (var cost in plan.MarginalCosts)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"One more lb of {cost.Nutrient}: {cost.PerPoundNeeded:0.00}"));
        }
        // end example
    }
}
