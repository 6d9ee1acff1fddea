using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>How a season's nitrogen is parted, what is taken out of a dressing, and which rule a mixture follows.</summary>
public class NitrogenDressingTests
{
    private static ApplicationRate Rate(double pounds) => ApplicationRate.FromPoundsPerAcre(pounds);

    [Theory]
    [InlineData(10, 20, 20, 40)]
    [InlineData(30, 60, 0, 0)]
    [InlineData(31, 61, 0, 0)]
    [InlineData(0, 0, 30, 60)]
    public void A_dressing_holds_less_by_what_is_taken_out_and_never_less_than_nothing(
        double low,
        double high,
        double leftLow,
        double leftHigh
    )
    {
        var dose = NitrogenRule.Find("grass-clover").Answer().Doses[0];
        var full = new NitrogenDose(Rate(30), Rate(60), dose.Time, dose.When, dose.Source);
        var left = full.Less(low, high);
        Assert.Equal(leftLow, left.Low.PoundsPerAcre);
        Assert.Equal(leftHigh, left.High.PoundsPerAcre);
        Assert.Equal((full.Time, full.When), (left.Time, left.When));
    }

    [Theory]
    [InlineData(39.9, true)]
    [InlineData(40, false)]
    [InlineData(41, false)]
    public void Where_nothing_is_left_to_spread_there_is_no_dressing(double reduction, bool spreads) =>
        // SOIL-MS1: 30 to 40 lb in two dressings.
        Assert.Equal(
            spreads ? 2 : 0,
            NitrogenRule.Find("mississippi-grain-plot").Answer(reduction: Rate(reduction)).Doses.Length
        );

    [Fact]
    public void A_fixed_part_and_the_rest_make_the_whole()
    {
        // SOIL-SC3: 30 lb at planting, the rest of 90 in February; of 25 that are left, 25 and none.
        var rule = NitrogenRule.Find("south-carolina-small-grain");
        double[] Parts(double reduction) => [.. rule.Answer(reduction: Rate(reduction)).Doses.Select(d => d.High.PoundsPerAcre)];
        Assert.Equal([30, 60], Parts(0));
        Assert.Equal([25, 0], Parts(65));
    }

    [Fact]
    public void A_crop_with_legumes_follows_the_rule_that_is_printed_for_the_mixture()
    {
        Assert.Equal("chicory-with-clover", NitrogenRule.Find("chicory").WithLegumes?.Id);
        Assert.Null(NitrogenRule.Find("oklahoma-wheat").WithLegumes);
        Assert.True(NitrogenRule.Find("chicory-with-clover").IsForMixture);
        Assert.False(NitrogenRule.Find("chicory").IsForMixture);
    }

    [Theory]
    [InlineData("kansas-alfalfa", LegumeStand.Existing, "a legume that grew before")]
    [InlineData("tennessee-clover-in-grass", LegumeStand.Earlier, "a legume that stands")]
    public void A_credit_that_does_not_fit_says_what_it_is_for(string id, LegumeStand stand, string legume)
    {
        var refused = Assert.Throws<ArgumentException>(() => LegumeCredit.Find(id).For(stand));
        Assert.Equal("stand", refused.ParamName);
        Assert.Contains($"'{id}' is for {legume}.", refused.Message, StringComparison.Ordinal);
    }
}
