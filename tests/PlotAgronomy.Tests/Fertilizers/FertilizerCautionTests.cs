using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using UnitsNet;
using static PlotAgronomy.Tests.Fertilizers.FertilizerShelfTests;

namespace PlotAgronomy.Tests.Fertilizers;

public class FertilizerCautionTests
{
    private static readonly Area Acre = Area.FromAcres(1);

    [Theory]
    [InlineData(null, true), InlineData(false, true), InlineData(true, false)]
    public void Urea_left_on_the_surface_is_remarked_on(bool? incorporated, bool expected) =>
        Assert.Equal(expected, Codes(Bag("46-0-0", 24), Need(40, 0, 0), new FieldConditions { IsIncorporated = incorporated }).Contains("fertilizer-surface-urea"));

    [Theory]
    [InlineData(199.9, false), InlineData(200, true), InlineData(200.1, true)]
    public void A_nitrogen_rate_out_of_range_is_a_warning(double rate, bool expected) =>
        Assert.Equal(expected, Codes(Bag("46-0-0", 24), Need(rate, 0, 0)).Contains("fertilizer-rate-high"));

    [Theory]
    [InlineData(149.9, false), InlineData(150, true), InlineData(150.1, true)]
    public void A_phosphate_rate_out_of_range_is_a_warning(double rate, bool expected) =>
        Assert.Equal(expected, Codes(Bag("0-46-0", 24), Need(0, rate, 0)).Contains("fertilizer-rate-high"));

    [Theory]
    [InlineData(299.9, false), InlineData(300, true), InlineData(300.1, true)]
    public void A_potash_rate_out_of_range_is_a_warning(double rate, bool expected) =>
        Assert.Equal(expected, Codes(Bag("0-0-60", 24), Need(0, 0, rate)).Contains("fertilizer-rate-high"));

    [Theory]
    [InlineData(99.9, false), InlineData(100, true), InlineData(100.1, true)]
    public void Much_nitrogen_is_split(double rate, bool expected) =>
        Assert.Equal(expected, Codes(Bag("46-0-0", 24), Need(rate, 0, 0)).Contains("fertilizer-split-nitrogen"));

    [Theory]
    [InlineData(2.9, false), InlineData(3, false), InlineData(3.1, true)]
    public void Boron_above_the_limit_is_a_warning(double rate, bool toxic)
    {
        var borate = Offer.InBags(FertilizerProduct.Create("borate", FertilizerAnalysis.FromGrade("0-0-0-14.8B"), FertilizerSubstance.Borate), Mass.FromPounds(50), 40);
        var codes = Codes(borate, PlotNeed.Stated(Target(PlantNutrient.Boron, rate)));
        Assert.Equal(toxic, codes.Contains("fertilizer-boron-toxic"));
        Assert.Equal(!toxic, codes.Contains("fertilizer-boron-narrow"));
    }

    [Fact]
    public void Phosphate_where_none_is_needed_is_a_warning()
    {
        var codes = Codes(Bag("10-10-10", 12), Need(30, 0, 0));
        Assert.Contains("fertilizer-phosphate-unneeded", codes);
        Assert.Contains("fertilizer-unneeded", codes);
        Assert.DoesNotContain("fertilizer-phosphate-unneeded", Codes(Bag("46-0-0", 24), Need(30, 0, 0)));
    }

    /// <summary>One grade for all: 19-19-19 at the rate of the P2O5 need brings as much N.</summary>
    [Theory]
    [InlineData(55, 60, false), InlineData(54.5, 60, true), InlineData(30, 60, true)]
    public void Nitrogen_above_its_need_is_remarked_on(double nitrogen, double phosphate, bool expected)
    {
        var shelf = FertilizerShelf.FromOffers(Bag("19-19-19", 28));
        Assert.Equal(expected, Over(shelf.Cheapest(Need(nitrogen, phosphate, phosphate), Acre)));
        Assert.False(Over(shelf.Cheapest(Need(nitrogen, phosphate, phosphate, mostNitrogen: 60), Acre)));
        static bool Over(Purchase plan) => plan.Findings.Any(f => f.Code == "fertilizer-nitrogen-over");
    }

    [Theory]
    [InlineData(100, 1, false), InlineData(100, 1.01, true), InlineData(99.9, 5, false), InlineData(100, 5, true)]
    public void A_large_need_on_a_field_is_asked_about(double rate, double acres, bool expected)
    {
        var question = FertilizerShelf.FromOffers(Bag("0-46-0", 36)).Cheapest(Need(0, rate, 0), Area.FromAcres(acres)).Findings.Where(f => f.Code == "fertilizer-per-acre");
        Assert.Equal(expected, question.Any(f => f.Text.Contains($"P2O5 {100 * acres:0} lb", StringComparison.Ordinal)));
    }

