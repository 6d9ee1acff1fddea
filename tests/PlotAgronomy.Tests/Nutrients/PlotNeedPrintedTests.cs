using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.NeedSamples;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>The laboratory's printed figures, limits, and targets set by hand.</summary>
public class PlotNeedPrintedTests
{
    private static ApplicationRate Rate(double pounds) => ApplicationRate.FromPoundsPerAcre(pounds);

    [Fact]
    public void The_laboratorys_figures_are_used_first_and_ours_stand_beside_them()
    {
        var printed = PrintedRecommendation.FromRates("North Carolina", "deer and turkey plot",
            PrintedRate.FromRate(PlantNutrient.Phosphate, Rate(40), Rate(60)), PrintedRate.FromRate(PlantNutrient.Potash, Rate(110)));
        var need = PlotNeed.For(new PlotNeedRequest { Soil = NorthCarolina(), Kinds = [Kind("oats-winter", 1)], System = RecommendationSystem.NorthCarolina, SecondaryRules = [], Printed = printed });
        Assert.Equal(40, need.Pounds(PlantNutrient.Phosphate));
        Assert.Equal(60, need.Find(PlantNutrient.Phosphate)!.AtMost!.Value.PoundsPerAcre);
        Assert.Equal(110, need.Pounds(PlantNutrient.Potash));
        Assert.Equal(88.5, need.Computed.Single(t => t.Nutrient == PlantNutrient.Phosphate).AtLeast.PoundsPerAcre, 0.05);
        Assert.Equal(1, need.Findings.Count(f => f.Code == "nutrient-printed-differs"));
        Assert.True(need.Has("nutrient-printed-crop"));
    }

    /// <summary>North Carolina advises no phosphate at a P index above 50 on this row; a browsed plot then takes none at all.</summary>
    [Theory]
    [InlineData(25, false), InlineData(120, true)]
    public void Where_the_test_calls_for_no_phosphate_none_may_be_spread(double phosphorusIndex, bool capped)
    {
        var target = PlotNeed.For(With(RecommendationSystem.NorthCarolina, NorthCarolina(phosphorusIndex), Kind("oats-winter", 1))).Find(PlantNutrient.Phosphate)!;
        Assert.Equal(capped, target.AtLeast == ApplicationRate.Zero);
        Assert.Equal(capped ? ApplicationRate.Zero : null, target.AtMost);
    }

    [Theory]
    [InlineData(0, 0.0), InlineData(40, null)]
    public void A_printed_rate_of_no_phosphate_is_a_limit(double pounds, double? limit)
    {
        var need = PlotNeed.For(Printed(Kind("oats-winter", 1), PrintedRate.FromRate(PlantNutrient.Phosphate, Rate(pounds))));
        Assert.Equal(limit, need.Find(PlantNutrient.Phosphate)!.AtMost?.PoundsPerAcre);
    }

    /// <summary>Legumes alone take at most 20 lb N/ac (common practice), or what the laboratory printed if that is more.</summary>
    [Theory]
    [InlineData("ladino-clover", 0, 20.0), InlineData("ladino-clover", 25, 25.0), InlineData("oats-winter", 25, null)]
    public void A_printed_rate_does_not_lift_the_limit_of_nitrogen_on_legumes(string kind, double pounds, double? limit)
    {
        var need = PlotNeed.For(Printed(Kind(kind, 1), PrintedRate.FromRate(PlantNutrient.Nitrogen, Rate(pounds))));
        Assert.Equal(pounds, need.Pounds(PlantNutrient.Nitrogen));
        Assert.Equal(limit, need.Find(PlantNutrient.Nitrogen)!.AtMost?.PoundsPerAcre);
    }

    private static PlotNeedRequest Printed(KindShare kind, PrintedRate rate) => new()
    {
        Soil = NorthCarolina(),
        Kinds = [kind],
        System = RecommendationSystem.NorthCarolina,
        SecondaryRules = [],
        Printed = PrintedRecommendation.FromRates("North Carolina", "deer and turkey plot", rate),
    };

    [Fact]
    public void A_target_set_by_hand_goes_before_all()
    {
        var need = PlotNeed.For(new PlotNeedRequest
        {
            Soil = NorthCarolina(),
            Kinds = [Kind("oats-winter", 1)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [],
            Printed = PrintedRecommendation.FromRates("North Carolina", "plot", PrintedRate.FromRate(PlantNutrient.Phosphate, Rate(40))),
            Overrides = [NutrientTarget.Create(PlantNutrient.Phosphate, Rate(10), null, "bags at hand")],
        });
        Assert.Equal(10, need.Pounds(PlantNutrient.Phosphate));
        Assert.True(need.Has("nutrient-override"));
    }
}
