using PlotAgronomy.Fertilizers;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

public class FertilizerAnalysisTests
{
    public static TheoryData<string> Cultures => CultureScope.Treacherous;

    [Theory]
    [InlineData("13-13-13"), InlineData("0-0-22-22S-11Mg"), InlineData("15.5-0-0-19Ca"), InlineData("0-0-60-45.2Cl")]
    public void A_grade_reads_and_prints_alike(string grade) => Assert.Equal(grade, FertilizerAnalysis.FromGrade(grade).ToString());

    [Theory]
    [InlineData(""), InlineData(null), InlineData("13-13"), InlineData("a-b-c"), InlineData("13-13-13-4Xy"), InlineData("13-13--1"), InlineData("1,5-0-0"), InlineData("0-0-22-11S-22S"), InlineData("0-0-60-5K2O")]
    public void What_is_no_grade_is_refused_with_a_reason(string? text)
    {
        Assert.False(FertilizerAnalysis.TryRead(text, out _, out string problem));
        Assert.Contains("13-13-13", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1), InlineData(double.NaN), InlineData(double.PositiveInfinity), InlineData(100.01)]
    public void Impossible_percents_are_refused(double percent)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerAnalysis.FromPercent(percent, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerAnalysis.FromPercent(0, percent, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerAnalysis.FromPercent(0, 0, percent));
        Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerAnalysis.FromPercent(0, 0, 0).With(PlantNutrient.Boron, percent));
    }

    [Fact]
    public void Nothing_holds_more_nitrogen_than_ammonia()
    {
        // 14.007 / (14.007 + 3 x 1.008) = 82.244 %
        Assert.Equal(82.24, FertilizerAnalysis.FromPercent(82.24, 0, 0).Percent(PlantNutrient.Nitrogen));
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerAnalysis.FromPercent(82.25, 0, 0));
        Assert.Contains("82.24", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_parts_cannot_exceed_the_whole()
    {
        Assert.Equal("40-30-30", FertilizerAnalysis.FromPercent(40, 30, 30).ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerAnalysis.FromPercent(40, 30, 30.01));
        // 60 % K2O is 49.8 % K; with 45.2 % Cl the elements fit although the label's numbers pass 100.
        Assert.Equal(45.2, FertilizerAnalysis.FromGrade("0-0-60-45.2Cl").Percent(PlantNutrient.Chlorine));
        Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerAnalysis.FromGrade("0-0-60").With(PlantNutrient.Chlorine, 50.2));
    }

    [Theory]
    [InlineData(FertilizerSubstance.Urea, "46-0-0", "47-0-0", "46.6")]
    [InlineData(FertilizerSubstance.AmmoniumNitrate, "34-0-0", "36-0-0", "35")]
    [InlineData(FertilizerSubstance.PotassiumChloride, "0-0-63", "0-0-64", "63.1")]
    [InlineData(FertilizerSubstance.PotassiumSulfate, "0-0-54", "0-0-60", "54.0")]
    [InlineData(FertilizerSubstance.DiammoniumPhosphate, "18-46-0", "18-54-0", "53.7")]
    [InlineData(FertilizerSubstance.AmmoniumSulfate, "21-0-0-24S", "21-0-0-25S", "24.2")]
    public void A_grade_cannot_exceed_the_pure_compound(FertilizerSubstance substance, string possible, string impossible, string limit)
    {
        FertilizerAnalysis.FromGrade(possible).RequirePossibleFor(substance);
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerAnalysis.FromGrade(impossible).RequirePossibleFor(substance));
        Assert.Contains(limit, thrown.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerProduct.Create("bag", FertilizerAnalysis.FromGrade(impossible), substance));
    }

    [Fact]
    public void Elements_and_oxides_are_different_types()
    {
        var label = FertilizerAnalysis.FromGrade("10-10-10");
        var elements = ElementalAnalysis.FromLabel(label);
        Assert.Equal("10 N, 4.36 P, 8.3 K %", elements.ToString());
        Near.Assert(10, elements.ToLabel().Percent(PlantNutrient.Phosphate));
        Near.Assert(10, elements.ToLabel().Percent(PlantNutrient.Potash));
        Assert.Throws<ArgumentOutOfRangeException>(() => ElementalAnalysis.FromPercent(0, 44, 0));
    }

    [Theory, MemberData(nameof(Cultures))]
    public void The_culture_changes_nothing(string culture)
    {
        using var scope = new CultureScope(culture);
        Assert.Equal("15.5-0-0-19Ca", FertilizerAnalysis.FromGrade("15.5-0-0-19ca").ToString());
        var shelf = FertilizerShelf.FromOffers(FertilizerShelfTests.Bag("46-0-0", 24.5m), FertilizerShelfTests.Bag("0-0-60", 26.25m));
        var plan = shelf.Cheapest(FertilizerShelfTests.Need(40.5, 0, 60), Area.FromAcres(0.62));
        Assert.Contains(plan.ShowWork(), l => l.Numbers.Contains("24.5", StringComparison.Ordinal));
        Assert.Equal("2 x 50 lb 0-0-60, spread 62 lb, 38 lb left", plan.Line("0-0-60")!.ToString());
    }

    [Fact]
    public void Straight_grades_are_recognised()
    {
        Assert.Equal(FertilizerSubstance.Urea, FertilizerShelfTests.Bag("46-0-0", 20).Item.Substance);
        Assert.Equal(FertilizerSubstance.AmmoniumSulfate, FertilizerShelfTests.Bag("21-0-0-24S", 20).Item.Substance);
        Assert.Equal(FertilizerSubstance.Mixture, FertilizerShelfTests.Bag("13-13-13", 20).Item.Substance);
        Assert.Equal(FertilizerSubstance.PotassiumChloride, FertilizerShelfTests.Bag("0-0-60", 20).Item.Substance);
    }

    [Fact]
    public void A_product_needs_a_name_a_weight_and_a_price()
    {
        var analysis = FertilizerAnalysis.FromGrade("13-13-13");
        Assert.Throws<ArgumentException>(() => FertilizerProduct.Create(" ", analysis));
        Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerProduct.Liquid("a", analysis, Density.Zero));
        Assert.Throws<InvalidOperationException>(() => FertilizerProduct.Create("a", analysis).InJugs(Volume.FromUsGallons(2.5), 20));
        var liquid = FertilizerProduct.Liquid("uan", FertilizerAnalysis.FromGrade("28-0-0"), Density.FromPoundsPerUSGallon(10.67));
        Near.Assert(26.675, liquid.InJugs(Volume.FromUsGallons(2.5), 20).Package.Weight.Pounds, 1e-8);
        Assert.Throws<ArgumentOutOfRangeException>(() => liquid.InJugs(Volume.Zero, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => liquid.InJugs(Volume.FromUsGallons(2.5), -0.01m));
    }
}