    [Fact]
    public void Ammonium_nitrate_comes_with_its_rules() => Assert.Contains("fertilizer-ammonium-nitrate", Codes(Bag("34-0-0", 24), Need(30, 0, 0)));

    [Fact]
    public void Fertilizer_at_the_seed_is_a_warning()
    {
        var atSeed = new FieldConditions { TouchesSeed = true, TouchesInoculatedSeed = true };
        var codes = Codes(Bag("0-0-60", 24), Need(0, 0, 40), atSeed);
        Assert.Contains("fertilizer-seed-contact", codes);
        Assert.Contains("fertilizer-inoculant-contact", codes);
        Assert.DoesNotContain("fertilizer-seed-contact", Codes(Bag("0-0-60", 24), Need(0, 0, 40)));
        var borate = Offer.InBags(FertilizerProduct.Create("borate", FertilizerAnalysis.FromGrade("0-0-0-14.8B"), FertilizerSubstance.Borate), Mass.FromPounds(50), 40);
        Assert.Contains("fertilizer-boron-with-seed", Codes(borate, PlotNeed.Stated(Target(PlantNutrient.Boron, 1)), atSeed));
    }

    [Fact]
    public void Water_and_weather_are_named_unless_no_water_is_near()
    {
        Assert.Contains("fertilizer-water-and-weather", Codes(Bag("0-0-60", 24), Need(0, 0, 40)));
        Assert.DoesNotContain("fertilizer-water-and-weather", Codes(Bag("0-0-60", 24), Need(0, 0, 40), new FieldConditions { IsNearWater = false }));
    }

    [Theory]
    [InlineData(0.24, true), InlineData(0.25, false), InlineData(0.26, false)]
    public void A_small_plot_is_told_to_weigh(double acres, bool expected) =>
        Assert.Equal(expected, FertilizerShelf.FromOffers(Bag("13-13-13", 19)).Cheapest(Need(40, 40, 40), Area.FromAcres(acres), PurchaseForm.SpreadWholePackages).Findings.Any(f => f.Code == "fertilizer-small-plot"));

    [Fact]
    public void Emptying_whole_packages_says_what_it_overshoots()
    {
        var plan = FertilizerShelf.FromOffers(Bag("13-13-13", 19)).Cheapest(Need(40, 40, 40), Area.FromAcres(0.25), PurchaseForm.SpreadWholePackages);
        Assert.Equal(3, plan.Findings.Count(f => f.Code == "fertilizer-whole-packages-over" && f.Text.Contains("30 %", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("46-0-0", "34-0-0", "fertilizer-mix-never")]
    [InlineData("46-0-0", "0-46-0", "fertilizer-mix-never")]
    [InlineData("46-0-0", "0-0-60", "fertilizer-mix-same-day")]
    public void What_must_not_share_a_hopper_is_named(string first, string second, string code)
    {
        var findings = MixCompatibility.Cautions([Bag(first, 1).Item.Substance, Bag(second, 1).Item.Substance]);
        Assert.Contains(findings, f => f.Code == code);
        Assert.Equal(MixCompatibility.Between(Bag(second, 1).Item.Substance, Bag(first, 1).Item.Substance), MixCompatibility.Between(Bag(first, 1).Item.Substance, Bag(second, 1).Item.Substance));
    }

    [Fact]
    public void A_mixing_rule_from_memory_carries_its_caution()
    {
        Assert.Contains(MixCompatibility.Cautions([FertilizerSubstance.Urea, FertilizerSubstance.AmmoniumNitrate]), f => f.Code == "data-from-memory");
        Assert.DoesNotContain(MixCompatibility.Cautions([FertilizerSubstance.Urea, FertilizerSubstance.TripleSuperphosphate]), f => f.Code == "data-from-memory");
        Assert.Empty(MixCompatibility.Cautions([FertilizerSubstance.DiammoniumPhosphate, FertilizerSubstance.PotassiumChloride]));
        Assert.Null(MixCompatibility.Between(FertilizerSubstance.Borate, FertilizerSubstance.Gypsum));
    }

    private static HashSet<string> Codes(Offer<FertilizerProduct> product, PlotNeed need, FieldConditions? field = null) =>
        [.. FertilizerShelf.FromOffers(product).Cheapest(need, Acre, field: field).Findings.Select(f => f.Code)];
}
