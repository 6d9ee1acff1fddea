using System.Globalization;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>Whole plans against answers of a second solver.</summary>
public class FertilizerWorkedPlans
{
    private const string File = "Fertilizers/worked-plans.csv";

    public static TheoryData<string> Ids => WorkedExamples.Ids(File);

    [Theory, MemberData(nameof(Ids))]
    public void Matches_the_second_solver(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var form = row.Choice<PurchaseForm>("form");
        var shelf = FertilizerShelf.FromOffers([.. row.Text("shelf").Split(';').Select(item => Product(item, row.Number("package_lb")))]);
        var need = FertilizerShelfTests.Need(row.Number("need_n"), row.Number("need_p"), row.Number("need_k"), row.NumberOrNull("cap_n"), row.NumberOrNull("cap_p"), row.NumberOrNull("cap_k"));
        var area = Area.FromAcres(row.Number("area_ac"));
        string[] asked = row.Text("quantity").Split(':');
        bool next = asked[0].StartsWith("next", StringComparison.Ordinal);
        var plan = next ? shelf.NextCheapest(need, area, form)! : shelf.Cheapest(need, area, form);
        Assert.True(plan.MeetsEveryNeed && plan.IsProvenCheapest);
        WorkedExamples.AssertMatches(row, Value(plan, next ? [asked[0]["next-".Length..], .. asked[1..]] : asked));
    }

    private static double Value(Purchase plan, string[] asked) => asked[0] switch
    {
        "cost" => (double)plan.TotalCost,
        "packages" => plan.Line(asked[1])!.Packages,
        "spread" => plan.Line(asked[1])!.Spread.Pounds,
        "delivered" => plan.Balance(Enum.Parse<PlantNutrient>(asked[1], ignoreCase: true))!.Delivered.PoundsPerAcre,
        "over" => plan.Balance(Enum.Parse<PlantNutrient>(asked[1], ignoreCase: true))!.PercentOfNeed!.Value - 100,
        _ => (double)plan.MarginalCosts.Single(m => m.Nutrient == Enum.Parse<PlantNutrient>(asked[1], ignoreCase: true)).PerPoundNeeded,
    };

    private static Offer<FertilizerProduct> Product(string item, double pounds)
    {
        string[] parts = item.Split('@');
        return FertilizerShelfTests.Bag(parts[0], decimal.Parse(parts[1], CultureInfo.InvariantCulture), pounds);
    }
}
