using System.Text;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.House;
using UnitsNet;
using static PlotAgronomy.Tests.Fertilizers.FertilizerShelfTests;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>docs/fertilizer-shelf.md: an invented rural store's shelf against twelve needs. Run with UPDATE_DOCS=1 to rewrite it.</summary>
public class FertilizerShelfPage
{
    private static readonly Currency Money = Currency.FromCode("USD");

    private static readonly Offer<FertilizerProduct>[] Products =
    [
        Product("urea", "46-0-0", 27.50m), Product("DAP", "18-46-0", 39m), Product("triple superphosphate", "0-46-0", 36.50m), Product("potash", "0-0-60", 28.50m),
        Product("garden 13", "13-13-13", 18.75m), Product("field 19", "19-19-19", 28m), Product("plot starter", "6-24-24", 32.50m), Product("ammonium sulfate", "21-0-0-24S", 22m, 40),
    ];

    private static readonly (string Name, double Acres, PlotNeed Need)[] Needs =
    [
        ("standing clover, low test", 0.6, Need(0, 60, 90, mostNitrogen: 10)),
        ("standing clover, high phosphorus", 0.5, Need(0, 0, 60, mostNitrogen: 10, mostPhosphate: 0)),
        ("turnip and rape", 0.5, Need(60, 40, 80)),
        ("rye and oats", 1.2, Need(40, 30, 40)),
        ("corn", 2, Need(100, 60, 80)),
        ("grain sorghum", 1.5, Need(80, 40, 60)),
        ("clover sown with oats", 0.75, Need(20, 60, 60, mostNitrogen: 30)),
        ("chicory", 0.4, Need(80, 50, 90)),
        ("potash only", 1, Need(0, 0, 120)),
        ("rape on sulfur-poor sand", 0.8, PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 60), Target(PlantNutrient.Phosphate, 30), Target(PlantNutrient.Potash, 60), Target(PlantNutrient.Sulfur, 15))),
        ("corner plot", 0.1, Need(40, 40, 40)),
        ("alfalfa with boron", 0.5, PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 0, 10), Target(PlantNutrient.Phosphate, 40), Target(PlantNutrient.Potash, 150), Target(PlantNutrient.Boron, 1.5, 3))),
    ];

    [Fact]
    public void The_page_of_the_store_shelf_is_current() => GeneratedDocsTests.AssertCurrent("docs/fertilizer-shelf.md", Page());

    private static string Page()
    {
        var shelf = FertilizerShelf.FromOffers(Products);
        var page = new StringBuilder("""
            # One shelf, twelve needs

            What the cheapest set of whole packages looks like on a shelf a rural store could have. Shelf, prices and needs are invented; this page is written by a test and kept current by it.

            Prices: 
            """.ReplaceLineEndings("\n"));
        page.AppendJoin("; ", Products.Select(p => $"{p.Item} {Amounts.Print(p.Package.Weight, decimals: 0)} {Money.Print(p.Price)}"));
        page.Append(".\n\nThe first cost is the default form: buy whole packages, spread the exact weight, keep the rest. Beside it the cost when every pound can be weighed, and when every package is emptied. *Next* is the next cheapest set, *fewest* how few different products can do it and what the cheapest such set costs, both in the default form.\n\n");
        page.Append("| plot | need N-P2O5-K2O, lb/ac | area | buy and spread | cost | weighed | emptied | next | fewest |\n|---|---|---|---|---|---|---|---|---|\n");
        foreach (var (name, acres, need) in Needs)
        {
            var area = Area.FromAcres(acres);
            var plan = shelf.Cheapest(need, area);
            page.Append($"| {name} | {Words(need)} | {Amounts.Print(area)} | {Lines(plan)} | {Cost(plan)} | {Cost(shelf.Cheapest(need, area, PurchaseForm.WeighExact))} | {Cost(shelf.Cheapest(need, area, PurchaseForm.SpreadWholePackages))} | {Cost(shelf.NextCheapest(need, area))} | {Fewest(shelf.FewestProducts(need, area))} |\n");
        }

        page.Append("\n## Remarks the plans carry\n\n");
        foreach (var (name, acres, need) in Needs)
        {
            var own = shelf.Cheapest(need, Area.FromAcres(acres)).Findings.Where(f => f.Severity != FindingSeverity.Note && f.Code != "fertilizer-surface-urea").ToList();
            page.Append($"- **{name}**: {(own.Count == 0 ? "none of its own" : string.Join(" ", own.Select(f => f.Text)))}\n");
        }

        page.Append("\nEvery plan with urea also carries the caution about urea left on the surface, and every plan the note on water and weather.\n");
        return page.ToString();
    }

    private static string Words(PlotNeed need) =>
        string.Join('-', new[] { PlantNutrient.Nitrogen, PlantNutrient.Phosphate, PlantNutrient.Potash }.Select(n => Amounts.Print(need.Find(n)!.AtLeast.PoundsPerAcre, 1)))
        + string.Concat(need.Targets.Where(t => (int)t.Nutrient > 2).Select(t => $", {t.Nutrient.ToString().ToLowerInvariant()} {Amounts.Print(t.AtLeast.PoundsPerAcre, 1)}"))
        + string.Concat(need.Targets.Where(t => t.AtMost is not null).Select(t => $"; {t.Nutrient.ToString().ToLowerInvariant()} at most {Amounts.Print(t.AtMost!.Value.PoundsPerAcre, 1)}"));

    private static string Lines(Purchase plan) =>
        string.Join("; ", plan.Lines.Select(l => $"{Amounts.Print(l.Packages, 0)} {l.Product.Name}, spread {Amounts.Print(l.Spread, decimals: 1)}")) + (plan.MeetsEveryNeed ? "" : " (falls short, see below)");

    private static string Cost(Purchase? plan) => plan is null ? "none" : Money.Print(plan.TotalCost) + (plan.MeetsEveryNeed ? "" : " (short)");

    private static string Fewest(Purchase? plan) => plan is null ? "none" : $"{plan.Lines.Length}: {Money.Print(plan.TotalCost)}";

    private static Offer<FertilizerProduct> Product(string name, string grade, decimal price, double pounds = 50) =>
        Offer.InBags(FertilizerProduct.Create(name, FertilizerAnalysis.FromGrade(grade)), Mass.FromPounds(pounds), price);
}
