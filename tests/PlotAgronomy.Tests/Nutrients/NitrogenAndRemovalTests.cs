using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Nutrients;

public class NitrogenAndRemovalTests
{
    private static ApplicationRate Rate(double pounds) => ApplicationRate.FromPoundsPerAcre(pounds);

    [Theory]
    [InlineData(39.99, false), InlineData(40, true), InlineData(200, true), InlineData(200.01, false)]
    public void A_printed_table_is_never_left(double bushels, bool answers)
    {
        var answer = NitrogenRule.Find("oklahoma-corn").Answer(CropYield.FromBushelsPerAcre(bushels));
        Assert.Equal(answers, answer.Low is not null);
        Assert.Equal(!answers, answer.Findings.Any(f => f.Code == "nutrient-nitrogen-outside-table"));
    }

    [Fact]
    public void A_rule_that_goes_by_yield_asks_for_it_in_its_own_unit()
    {
        Assert.Contains(NitrogenRule.Find("oklahoma-corn").Answer().Findings, f => f.Code == "nutrient-nitrogen-yield-needed");
        Assert.Throws<ArgumentException>(() => NitrogenRule.Find("oklahoma-corn").Answer(CropYield.FromTonsPerAcre(2)));
        Assert.Throws<KeyNotFoundException>(() => NitrogenRule.Find("any"));
    }

    /// <summary>Hand algebra: half of the printed 110 at 100 bu and 130 at 120 bu; 110 bu make just 60 lb a dressing.</summary>
    [Theory]
    [InlineData(109, false), InlineData(110, false), InlineData(111, true)]
    public void A_dressing_above_sixty_pounds_is_a_finding(double bushels, bool found) =>
        Assert.Equal(found, NitrogenRule.Find("oklahoma-corn").Answer(CropYield.FromBushelsPerAcre(bushels)).Findings.Any(f => f.Code == "nutrient-nitrogen-single-dose"));

    [Fact]
    public void A_reduction_never_makes_a_need_negative() =>
        Assert.Equal(0, NitrogenRule.Find("mississippi-grain-plot").Answer(reduction: Rate(100)).High!.Value.PoundsPerAcre);

    [Fact]
    public void Every_rule_that_gives_nitrogen_says_when_to_spread_it()
    {
        foreach (var rule in NitrogenRule.All.Concat(NitrogenRule.Unchecked))
        {
            CropYield? yield = rule.YieldUnit switch { YieldUnit.Bushel => CropYield.FromBushelsPerAcre(80), YieldUnit.Ton => CropYield.FromTonsPerAcre(1.5), _ => null };
            var answer = rule.Answer(yield);
            Assert.Equal(answer.High!.Value.PoundsPerAcre, answer.Doses.Sum(d => d.High.PoundsPerAcre), 1e-9);
            Assert.Equal(answer.Low!.Value.PoundsPerAcre, answer.Doses.Sum(d => d.Low.PoundsPerAcre), 1e-9);
        }
    }

    [Fact]
    public void The_lower_of_two_credits_is_taken_and_said_so()
    {
        var answer = LegumeCredit.Find("kansas-alfalfa").For(LegumeStand.Earlier);
        Assert.Equal(100, answer.Rate.PoundsPerAcre);
        Assert.Equal("nutrient-legume-credit-lower", Assert.Single(answer.Findings).Code);
        Assert.Contains("100 lb N/ac", Assert.Single(answer.ShowWork()).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_credit_from_memory_carries_its_finding() =>
        Assert.Contains(LegumeCredit.Find("soybean").For(LegumeStand.Earlier).Findings, f => f.Code == "data-from-memory");

    [Fact]
    public void A_figure_for_a_plowed_legume_is_not_given_to_a_standing_one()
    {
        Assert.Throws<ArgumentException>(() => LegumeCredit.Find("kansas-alfalfa").For(LegumeStand.Existing));
        Assert.Throws<ArgumentException>(() => LegumeCredit.Find("tennessee-clover-in-grass").For(LegumeStand.Earlier));
        Assert.Throws<ArgumentOutOfRangeException>(() => LegumeCredit.Find("kansas-alfalfa").For((LegumeStand)9));
    }

    [Fact]
    public void Removal_takes_a_yield_in_the_figures_unit()
    {
        Assert.Throws<ArgumentException>(() => CropRemoval.CarriedOff(RemovalFigure.Find("illinois-corn"), CropYield.FromTonsPerAcre(3)));
        Assert.Null(CropRemoval.CarriedOff(RemovalFigure.Find("illinois-corn"), CropYield.FromBushelsPerAcre(100)).Find(PlantNutrient.Nitrogen));
        Assert.Contains(CropRemoval.CarriedOff(RemovalFigure.Find("tri-state-2020-soybean"), CropYield.FromBushelsPerAcre(100)).Findings, f => f.Code == "data-from-memory");
    }

    [Fact]
    public void Removal_shows_its_working()
    {
        var lines = CropRemoval.CarriedOff(RemovalFigure.Find("illinois-corn"), CropYield.FromBushelsPerAcre(150)).ShowWork();
        Assert.Contains(lines, l => l.Numbers == "150 bu/ac x 0.37 x 1 x 1 = 55.5 lb/ac");
        Assert.Single(CropRemoval.Browsed.ShowWork());
    }

    [Fact]
    public void A_printed_range_keeps_its_order_and_its_labels()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PrintedRate.FromRate(PlantNutrient.Potash, Rate(60), Rate(59.9)));
        Assert.Throws<ArgumentException>(() => PrintedRate.FromElement(PlantNutrient.Zinc, Rate(1)));
        Assert.Throws<ArgumentException>(() => PrintedRecommendation.FromRates("a laboratory", "clover"));
        Assert.Throws<ArgumentException>(() => PrintedRecommendation.FromRates(" ", "clover", PrintedRate.FromRate(PlantNutrient.Potash, Rate(60))));
        Assert.Throws<ArgumentException>(() => PrintedRecommendation.FromRates("a laboratory", "clover", PrintedRate.FromRate(PlantNutrient.Potash, Rate(60)), PrintedRate.FromRate(PlantNutrient.Potash, Rate(60))));
    }

    /// <summary>Exact: 1 lb per 1000 ft2 is 43.56 lb/ac.</summary>
    [Fact]
    public void A_rate_printed_per_thousand_square_feet_is_the_same_kind_of_amount() =>
        Assert.Equal(43.56, PrintedRate.FromRate(PlantNutrient.Potash, ApplicationRate.FromPoundsPerThousandSquareFeet(1)).Low.PoundsPerAcre, 1e-12);

    [Fact]
    public void Every_published_kind_has_a_proxy_and_users_own_kinds_fall_back_on_their_group()
    {
        Assert.All(KindCatalog.Standard.Kinds, k => Assert.NotEmpty(KindProxy.For(k).Rows));
        var own = KindCatalog.Standard.Find("ladino-clover") with { Id = "own", CommonName = "Own clover" };
        Assert.Equal("inoculated-legume", KindProxy.For(own).Nitrogen.Id);
        Assert.All(KindCatalog.Standard.Kinds.Where(k => k.IsLegume), k => Assert.Equal("inoculated-legume", KindProxy.For(k).Nitrogen.Id));
    }
}
