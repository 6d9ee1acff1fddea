using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Fertilizers.FertilizerShelfTests;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>What a straight salt must hold although its label is silent. Atomic masses: K2O as KCl comes with 0.7527 Cl,
/// ammonium sulfate of 21 % N with 21 x 24.263 / 21.201 = 24.03 % S, potassium sulfate of 50 % K2O with 50 x 18.399 / 54.057 = 17.02 % S.</summary>
public class FertilizerChlorineTests
{
    private static readonly Area Acre = Area.FromAcres(1);

    private static PlotNeed Potash(double pounds, double mostChlorine) => PlotNeed.Stated(Target(PlantNutrient.Potash, pounds), Target(PlantNutrient.Chlorine, 0, mostChlorine));

    [Theory]
    [InlineData(45.1, false), InlineData(45.2, true)]
    public void A_limit_on_chlorine_sees_a_bag_of_potash_whose_label_is_silent(double limit, bool fits)
    {
        // 60 lb K2O as potassium chloride come with 45.16 lb Cl.
        var plan = FertilizerShelf.FromOffers(Bag("0-0-60", 26)).Cheapest(Potash(60, limit), Acre);
        Assert.Equal(fits, plan.MeetsEveryNeed);
        Assert.Equal(fits ? null : PlantNutrient.Chlorine, plan.Conflict?.Caps.Single());
        Assert.Equal(Math.Min(limit, 45.16), plan.Balance(PlantNutrient.Chlorine)!.Delivered.PoundsPerAcre, 0.005);
    }

    [Fact]
    public void Potash_without_chlorine_keeps_within_the_limit()
    {
        var plan = FertilizerShelf.FromOffers(Bag("0-0-60", 26), Bag("0-0-50", 45)).Cheapest(Potash(60, 0), Acre);
        Assert.Equal("0-0-50", Assert.Single(plan.Lines).Product.Name);
        Assert.DoesNotContain(plan.Findings, f => f.Code == "fertilizer-chlorine-unstated");
    }

    [Theory]
    [InlineData("0-0-60", PlantNutrient.Chlorine, 45.16), InlineData("21-0-0", PlantNutrient.Sulfur, 24.03), InlineData("0-0-50", PlantNutrient.Sulfur, 17.02)]
    public void A_straight_salt_brings_what_its_compound_holds(string grade, PlantNutrient nutrient, double percent)
    {
        var main = FertilizerAnalysis.FromGrade(grade).Holds[0];
        var plan = FertilizerShelf.FromOffers(Bag(grade, 26)).Cheapest(PlotNeed.Stated(Target(main, 10), Target(nutrient, 0, 100)), Acre, PurchaseForm.WeighExact);
        Assert.Equal(percent, 100 * plan.Balance(nutrient)!.Delivered.PoundsPerAcre / plan.Lines[0].Rate.PoundsPerAcre, 0.005);
    }

    [Fact]
    public void A_figure_on_the_label_is_kept()
    {
        var plan = FertilizerShelf.FromOffers(Bag("0-0-60-40Cl", 26)).Cheapest(Potash(60, 40), Acre);
        Assert.True(plan.MeetsEveryNeed);
        Near.Assert(40, plan.Balance(PlantNutrient.Chlorine)!.Delivered.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void The_purest_salt_fits_into_its_package() =>
        Assert.Equal(63.17, FertilizerProduct.Create("pure", FertilizerAnalysis.FromPercent(0, 0, 63.17), FertilizerSubstance.PotassiumChloride).Analysis.Percent(PlantNutrient.Potash));

    [Theory]
    [InlineData("6-24-24", true), InlineData("6-24-24-18Cl", false), InlineData("46-0-0", false)]
    public void A_mixed_grade_of_unknown_chlorine_is_remarked_on(string grade, bool expected)
    {
        var need = PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 5), Target(PlantNutrient.Chlorine, 0, 20));
        Assert.Equal(expected, FertilizerShelf.FromOffers(Bag(grade, 26)).Cheapest(need, Acre).Findings.Any(f => f.Code == "fertilizer-chlorine-unstated" && f.Text.Contains("0.75 lb Cl", StringComparison.Ordinal)));
        Assert.DoesNotContain(FertilizerShelf.FromOffers(Bag(grade, 26)).Cheapest(Need(5, 0, 0), Acre).Findings, f => f.Code == "fertilizer-chlorine-unstated");
    }

    [Fact]
    public void Chlorine_nobody_asked_for_is_shown_only_where_a_label_states_it()
    {
        Assert.Null(FertilizerShelf.FromOffers(Bag("0-0-60", 26)).Cheapest(Need(0, 0, 60), Acre).Balance(PlantNutrient.Chlorine));
        Assert.Equal(45.2, FertilizerShelf.FromOffers(Bag("0-0-60-45.2Cl", 26)).Cheapest(Need(0, 0, 60), Acre).Balance(PlantNutrient.Chlorine)!.Delivered.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void The_working_shows_the_chlorine_it_counts_and_where_it_comes_from()
    {
        var shelf = FertilizerShelf.FromOffers(Bag("0-0-60", 26));
        var plan = shelf.Cheapest(Potash(60, 60), Acre);
        Assert.Contains(plan.ShowWork(), l => l.Label == "Cl spread" && l.Numbers.StartsWith("(100 lb x 45.16", StringComparison.Ordinal));
        Assert.Contains("MASS-IUPAC", plan.Sources.Select(s => s.Id));
        Assert.DoesNotContain("MASS-IUPAC", shelf.Cheapest(Need(0, 0, 60), Acre).Sources.Select(s => s.Id));
    }
}
