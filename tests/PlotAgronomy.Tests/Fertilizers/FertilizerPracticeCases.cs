using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Fertilizers.FertilizerShelfTests;

namespace PlotAgronomy.Tests.Fertilizers;

public class FertilizerPracticeCases
{
    [Fact]
    public void C25_rate_of_a_balanced_grade_on_an_acre_and_on_a_quarter()
    {
        var product = Bag("13-13-13", 19);
        var need = Need(40, 40, 40);
        var rate = SingleProductRate.MeetingAll(product.Item.Analysis, need).Rate;
        PracticeCase.AssertMatches("C25", "rate", rate.PoundsPerAcre);
        var acre = RoundedAmounts.For(product, rate, need, Area.FromAcres(1));
        PracticeCase.AssertMatches("C25", "bags for 1 acre", acre.RoundedUp.Packages);
        PracticeCase.AssertMatches("C25", "delivered by 7 bags", acre.RoundedUp.Balances[0].Delivered.PoundsPerAcre);
        var quarter = RoundedAmounts.For(product, rate, need, Area.FromAcres(0.25));
        PracticeCase.AssertMatches("C25", "0.25 acre", quarter.Exact.Spread.Pounds);
        PracticeCase.AssertMatches("C25", "bags for 0.25 acre", quarter.RoundedUp.Packages);
        PracticeCase.AssertMatches("C25", "delivered by 2 bags on 0.25 acre", quarter.RoundedUp.Balances[2].Delivered.PoundsPerAcre);
        var warning = Assert.Single(quarter.Findings, f => f.Code == "fertilizer-weigh-out");
        Assert.Contains("77 lb", warning.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(acre.Findings, f => f.Code == "fertilizer-weigh-out");
    }

    [Fact]
    public void C27_what_was_bought_and_what_went_on()
    {
        var product = Bag("15-0-15", 20);
        var need = Need(120, 0, 120);
        var area = Area.FromAcres(1 / 3.0);
        var amounts = RoundedAmounts.For(product, SingleProductRate.MeetingAll(product.Item.Analysis, need).Rate, need, area);
        PracticeCase.AssertMatches("C27", "product", amounts.Exact.Spread.Pounds);
        PracticeCase.AssertMatches("C27", "bags to buy", amounts.RoundedUp.Packages);
        var spread = RoundedAmount.ForPackages(product, 5, need, area);
        PracticeCase.AssertMatches("C27", "delivered by 5 bags", spread.Balances[0].Delivered.PoundsPerAcre);
        PracticeCase.AssertMatches("C27", "share of need", spread.PercentOfNeed(PlantNutrient.Potash)!.Value);
        Assert.Contains(spread.Findings, f => f.Code == "fertilizer-split-nitrogen");
    }

    [Fact]
    public void C29_straights_for_a_field_and_how_far_a_balanced_grade_goes()
    {
        var shelf = FertilizerShelf.FromOffers(Bag("18-46-0", 36), Bag("46-0-0", 24), Bag("0-0-60", 26));
        var need = Need(100, 110, 75);
        var acre = shelf.Cheapest(need, Area.FromAcres(1), PurchaseForm.WeighExact);
        PracticeCase.AssertMatches("C29", "DAP", acre.Line("18-46-0")!.Rate.PoundsPerAcre);
        PracticeCase.AssertMatches("C29", "N credit", FertilizerAnalysis.FromGrade("18-46-0").Brings(PlantNutrient.Nitrogen, acre.Line("18-46-0")!.Rate).PoundsPerAcre);
        PracticeCase.AssertMatches("C29", "urea", acre.Line("46-0-0")!.Rate.PoundsPerAcre);
        PracticeCase.AssertMatches("C29", "potash", acre.Line("0-0-60")!.Rate.PoundsPerAcre);
        var field = shelf.Cheapest(need, Area.FromAcres(5));
        PracticeCase.AssertMatches("C29", "DAP 5 acres", field.Line("18-46-0")!.Packages);
        PracticeCase.AssertMatches("C29", "urea 5 acres", field.Line("46-0-0")!.Packages);
        PracticeCase.AssertMatches("C29", "potash 5 acres", field.Line("0-0-60")!.Packages);
        var balanced = SingleProductRate.PassingNone(FertilizerAnalysis.FromGrade("19-19-19"), need);
        PracticeCase.AssertMatches("C29", "19-19-19 never-over", balanced.Rate.PoundsPerAcre);
        Assert.Equal(PlantNutrient.Potash, balanced.SetBy);
        Assert.Contains(field.Findings, f => f.Code == "fertilizer-split-nitrogen");
        var question = Assert.Single(field.Findings, f => f.Code == "fertilizer-per-acre");
        Assert.Contains("N 100 lb/ac, P2O5 110 lb/ac", question.Text, StringComparison.Ordinal);
        Assert.Contains("N 500 lb, P2O5 550 lb", question.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void C31_a_bag_on_a_small_plot_without_a_soil_test()
    {
        var need = PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 0));
        var spread = RoundedAmount.ForPackages(Bag("15-15-15", 25), 2, need, Area.FromAcres(0.25));
        PracticeCase.AssertMatches("C31", "product", spread.Rate.PoundsPerAcre);
        PracticeCase.AssertMatches("C31", "N", spread.Balances[0].Delivered.PoundsPerAcre);
        PracticeCase.AssertMatches("C31", "P2O5", spread.Balances[1].Delivered.PoundsPerAcre);
        PracticeCase.AssertMatches("C31", "K2O", spread.Balances[2].Delivered.PoundsPerAcre);
        var findings = spread.Judge(new FieldConditions { HasSoilTest = false, IsLegumeStand = true });
        Assert.Contains(findings, f => f.Code == "fertilizer-no-soil-test");
        Assert.Contains(findings, f => f.Code == "fertilizer-nitrogen-on-legume");
    }

    [Fact]
    public void C33_a_balanced_grade_for_one_nutrient()
    {
        var need = Need(200, 0, 0);
        var balanced = SingleProductRate.MeetingAll(FertilizerAnalysis.FromGrade("10-10-10"), need);
        PracticeCase.AssertMatches("C33", "10-10-10", balanced.Rate.PoundsPerAcre);
        PracticeCase.AssertMatches("C33", "unneeded P2O5", balanced.Balances[1].Surplus.PoundsPerAcre);
        PracticeCase.AssertMatches("C33", "unneeded K2O", balanced.Balances[2].Surplus.PoundsPerAcre);
        PracticeCase.AssertMatches("C33", "urea", SingleProductRate.MeetingAll(FertilizerAnalysis.FromGrade("46-0-0"), need).Rate.PoundsPerAcre);
        Assert.Equal(2, balanced.Findings.Count(f => f.Code == "fertilizer-rate-high"));
        Assert.Equal(2, balanced.Findings.Count(f => f.Code == "fertilizer-unneeded"));
        Assert.Contains(balanced.Findings, f => f.Code == "fertilizer-split-nitrogen");
    }

    [Fact]
    public void C35_nitrogen_on_clover_and_the_grade_without_it()
    {
        var need = PlotNeed.Stated(Target(PlantNutrient.Phosphate, 40), Target(PlantNutrient.Potash, 40));
        var clover = new FieldConditions { IsLegumeStand = true };
        var area = Area.FromAcres(0.5);
        var balanced = FertilizerShelf.FromOffers(Bag("10-20-20", 24)).Cheapest(need, area, field: clover);
        PracticeCase.AssertMatches("C35", "product", balanced.Lines[0].Spread.Pounds);
        PracticeCase.AssertMatches("C35", "bags", balanced.Lines[0].Packages);
        PracticeCase.AssertMatches("C35", "N added by 10-20-20", balanced.Balance(PlantNutrient.Nitrogen)!.Delivered.PoundsPerAcre);
        var warning = Assert.Single(balanced.Findings, f => f.Code == "fertilizer-nitrogen-on-legume");
        Assert.Contains("20 lb/ac", warning.Text, StringComparison.Ordinal);

        var capped = PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 0, 10), Target(PlantNutrient.Phosphate, 40), Target(PlantNutrient.Potash, 40));
        var without = FertilizerShelf.FromOffers(Bag("10-20-20", 24), Bag("0-20-20", 27)).Cheapest(capped, area, field: clover);
        Assert.True(without.Balance(PlantNutrient.Nitrogen)!.Delivered.PoundsPerAcre <= 10 + 1e-9);
        Assert.NotNull(without.Line("0-20-20"));
    }
}
