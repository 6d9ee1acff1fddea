using PlotAgronomy.Fertilizers;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Fertilizers.FertilizerShelfTests;

namespace PlotAgronomy.Tests.Fertilizers;

public class GradeMixTests
{
    private static readonly Offer<FertilizerProduct>[] Straights = [Bag("18-46-0", 36), Bag("46-0-0", 24), Bag("0-0-60", 26)];

    [Fact]
    public void A_recipe_makes_the_wanted_grade_and_fills_the_batch()
    {
        var blend = GradeMix.For(FertilizerAnalysis.FromGrade("13-13-13"), Mass.FromPounds(50), Straights);
        Assert.True(blend.CanBeMade);
        Near.Assert(50, blend.Lines.Sum(l => l.Mass.Pounds) + blend.Filler.Pounds, 1e-9);
        var made = GradeMix.GradeOf([.. blend.Lines.Select(l => (l.Material.Analysis, l.Mass)), (FertilizerAnalysis.FromPercent(0, 0, 0), blend.Filler)]);
        Assert.All(new[] { PlantNutrient.Nitrogen, PlantNutrient.Phosphate, PlantNutrient.Potash }, n => Near.Assert(13, made.Percent(n), 1e-9));
        Assert.Contains(blend.Findings, f => f.Code == "fertilizer-mix-same-day");
    }

    [Fact]
    public void A_grade_too_strong_names_the_strongest_of_its_ratio()
    {
        var blend = GradeMix.For(FertilizerAnalysis.FromGrade("20-20-20"), Mass.FromPounds(2000), Straights);
        Assert.False(blend.CanBeMade);
        Assert.Empty(blend.Lines);
        Assert.Contains(blend.Findings, f => f.Code == "fertilizer-grade-too-high" && f.Text.Contains("96.83 %", StringComparison.Ordinal));
    }

    [Fact]
    public void An_impossible_ratio_shows_the_region_that_can_be_reached()
    {
        // 24 % P2O5 from 18-46-0 alone brings 24 x 18 / 46 = 9.39 % N.
        var blend = GradeMix.For(FertilizerAnalysis.FromGrade("6-24-24"), Mass.FromPounds(2000), Straights);
        Assert.False(blend.CanBeMade);
        Assert.Null(blend.HighestPercentOfWanted);
        var nitrogen = blend.PossibleRanges.Single(r => r.Nutrient == PlantNutrient.Nitrogen).Possible;
        Assert.Equal(24.0 * 18 / 46, nitrogen.Low, 6);
        // The rest of the batch can be urea: 100 - 52.17 - 40 = 7.83 lb, 3.6 lb N more.
        Assert.Equal((24.0 * 18 / 46) + (0.46 * (100 - (100 * 24.0 / 46) - 40)), nitrogen.High, 6);
        Assert.Contains(blend.Findings, f => f.Code == "fertilizer-ratio-impossible");
    }

    [Fact]
    public void A_label_grade_is_rounded_down() =>
        Assert.Equal("9-22-29", GradeMix.LabelGrade(FertilizerAnalysis.FromPercent(9, 22.99, 29.5)).ToString());

    [Fact]
    public void Of_several_recipes_the_cheapest_is_given()
    {
        var blend = GradeMix.For(FertilizerAnalysis.FromGrade("10-0-0"), Mass.FromPounds(100), Bag("46-0-0", 24), Bag("21-0-0", 30));
        Assert.Equal("46-0-0", Assert.Single(blend.Lines).Material.Name);
        Assert.Throws<ArgumentOutOfRangeException>(() => GradeMix.For(FertilizerAnalysis.FromGrade("10-0-0"), Mass.Zero, Straights));
        Assert.Throws<ArgumentException>(() => GradeMix.For(FertilizerAnalysis.FromGrade("10-0-0"), Mass.FromPounds(1)));
    }
}
