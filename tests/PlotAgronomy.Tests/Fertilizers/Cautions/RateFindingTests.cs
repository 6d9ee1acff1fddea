using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>What is said of a rate, nutrient by nutrient; limits are common practice.</summary>
public class RateFindingTests
{
    private static NutrientBalance Balance(PlantNutrient nutrient, double need, double delivered, bool isAsked = true) => new()
    {
        Nutrient = nutrient,
        AtLeast = ApplicationRate.FromPoundsPerAcre(need),
        AtMost = null,
        Delivered = ApplicationRate.FromPoundsPerAcre(delivered),
        IsAsked = isAsked,
    };

    private static string[] Codes(NutrientBalance balance, FieldConditions? field = null) =>
        [.. RateFindings.Of([balance], field ?? FieldConditions.Unknown).Select(f => f.Code)];

    [Theory]
    [InlineData(PlantNutrient.Nitrogen, 200, 0)]
    [InlineData(PlantNutrient.Phosphate, 150, 0)]
    [InlineData(PlantNutrient.Potash, 0, 300)]
    public void A_need_out_of_range_is_doubted_as_much_as_a_rate(PlantNutrient nutrient, double need, double delivered)
    {
        Assert.Contains("fertilizer-rate-high", Codes(Balance(nutrient, need, delivered)));
        Assert.DoesNotContain("fertilizer-rate-high", Codes(Balance(nutrient, need * 0.999, delivered * 0.999)));
    }

    [Fact]
    public void Other_nutrients_have_no_such_limit() =>
        Assert.Empty(Codes(Balance(PlantNutrient.Sulfur, 400, 400)));

    [Theory]
    [InlineData(true, 5, true)]
    [InlineData(true, 0, false)]
    [InlineData(false, 5, false)]
    [InlineData(null, 5, false)]
    public void Nitrogen_on_a_stand_of_legumes_is_a_warning(bool? isLegume, double delivered, bool isSaid)
    {
        var field = new FieldConditions { IsLegumeStand = isLegume };
        Assert.Equal(
            isSaid,
            Codes(Balance(PlantNutrient.Nitrogen, 30, delivered), field).Contains("fertilizer-nitrogen-on-legume")
        );
        Assert.DoesNotContain("fertilizer-nitrogen-on-legume", Codes(Balance(PlantNutrient.Potash, 30, delivered), field));
    }

    [Theory]
    [InlineData(PlantNutrient.Nitrogen, 20, false)]
    [InlineData(PlantNutrient.Nitrogen, 20.1, true)]
    [InlineData(PlantNutrient.Phosphate, 20.1, true)]
    [InlineData(PlantNutrient.Potash, 20.1, true)]
    [InlineData(PlantNutrient.Sulfur, 50, false)]
    public void More_than_twenty_pounds_of_what_nobody_asked_for_is_a_warning(
        PlantNutrient nutrient,
        double delivered,
        bool isSaid
    )
    {
        Assert.Equal(isSaid, Codes(Balance(nutrient, 0, delivered)).Contains("fertilizer-unneeded"));
        Assert.DoesNotContain("fertilizer-unneeded", Codes(Balance(nutrient, 0.1, delivered)));
    }

    [Theory]
    [InlineData(0, 0.1, true)]
    [InlineData(0, 0, false)]
    [InlineData(1, 20, false)]
    public void Any_phosphate_where_none_is_needed_is_a_warning(double need, double delivered, bool isSaid) =>
        Assert.Equal(isSaid, Codes(Balance(PlantNutrient.Phosphate, need, delivered)).Contains("fertilizer-phosphate-unneeded"));

    [Theory]
    [InlineData(40, "fertilizer-nitrogen-along")]
    [InlineData(30, "fertilizer-nitrogen-along")]
    [InlineData(29.9, "fertilizer-unneeded")]
    public void Nitrogen_that_the_season_needs_comes_along(double season, string code)
    {
        var field = new FieldConditions { SeasonNitrogen = ApplicationRate.FromPoundsPerAcre(season) };
        Assert.Equal([code], Codes(Balance(PlantNutrient.Nitrogen, 0, 30), field));
        Assert.Equal(["fertilizer-unneeded"], Codes(Balance(PlantNutrient.Potash, 0, 30), field));
    }

