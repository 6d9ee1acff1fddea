using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Fertilizers.FertilizerShelfTests;

namespace PlotAgronomy.Tests.Fertilizers;

public class FertilizerRoundingTests
{
    [Theory]
    [InlineData(9, true), InlineData(10, true), InlineData(11, true), InlineData(8.9, false), InlineData(11.1, false), InlineData(0, false)]
    public void Ten_percent_either_way_counts_as_met(double packages, bool expected)
    {
        var amount = RoundedAmount.ForPackages(Bag("10-10-10", 12), packages, Need(50, 50, 50), Area.FromAcres(1));
        Assert.Equal(expected, amount.IsWithinTolerance);
    }

    [Theory]
    [InlineData(11, false), InlineData(11.01, true)]
    public void Nitrogen_above_the_tolerance_is_remarked_on(double packages, bool expected) =>
        Assert.Equal(expected, RoundedAmount.ForPackages(Bag("10-10-10", 12), packages, Need(50, 50, 50), Area.FromAcres(1)).Findings.Any(f => f.Code == "fertilizer-nitrogen-over"));

    [Theory]
    [InlineData(8, false), InlineData(7.99, true), InlineData(0, true)]
    public void A_shortage_beyond_the_tolerance_is_remarked_on(double packages, bool expected) =>
        Assert.Equal(expected, RoundedAmount.ForPackages(Bag("10-10-10", 12), packages, Need(50, 50, 50), Area.FromAcres(1)).Findings.Any(f => f.Code == "fertilizer-short"));

    [Fact]
    public void A_need_the_product_does_not_serve_is_left_to_others()
    {
        var urea = RoundedAmount.ForPackages(Bag("46-0-0", 24), 2, Need(46, 50, 0), Area.FromAcres(1));
        Assert.True(urea.IsWithinTolerance);
        Assert.DoesNotContain(urea.Findings, f => f.Code == "fertilizer-short");
    }

