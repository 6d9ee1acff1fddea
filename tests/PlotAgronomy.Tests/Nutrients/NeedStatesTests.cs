using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.NeedSamples;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>A rate, none needed, not known: three states that never look alike; zeros that lift no ceiling; needs too small to buy.</summary>
public class NeedStatesTests
{
    private static SoilReport Report(double p, Extractant pBy, double k, Extractant kBy) => new()
    {
        Laboratory = "the county laboratory",
        Readings = [SystemRequests.P(p, SoilTestUnit.PartsPerMillion, pBy), SystemRequests.K(k, SoilTestUnit.PartsPerMillion, kBy)],
    };

    private static PlotNeedRequest Printed(PlotNeedRequest request, params PrintedRate[] rates) => new()
    {
        Soil = request.Soil,
        Kinds = request.Kinds,
        System = request.System,
        SecondaryRules = [],
        Printed = PrintedRecommendation.FromRates("the county laboratory", "plot", rates),
    };

    private static ApplicationRate Rate(double pounds) => ApplicationRate.FromPoundsPerAcre(pounds);

    /// <summary>Published: Kansas' equations go by the yield. Without one P and K are not known, and the cure is the yield; with it they are.</summary>
    [Fact]
    public void Kansas_without_a_yield_is_not_none_and_asks_for_the_yield()
    {
        var need = PlotNeed.For(With(RecommendationSystem.Kansas, Report(13, Extractant.BrayP1, 90, Extractant.Mehlich3), Kind("winter-wheat", 0.7), Kind("austrian-winter-pea", 0.3)));
        Assert.Equal(AnswerState.Open, need.StateOf(PlantNutrient.Phosphate));
        Assert.Equal(AnswerState.Open, need.StateOf(PlantNutrient.Potash));
        Assert.Equal(AnswerState.Given, need.StateOf(PlantNutrient.Nitrogen));
        var told = Assert.Single(need.Findings, f => f.Code == NutrientCodes.NotKnownFact && f.Text.StartsWith("P2O5", StringComparison.Ordinal));
        Assert.Equal(FindingSeverity.Warning, told.Severity);
        Assert.Contains("yield", told.Text, StringComparison.Ordinal);
    }

    /// <summary>Practice: a system without a row for turnips says so by an open state, and names who could read the same test.</summary>
    [Fact]
    public void A_system_without_a_row_names_one_that_reads_the_test()
    {
        var need = PlotNeed.For(With(RecommendationSystem.Find("IA-2013"), Report(14, Extractant.BrayP1, 125, Extractant.AmmoniumAcetate), Kind("purple-top-turnip", 0.5), Kind("rape-dwarf-essex", 0.5)));
        Assert.Equal(AnswerState.Open, need.StateOf(PlantNutrient.Phosphate));
        Assert.Contains(need.Findings, f => f.Code == NutrientCodes.NotKnownSystem && f.Text.Contains("Kansas", StringComparison.Ordinal));
    }

    [Fact]
    public void A_report_that_no_system_reads_asks_for_the_laboratorys_own_rate()
    {
        var need = PlotNeed.For(With(RecommendationSystem.NorthCarolina, Report(20, Extractant.Lancaster, 90, Extractant.Lancaster), Kind("oats-winter", 1)));
        Assert.Contains(need.Findings, f => f.Code == NutrientCodes.NotKnownTest && f.Text.Contains("the county laboratory", StringComparison.Ordinal));
    }

    [Fact]
    public void Nitrogen_without_a_yield_is_not_known()
    {
        var need = PlotNeed.For(Request(Kind("corn", 1)));
        Assert.Equal(AnswerState.Open, need.StateOf(PlantNutrient.Nitrogen));
        Assert.Contains(need.Findings, f => f.Code == NutrientCodes.NotKnownFact && f.Text.StartsWith("N is not known", StringComparison.Ordinal));
    }

