using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>Slips on labels and shelves are asked or refused, and what stays open is said.</summary>
public class LabelSlipTests
{
    private static NutrientTarget Target(PlantNutrient nutrient, double pounds) =>
        NutrientTarget.Create(nutrient, ApplicationRate.FromPoundsPerAcre(pounds), null, "stated");

    /// <summary>Exact: pure urea holds 46.65 % N.</summary>
    [Theory]
    [InlineData("urea", "64-0-0", false), InlineData("Urea ", "47-0-0", false), InlineData("urea", "46-0-0", true), InlineData("urea", "45-0-0", true)]
    [InlineData("ammonium sulfate", "24-0-0", false), InlineData("ammonium sulfate", "21-0-0-24S", true), InlineData("spring mix", "64-0-0", true)]
    public void A_material_known_by_its_name_holds_what_its_compound_can(string name, string grade, bool isPossible)
    {
        var made = Record.Exception(() => FertilizerProduct.Create(name, FertilizerAnalysis.FromGrade(grade)));
        Assert.Equal(isPossible, made is null);
        Assert.True(made is null or ArgumentException);
    }

    /// <summary>By hand: 0.46 % instead of 46 % asks for a hundred times the product.</summary>
    [Theory]
    [InlineData(0.46, true), InlineData(1, true), InlineData(1.01, false), InlineData(46, false)]
    public void A_share_typed_for_a_percent_is_asked(double percent, bool isAsked)
    {
        var product = FertilizerProduct.Create("straight", FertilizerAnalysis.FromPercent(percent, 0, 0));
        var bought = FertilizerShelf.FromOffers(Offer.InBags(product, Mass.FromPounds(50), 20)).Cheapest(PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 20)), Area.FromAcres(0.1));
        Assert.Equal(isAsked, bought.Findings.Any(f => f.Code == FertilizerCodes.AnalysisShare));
    }

    [Fact]
    public void What_a_single_product_does_not_hold_stays_open_and_is_said()
    {
        var need = PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 30), Target(PlantNutrient.Potash, 60));
        var urea = SingleProductRate.MeetingAll(FertilizerAnalysis.FromGrade("46-0-0"), need);
        Assert.Contains(urea.Findings, f => f.Code == FertilizerCodes.Unserved && f.Text.Contains("K2O (60 lb/ac)", StringComparison.Ordinal));
        Assert.DoesNotContain(SingleProductRate.MeetingAll(FertilizerAnalysis.FromGrade("13-13-13"), need).Findings, f => f.Code == FertilizerCodes.Unserved);
    }

    /// <summary>Published trials: 88 % lost at 30 C, 46 % at 25 C; the planning figure of practice ends at 40 %.</summary>
    [Theory]
    [InlineData(30, "88 %"), InlineData(25, "46 %"), InlineData(20, null), InlineData(10, null)]
    public void Where_a_trial_lost_more_than_the_planning_figure_it_is_said(double celsius, string? measured)
    {
        var field = new FieldConditions { IsIncorporated = false, SoilTemperature = Temperature.FromDegreesCelsius(celsius) };
        var bought = FertilizerShelf.FromOffers(FertilizerShelfTests.Bag("46-0-0", 24)).Cheapest(PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 40)), Area.FromAcres(1), field: field);
        var told = bought.Findings.SingleOrDefault(f => f.Code == FertilizerCodes.SurfaceUreaMeasured);
        Assert.Equal(measured is null, told is null);
        Assert.True(told is null || told.Text.Contains(measured!, StringComparison.Ordinal));
    }

    [Fact]
    public void Two_lines_of_one_name_are_not_told_by_the_first()
    {
        var first = Offer.InBags(FertilizerProduct.Create("straight", FertilizerAnalysis.FromGrade("0-0-60")), Mass.FromPounds(50), 25);
        var second = Offer.InBags(FertilizerProduct.Create("straight", FertilizerAnalysis.FromGrade("46-0-0")), Mass.FromPounds(50), 25);
        var bought = FertilizerShelf.FromOffers(first, second).Cheapest(PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 40), Target(PlantNutrient.Potash, 40)), Area.FromAcres(1));
        Assert.Equal(2, bought.Lines.Length);
        Assert.Contains("2 lines are called 'straight'", Assert.Throws<InvalidOperationException>(() => bought.Line("straight")).Message, StringComparison.Ordinal);
    }
}