    [Fact]
    public void The_tolerance_can_be_ones_own()
    {
        var strict = RoundingTolerance.FromPercent(2, 2, 5);
        Assert.False(RoundedAmount.ForPackages(Bag("10-10-10", 12), 11, Need(50, 50, 50), Area.FromAcres(1), strict).IsWithinTolerance);
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundingTolerance.FromPercent(-1, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundingTolerance.FromPercent(0, -1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundingTolerance.FromPercent(0, 0, double.NaN));
    }

    [Fact]
    public void Exact_nearest_and_rounded_up_stand_side_by_side()
    {
        // 307.69 lb/ac on 0.4 ac is 123.08 lb, 2.46 bags.
        var need = Need(40, 40, 40);
        var amounts = RoundedAmounts.For(Bag("13-13-13", 19), SingleProductRate.MeetingAll(FertilizerAnalysis.FromGrade("13-13-13"), need).Rate, need, Area.FromAcres(0.4));
        Assert.Equal(2, amounts.Nearest.Packages);
        Assert.Equal(3, amounts.RoundedUp.Packages);
        Near.Assert(100, amounts.Exact.PercentOfNeed(PlantNutrient.Phosphate)!.Value, 1e-9);
        Near.Assert(100 * 100 * 0.13 / 16, amounts.Nearest.PercentOfNeed(PlantNutrient.Phosphate)!.Value, 1e-9);
        Assert.Equal(4, amounts.ShowWork().Length);
    }

    /// <summary>Constructed examples of a second implementation: never-over rate and its top-ups.</summary>
    [Theory]
    [InlineData("13-13-13", 60, 40, 80, 307.69, 43.48, 66.67, PlantNutrient.Phosphate)]
    [InlineData("6-24-24", 40, 80, 100, 333.33, 43.48, 33.33, PlantNutrient.Phosphate)]
    public void A_complete_grade_goes_as_far_as_no_need_is_passed(string grade, double n, double p, double k, double rate, double urea, double potash, PlantNutrient setBy)
    {
        var never = SingleProductRate.PassingNone(FertilizerAnalysis.FromGrade(grade), Need(n, p, k));
        Assert.Equal(rate, never.Rate.PoundsPerAcre, 0.005);
        Assert.Equal(setBy, never.SetBy);
        Assert.Equal(urea, FertilizerAnalysis.FromGrade("46-0-0").RateFor(PlantNutrient.Nitrogen, never.Balances[0].Missing).PoundsPerAcre, 0.005);
        Assert.Equal(potash, FertilizerAnalysis.FromGrade("0-0-60").RateFor(PlantNutrient.Potash, never.Balances[2].Missing).PoundsPerAcre, 0.005);
    }

    [Fact]
    public void Meeting_all_needs_overshoots_the_others()
    {
        var all = SingleProductRate.MeetingAll(FertilizerAnalysis.FromGrade("6-24-24"), Need(40, 80, 100));
        Assert.Equal(666.67, all.Rate.PoundsPerAcre, 0.005);
        Assert.Equal(160, all.Balances[1].Delivered.PoundsPerAcre, 0.005);
        Assert.Contains(all.ShowWork(), l => l.Numbers.Contains("416.67 lb/ac", StringComparison.Ordinal));
    }

    [Fact]
    public void A_cap_of_zero_allows_none_of_a_grade_that_holds_the_nutrient()
    {
        Assert.Equal(0, SingleProductRate.PassingNone(FertilizerAnalysis.FromGrade("13-13-13"), Need(0, 40, 40, mostNitrogen: 0)).Rate.PoundsPerAcre);
        Assert.Equal(10 / 0.13, SingleProductRate.PassingNone(FertilizerAnalysis.FromGrade("13-13-13"), Need(0, 40, 40, mostNitrogen: 10)).Rate.PoundsPerAcre, 9);
        Assert.Null(SingleProductRate.MeetingAll(FertilizerAnalysis.FromGrade("46-0-0"), Need(0, 40, 40)).SetBy);
    }

    [Fact]
    public void Prices_are_put_on_one_nutrient_or_on_what_is_left()
    {
        var urea = Bag("46-0-0", 24);
        Assert.Equal(24m / 23, urea.PricePerPoundOf(PlantNutrient.Nitrogen), 12);
        // DAP at 36: 9 lb N at 24/23 leave 26.6087 for 23 lb P2O5.
        Assert.Equal((36m - (9 * 24m / 23)) / 23, Bag("18-46-0", 36).PricePerPoundOf(PlantNutrient.Phosphate, (PlantNutrient.Nitrogen, 24m / 23)), 12);
        Assert.Throws<ArgumentException>(() => urea.PricePerPoundOf(PlantNutrient.Potash));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bag("18-46-0", 36).PricePerPoundOf(PlantNutrient.Phosphate, (PlantNutrient.Nitrogen, -1m)));
    }

    [Fact]
    public void Residual_pricing_is_the_dual_of_the_exact_plan()
    {
        var shelf = FertilizerShelf.FromOffers(Bag("46-0-0", 24), Bag("18-46-0", 36), Bag("0-0-60", 26), Bag("0-46-0", 45));
        var plan = shelf.Cheapest(Need(100, 60, 80), Area.FromAcres(1), PurchaseForm.WeighExact);
        decimal nitrogen = Bag("46-0-0", 24).PricePerPoundOf(PlantNutrient.Nitrogen);
        decimal phosphate = Bag("18-46-0", 36).PricePerPoundOf(PlantNutrient.Phosphate, (PlantNutrient.Nitrogen, nitrogen));
        Assert.Equal(nitrogen, plan.MarginalCosts[0].PerPoundNeeded, 9);
        Assert.Equal(phosphate, plan.MarginalCosts[1].PerPoundNeeded, 9);
    }

    [Fact]
    public void A_kitchen_scale_shows_pounds_and_ounces()
    {
        Assert.Equal("2 lb 5 oz", PoundsAndOunces.Nearest(Mass.FromPounds(2.2957)).ToString());
        Assert.Equal("1 lb 0 oz", PoundsAndOunces.Nearest(Mass.FromPounds(0.96875)).ToString());
        Assert.Equal(default, PoundsAndOunces.Nearest(Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => PoundsAndOunces.Nearest(Mass.FromPounds(-1)));
    }

    [Theory]
    [InlineData(-1), InlineData(double.NaN), InlineData(double.PositiveInfinity)]
    public void Impossible_packages_are_refused(double packages) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundedAmount.ForPackages(Bag("13-13-13", 19), packages, Need(1, 1, 1), Area.FromAcres(1)));
}