    /// <summary>Hand algebra: 0.2 of grain at 30 to 40 lb N alone asks for 6 to 8. The laboratory's printed 0 asks for none, and 8 stays the most; for clover
    /// alone the starter's 20 lb stay.</summary>
    [Theory]
    [InlineData(0.2, 8), InlineData(0, 20)]
    public void A_printed_zero_of_nitrogen_keeps_the_ceiling(double oats, double most)
    {
        KindShare[] kinds = oats > 0 ? [Kind("oats-winter", oats), Kind("white-dutch-clover", 1 - oats)] : [Kind("white-dutch-clover", 1)];
        var target = PlotNeed.For(Printed(Request(kinds), PrintedRate.FromRate(PlantNutrient.Nitrogen, Rate(0)))).Find(PlantNutrient.Nitrogen)!;
        Assert.Equal(0, target.AtLeast.PoundsPerAcre);
        Assert.Equal(most, target.AtMost!.Value.PoundsPerAcre, 1e-9);
    }

    [Theory]
    [InlineData(PlantNutrient.Nitrogen), InlineData(PlantNutrient.Phosphate), InlineData(PlantNutrient.Potash)]
    public void A_printed_zero_never_lifts_a_ceiling(PlantNutrient nutrient)
    {
        foreach (double index in (double[])[10, 60, 90, 120])
        {
            var request = With(RecommendationSystem.NorthCarolina, NorthCarolina(index, index), Kind("oats-winter", 0.5), Kind("crimson-clover", 0.5));
            var own = PlotNeed.For(request).Find(nutrient)!;
            var printed = PlotNeed.For(Printed(request, PrintedRate.FromRate(nutrient, Rate(0)))).Find(nutrient)!;
            Assert.True(own.AtMost is not { } most || (printed.AtMost is { } kept && kept <= most), $"{nutrient} at index {index}");
        }
    }

    /// <summary>Published: North Carolina's equation 14 gives 0.0116 x 85 x 85 - 2.75 x 85 + 150 = 0.06 lb P2O5 at index 85; nobody buys a bag for that.</summary>
    [Fact]
    public void A_crumb_of_need_is_told_and_not_bought()
    {
        var need = PlotNeed.For(With(RecommendationSystem.NorthCarolina, NorthCarolina(85, 100), Kind("crimson-clover", 1)));
        Assert.Equal(0.06, need.Pounds(PlantNutrient.Phosphate), 0.005);
        Assert.Equal(0, need.WorthBuying.Pounds(PlantNutrient.Phosphate));
        Assert.Equal(10, need.WorthBuying.Find(PlantNutrient.Phosphate)!.AtMost!.Value.PoundsPerAcre, 1e-9);
        Assert.Contains(need.Findings, f => f.Code == NutrientCodes.BelowPurchaseFloor && f.Text.StartsWith("P2O5 0.1 lb/ac is less than the 10 lb/ac", StringComparison.Ordinal));
    }

    /// <summary>Practice: 15 lb N, 10 lb P2O5, 10 lb K2O an acre are bought; just below them nothing is, and the ceiling stays.</summary>
    [Theory]
    [InlineData(PlantNutrient.Nitrogen, 15), InlineData(PlantNutrient.Phosphate, 10), InlineData(PlantNutrient.Potash, 10)]
    public void The_floor_of_a_purchase_is_by_the_acre(PlantNutrient nutrient, double floor)
    {
        double Bought(double pounds) => PlotNeed.For(Printed(Request(Kind("oats-winter", 1)), PrintedRate.FromRate(nutrient, Rate(pounds)))).WorthBuying.Pounds(nutrient);
        Assert.Equal(0, Bought(floor - 0.001));
        Assert.Equal(floor, Bought(floor));
        Assert.Equal(floor + 0.001, Bought(floor + 0.001));
    }

    [Fact]
    public void What_was_stated_or_set_by_hand_is_bought_however_small()
    {
        var target = NutrientTarget.Create(PlantNutrient.Phosphate, Rate(3), null, "a starter");
        Assert.Equal(3, PlotNeed.Stated(target).WorthBuying.Pounds(PlantNutrient.Phosphate));
        var byHand = PlotNeed.For(new PlotNeedRequest
        {
            Soil = NorthCarolina(),
            Kinds = [Kind("oats-winter", 1)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [],
            Overrides = [target],
        });
        Assert.Equal(3, byHand.WorthBuying.Pounds(PlantNutrient.Phosphate));
    }
}