    [Fact]
    public void What_nobody_knows_the_need_of_is_neither_needed_nor_unneeded()
    {
        var field = new FieldConditions { NotKnown = [PlantNutrient.Phosphate] };
        Assert.Equal(["fertilizer-need-not-known"], Codes(Balance(PlantNutrient.Phosphate, 0, 40, isAsked: false), field));
        Assert.Empty(Codes(Balance(PlantNutrient.Phosphate, 0, 0, isAsked: false), field));
        Assert.Equal(
            ["fertilizer-phosphate-unneeded", "fertilizer-unneeded"],
            Codes(Balance(PlantNutrient.Phosphate, 0, 40), field)
        );
        Assert.Equal(["fertilizer-unneeded"], Codes(Balance(PlantNutrient.Potash, 0, 40, isAsked: false), field));
    }

    [Theory]
    [InlineData(0, null)]
    [InlineData(0.1, "fertilizer-boron-narrow")]
    [InlineData(3, "fertilizer-boron-narrow")]
    [InlineData(3.1, "fertilizer-boron-toxic")]
    public void Boron_is_never_spread_without_a_word(double delivered, string? code) =>
        Assert.Equal(code, Codes(Balance(PlantNutrient.Boron, 1, delivered)).SingleOrDefault());

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Without_a_soil_test_no_rate_can_be_judged(bool hasTest)
    {
        string[] codes = Codes(Balance(PlantNutrient.Potash, 40, 40), new FieldConditions { HasSoilTest = hasTest });
        Assert.Equal(!hasTest, codes.Contains("fertilizer-no-soil-test"));
    }

    /// <summary>A quarter more, or 10 lb, whichever is more; where none is needed 20 lb.</summary>
    [Theory]
    [InlineData(PlantNutrient.Potash, 60, 75)]
    [InlineData(PlantNutrient.Phosphate, 40, 50)]
    [InlineData(PlantNutrient.Phosphate, 20, 30)]
    [InlineData(PlantNutrient.Phosphate, 0, 20)]
    public void Phosphate_and_potash_may_go_so_far_above_a_need(PlantNutrient nutrient, double need, double most)
    {
        Assert.Equal(most, OverNeed.NearEnough(nutrient, ApplicationRate.FromPoundsPerAcre(need))!.Value.PoundsPerAcre, 1e-9);
        Assert.False(OverNeed.IsOver(Balance(nutrient, need, most)));
        Assert.True(OverNeed.IsOver(Balance(nutrient, need, most + 0.1)));
        Assert.False(OverNeed.IsOver(Balance(nutrient, need, most + 0.1, isAsked: false)));
    }

    [Fact]
    public void Nitrogen_has_its_own_rules_above_a_need()
    {
        Assert.Null(OverNeed.NearEnough(PlantNutrient.Nitrogen, ApplicationRate.Zero));
        Assert.False(OverNeed.IsOver(Balance(PlantNutrient.Nitrogen, 10, 400)));
    }

    [Fact]
    public void A_limit_that_was_stated_lower_is_kept()
    {
        var limited = OverNeed.Limited(FertilizerShelfTests.Need(30, 60, 60, mostPhosphate: 65, mostPotash: 90));
        Assert.Equal([null, 65.0, 75.0], limited.Targets.Select(t => t.AtMost?.PoundsPerAcre));
    }

    [Fact]
    public void Only_phosphate_harms_water()
    {
        Assert.Contains("harms water", OverNeed.Told(Balance(PlantNutrient.Phosphate, 40, 90)).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("harms water", OverNeed.Told(Balance(PlantNutrient.Potash, 40, 90)).Text, StringComparison.Ordinal);
    }
}
