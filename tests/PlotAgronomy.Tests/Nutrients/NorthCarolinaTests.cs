using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

public class NorthCarolinaTests
{

    private static NutrientRecommendation Wildlife(params SoilReading[] readings) =>
        RecommendationSystem.NorthCarolina.Recommend(Report(readings) with { SoilClass = SoilClass.Mineral }, CropUse.Browsed(CropRow.DeerTurkeyPlot));

    [Fact]
    public void A_P_index_of_45_gives_the_practice_case()
    {
        var phosphate = Wildlife(PIndex(45)).Phosphate!;
        PracticeCase.AssertMatches("C19", "P2O5", phosphate.Rate.PoundsPerAcre);
        PracticeCase.AssertMatches("C19", "advice low", phosphate.PublishedLow.PoundsPerAcre);
        PracticeCase.AssertMatches("C19", "advice high", phosphate.PublishedHigh.PoundsPerAcre);
    }

    [Fact]
    public void A_curve_that_turns_up_again_says_so_and_gives_none()
    {
        var answer = Wildlife(PIndex(200));
        Assert.Equal(0, answer.Phosphate!.Rate.PoundsPerAcre);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-curve-turns-up");
    }

    [Fact]
    public void The_three_wildlife_rows_are_identical()
    {
        double[] rates = [.. new[] { CropRow.DeerTurkeyPlot, CropRow.UplandGamePlot, CropRow.WaterfowlPlot }
            .Select(row => RecommendationSystem.NorthCarolina.Recommend(Report(PIndex(30)) with { SoilClass = SoilClass.Mineral }, CropUse.Browsed(row)).Phosphate!.Rate.PoundsPerAcre)];
        Assert.Single(rates.Distinct());
    }

    [Fact]
    public void An_equation_that_never_reaches_zero_is_held_at_none_above_index_100()
    {
        var equation = NorthCarolinaEquation.Find(4);
        Assert.Equal(double.PositiveInfinity, SystemMath.FirstZero(equation.A, equation.B, equation.C));
        Assert.True(equation.Rate(100) > 0);
        Assert.Equal(0, equation.Rate(100.001));
    }

    [Fact]
    public void The_misprinted_turf_equation_is_refused() => Assert.Throws<KeyNotFoundException>(() => NorthCarolinaEquation.Find(22));

    [Fact]
    public void A_missing_soil_class_is_said_and_taken_as_mineral()
    {
        var answer = RecommendationSystem.NorthCarolina.Recommend(Report(PIndex(30)), CropUse.Browsed(CropRow.DeerTurkeyPlot));
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-soil-class-assumed");
        Assert.Equal(Wildlife(PIndex(30)).Phosphate!.Rate, answer.Phosphate!.Rate);
    }

    [Fact]
    public void A_concentration_is_not_an_index()
    {
        var answer = Wildlife(P(45, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich3));
        Assert.Null(answer.Phosphate);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-test-not-accepted");
    }

    [Fact]
    public void The_working_shows_the_equation_with_its_numbers()
    {
        var line = Assert.Single(Wildlife(PIndex(45)).ShowWork());
        Assert.Equal("0.0116 x 45 x 45 - 2.75 x 45 + 150 = 49.7 lb/ac", line.Numbers);
    }
}
