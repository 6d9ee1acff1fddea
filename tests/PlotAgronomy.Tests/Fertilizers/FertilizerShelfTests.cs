using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

public class FertilizerShelfTests
{
    private static readonly Area Acre = Area.FromAcres(1);

    internal static Offer<FertilizerProduct> Bag(string grade, decimal price, double pounds = 50) =>
        Offer.InBags(FertilizerProduct.Create(grade, FertilizerAnalysis.FromGrade(grade)), Mass.FromPounds(pounds), price);

    internal static PlotNeed Need(
        double nitrogen,
        double phosphate,
        double potash,
        double? mostNitrogen = null,
        double? mostPhosphate = null,
        double? mostPotash = null
    ) =>
        PlotNeed.Stated(
            Target(PlantNutrient.Nitrogen, nitrogen, mostNitrogen),
            Target(PlantNutrient.Phosphate, phosphate, mostPhosphate),
            Target(PlantNutrient.Potash, potash, mostPotash)
        );

    internal static NutrientTarget Target(PlantNutrient nutrient, double atLeast, double? atMost = null) =>
        NutrientTarget.Create(
            nutrient,
            ApplicationRate.FromPoundsPerAcre(atLeast),
            atMost is { } most ? ApplicationRate.FromPoundsPerAcre(most) : null,
            "stated"
        );

    [Fact]
    public void By_default_whole_packages_are_bought_and_the_exact_weight_is_spread()
    {
        var plan = FertilizerShelf
            .FromOffers(Bag("46-0-0", 24), Bag("0-0-60", 26))
            .Cheapest(Need(46, 0, 60), Area.FromAcres(0.6));
        Assert.Equal(PurchaseForm.BuyWholePackages, plan.Form);
        var urea = plan.Line("46-0-0")!;
        Assert.Equal(2, urea.Packages);
        Near.Assert(60, urea.Spread.Pounds, 1e-9);
        Near.Assert(40, urea.Leftover.Pounds, 1e-9);
        Near.Assert(100, plan.Balance(PlantNutrient.Nitrogen)!.PercentOfNeed!.Value, 1e-9);
        Assert.Equal(100m, plan.TotalCost);
    }

    [Fact]
    public void A_cap_binds_what_is_spread_not_what_is_bought()
    {
        // One 50 lb bag holds 23 lb N, more than the cap of 20 lb; 18 lb is needed.
        var need = PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 18, 20));
        var shelf = FertilizerShelf.FromOffers(Bag("46-0-0", 24));
        Assert.True(shelf.Cheapest(need, Acre).MeetsEveryNeed);
        var whole = shelf.Cheapest(need, Acre, PurchaseForm.SpreadWholePackages);
        Assert.False(whole.MeetsEveryNeed);
        Assert.Equal([PlantNutrient.Nitrogen], whole.Conflict!.Needs);
        Assert.Equal([PlantNutrient.Nitrogen], whole.Conflict.Caps);
        Assert.Empty(whole.Lines);
    }

    [Fact]
    public void A_legume_cap_turns_the_balanced_grade_away_and_the_remedy_is_named()
    {
        var need = Need(0, 60, 90, mostNitrogen: 10);
        var plan = FertilizerShelf.FromOffers(Bag("13-13-13", 19), Bag("0-0-60", 26)).Cheapest(need, Acre);
        Assert.False(plan.MeetsEveryNeed);
        Assert.Equal([PlantNutrient.Phosphate], plan.Conflict!.Needs);
        Assert.Equal([PlantNutrient.Nitrogen], plan.Conflict.Caps);
        // 10 lb N at most is 76.9 lb of 13-13-13, so 10 of the 60 lb P2O5; the potash is met by 0-0-60.
        Near.Assert(10, plan.Balance(PlantNutrient.Phosphate)!.Delivered.PoundsPerAcre, 1e-6);
        Near.Assert(90, plan.Balance(PlantNutrient.Potash)!.Delivered.PoundsPerAcre, 1e-6);
        var finding = Assert.Single(plan.Findings, f => f.Code == "fertilizer-no-set-fits");
        Assert.Equal(FindingSeverity.Warning, finding.Severity);
        Assert.Contains("phosphate cannot be met within the cap on nitrogen", finding.Text, StringComparison.Ordinal);
        var remedy = plan.Conflict.Remedy!;
        var longer = FertilizerShelf.FromOffers(Bag("13-13-13", 19), Bag("0-0-60", 26), Offer.InBags(FertilizerProduct.FromMaterial(remedy), Mass.FromPounds(50), 33));
        Assert.True(longer.Cheapest(need, Acre).MeetsEveryNeed);
    }

    [Fact]
    public void A_shelf_without_the_nutrient_says_so()
    {
        var plan = FertilizerShelf.FromOffers(Bag("46-0-0", 24)).Cheapest(Need(40, 0, 60), Acre);
        Assert.Equal([PlantNutrient.Potash], plan.Conflict!.Needs);
        Assert.Empty(plan.Conflict.Caps);
        Assert.Equal("potash cannot be met from this shelf", plan.Conflict.ToString());
        Assert.Equal(FertilizerSubstance.PotassiumChloride, plan.Conflict.Remedy!.Substance);
        Near.Assert(40, plan.Balance(PlantNutrient.Nitrogen)!.Delivered.PoundsPerAcre, 1e-6);
    }

    [Fact]
    public void Nothing_needed_costs_nothing()
    {
        var plan = FertilizerShelf.FromOffers(Bag("46-0-0", 24)).Cheapest(Need(0, 0, 0), Acre);
        Assert.Empty(plan.Lines);
        Assert.Equal(0m, plan.TotalCost);
        Assert.True(plan.MeetsEveryNeed);
    }

    [Fact]
    public void A_free_product_is_used_and_money_stays_exact()
    {
        var plan = FertilizerShelf.FromOffers(Bag("10-10-10", 0), Bag("46-0-0", 23.99m)).Cheapest(Need(46, 20, 20), Acre);
        // 46 lb N at 5 lb a package are 9.2 packages that cost nothing.
        Assert.Equal(10, Assert.Single(plan.Lines).Packages);
        Assert.Equal(0m, plan.TotalCost);
        var priced = FertilizerShelf.FromOffers(Bag("46-0-0", 23.99m)).Cheapest(Need(69, 0, 0), Acre);
        Assert.Equal(71.97m, priced.TotalCost);
    }

    [Fact]
    public void Runners_up_show_the_next_cheapest_and_the_fewest_products()
    {
        var shelf = FertilizerShelf.FromOffers(
            Bag("46-0-0", 24),
            Bag("18-46-0", 36),
            Bag("0-0-60", 26),
            Bag("13-13-13", 19),
            Bag("19-19-19", 27)
        );
        var need = Need(60, 60, 80);
        var area = Area.FromAcres(0.75);
        Assert.Null(shelf.NextCheapest(need, area, PurchaseForm.WeighExact));
        var fewest = shelf.FewestProducts(need, area, PurchaseForm.SpreadWholePackages)!;
        Assert.Single(fewest.Lines);
        // 60 lb K2O decides: ten bags of 13-13-13 at 19, or seven of 19-19-19 at 27.
        Assert.Equal(189m, fewest.TotalCost);
    }

    [Fact]
    public void Showing_the_work_names_needs_products_and_the_proof()
    {
        var lines = FertilizerShelf
            .FromOffers(Bag("0-46-0", 33), Bag("0-0-60", 26))
            .Cheapest(Need(0, 60, 90), Area.FromAcres(0.6))
            .ShowWork();
        Assert.Contains(lines, l => l.Numbers == "60 lb/ac x 0.6 ac = 36 lb");
        Assert.Contains(lines, l =>
            l.Numbers.StartsWith("2 x 33 = 66.00; spread 78.26 lb (130.43 lb/ac), 21.74 lb left", StringComparison.Ordinal)
        );
        Assert.Contains(lines, l => l.Numbers.Contains("no cheaper set exists", StringComparison.Ordinal));
    }

    [Fact]
    public void A_nutrient_that_two_products_bring_is_shown_product_by_product()
    {
        var plan = FertilizerShelf
            .FromOffers(Bag("46-0-0", 24), Bag("18-46-0", 36))
            .Cheapest(Need(60, 46, 0), Area.FromAcres(1), PurchaseForm.WeighExact);
        var lines = plan.ShowWork();
        // 100 lb of 18-46-0 bring the phosphate and 18 lb of nitrogen; 46-0-0 brings the other 42 lb.
        Assert.Equal(
            ["100 lb x 18 / 100 = 18 lb", "91.3 lb x 46 / 100 = 42 lb"],
            lines.Where(l => l.Label.StartsWith("N in ", StringComparison.Ordinal)).Select(l => l.Numbers)
        );
        Assert.DoesNotContain(lines, l => l.Label.StartsWith("P2O5 in ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, 1), InlineData(-1, 1), InlineData(1, 0)]
    public void Impossible_input_is_refused(double acres, int searchLimit)
    {
        var shelf = FertilizerShelf.FromOffers(Bag("46-0-0", 24));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            shelf.Cheapest(Need(1, 0, 0), Area.FromAcres(acres), searchLimit: searchLimit)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => shelf.Cheapest(Need(1, 0, 0), Acre, (PurchaseForm)9));
        Assert.Throws<ArgumentException>(() => FertilizerShelf.FromOffers());
    }

    [Fact]
    public void A_stopped_search_says_how_far_it_may_be_off()
    {
        var shelf = FertilizerShelf.FromOffers(
            Bag("46-0-0", 23.99m),
            Bag("18-46-0", 36.49m),
            Bag("0-0-60", 26.79m),
            Bag("13-13-13", 19.29m),
            Bag("19-19-19", 27.19m),
            Bag("6-24-24", 30.49m)
        );
        var plan = shelf.Cheapest(Need(63, 47, 81), Area.FromAcres(1.3), PurchaseForm.BuyWholePackages, searchLimit: 1);
        var proven = shelf.Cheapest(Need(63, 47, 81), Area.FromAcres(1.3));
        Assert.False(plan.IsProvenCheapest);
        Assert.True(plan.ProvenGap > 0 && plan.TotalCost - plan.ProvenGap <= proven.TotalCost);
        Assert.Contains(plan.Findings, f => f.Code == "fertilizer-search-stopped");
        Assert.DoesNotContain(proven.Findings, f => f.Code == "fertilizer-search-stopped");
    }

    [Theory]
    [InlineData(50, 1), InlineData(50.0000001, 1), InlineData(50.001, 2), InlineData(0.000001, 1), InlineData(0, 0)]
    public void A_hair_of_arithmetic_buys_no_package_and_a_trace_does(double potashPounds, int packages)
    {
        foreach (var form in new[] { PurchaseForm.BuyWholePackages, PurchaseForm.SpreadWholePackages })
        {
            var plan = FertilizerShelf
                .FromOffers(Bag("0-0-50", 30, 100), Bag("46-0-0", 24))
                .Cheapest(Need(0, 0, potashPounds), Acre, form);
            Assert.Equal(packages, plan.Line("0-0-50")?.Packages ?? 0);
            Assert.True(plan.MeetsEveryNeed && plan.Conflict is null);
        }
    }

    [Fact]
    public void A_liquid_is_told_in_gallons()
    {
        var uan = FertilizerProduct
            .Liquid("uan", FertilizerAnalysis.FromGrade("28-0-0"), Density.FromPoundsPerUSGallon(10.67))
            .InJugs(Volume.FromUsGallons(2.5), 20);
        var line = FertilizerShelf.FromOffers(uan).Cheapest(Need(30, 0, 0), Area.FromAcres(0.4)).Lines[0];
        Assert.Equal(2, line.Packages);
        // 12 lb N at 2.9876 lb/gal
        Assert.Equal(4.0166, line.SpreadVolume!.Value.UsGallons, 4);
    }

    [Fact]
    public void What_is_sold_loose_is_only_weighed_exactly()
    {
        var shelf = FertilizerShelf.FromOffers(Offer.InBulk(FertilizerProduct.Create("urea", FertilizerAnalysis.FromGrade("46-0-0")), 500));
        Assert.Throws<ArgumentException>(() => shelf.Cheapest(Need(46, 0, 0), Acre));
        var plan = shelf.Cheapest(Need(46, 0, 0), Acre, PurchaseForm.WeighExact);
        Assert.Equal(100, plan.Lines[0].Spread.Pounds, 1e-9);
        Assert.Equal(25, (double)plan.TotalCost, 1e-9);
    }
}
