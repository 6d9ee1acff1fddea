using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

public class LimeTargetTests
{
    private static CropKind Kind(string id) => KindCatalog.Standard.Kinds.Single(k => k.Id == id);

    [Theory]
    // Tri-state E-2567 (1995), Agronomy Guide (Penn State), Iowa 2019, Oklahoma PSS-2229, Wisconsin A2809 and the forage page of Kentucky.
    [InlineData("alfalfa", "Ohio/Indiana/Michigan 1995", false, 6.5)]
    [InlineData("alfalfa", "Ohio/Indiana/Michigan 1995", true, 6.8)]
    [InlineData("ladino-clover", "Ohio/Indiana/Michigan 1995", false, 6.0)]
    [InlineData("ladino-clover", "Ohio/Indiana/Michigan 1995", true, 6.8)]
    [InlineData("corn", "Ohio/Indiana/Michigan 1995", true, 6.5)]
    [InlineData("birdsfoot-trefoil", "Ohio/Indiana/Michigan 1995", true, 6.0)]
    [InlineData("alfalfa", "Pennsylvania", false, 7.0)]
    [InlineData("corn", "Pennsylvania", false, 6.5)]
    [InlineData("corn", "Iowa", true, 6.5)]
    [InlineData("buckwheat", "Oklahoma", false, 5.0)]
    [InlineData("cereal-rye", "Wisconsin", false, 5.6)]
    [InlineData("ladino-clover", "Kentucky", false, 6.4)]
    public void An_institutions_target_is_its_own(string kind, string institution, bool acidSubsoil, double ph) =>
        Assert.Equal(ph, LimeTarget.For(Kind(kind), Institution.Find(institution), SoilClass.Mineral, acidSubsoil).Ph!.Value, 1e-9);

    [Fact]
    public void Organic_soil_asks_for_less()
    {
        Assert.Equal(5.3, LimeTarget.For(Kind("alfalfa"), Institution.Find("Ohio/Indiana/Michigan 1995"), SoilClass.Organic).Ph!.Value);
        Assert.Equal(5.5, LimeTarget.For(Kind("ladino-clover"), Institution.Find("North Carolina"), SoilClass.MineralOrganic).Ph!.Value);
    }

    [Fact]
    public void The_most_demanding_kind_above_the_share_sets_the_target_of_a_blend()
    {
        KindShare[] blend = [KindShare.FromShare(Kind("alfalfa"), 0.09), KindShare.FromShare(Kind("ladino-clover"), 0.5), KindShare.FromShare(Kind("cereal-rye"), 0.4)];
        var target = LimeTarget.ForBlend(blend, Institution.Find("Wisconsin"));
        Assert.Equal("ladino-clover", target.SetBy!.Id);
        Assert.Equal(Kind("ladino-clover").Ph!.BestPhFrom, target.Ph);
        Assert.Equal(6.8, LimeTarget.ForBlend(blend, Institution.Find("Wisconsin"), smallestShare: 0.09).Ph!.Value);
        Assert.Equal("alfalfa", LimeTarget.ForBlend(blend, Institution.Find("Wisconsin"), smallestShare: 0.09).SetBy!.Id);
        Assert.True(target.Has("data-from-memory"));
    }

    [Fact]
    public void Kinds_that_do_not_stand_the_target_are_shown()
    {
        var sour = Kind("buckwheat") with { Ph = new PhTolerance { MinimumPh = 4.5, BestPhFrom = 5, BestPhTo = 6, MaximumPh = 6.5, Evidence = Kind("buckwheat").Ph!.Evidence } };
        var target = LimeTarget.ForBlend([KindShare.FromShare(Kind("alfalfa"), 0.5), KindShare.FromShare(sour, 0.3)], Institution.Find("Pennsylvania"));
        Assert.Equal(7.0, target.Ph);
        Assert.Equal(["buckwheat"], target.OutsideTheirRange.Select(k => k.Id));
        Assert.True(target.Has("lime-target-wide"));
    }

    [Fact]
    public void A_kind_the_institution_does_not_print_falls_back_on_its_own_sources()
    {
        var target = LimeTarget.For(Kind("chicory"), Institution.Find("Iowa"));
        Assert.Equal(Kind("chicory").Ph!.BestPhFrom, target.Ph);
        Assert.True(target.Has("lime-target-not-known"));
        // Chicory: the lower limit was read, the band to aim for is remembered. Crimson clover: both were read.
        Assert.True(target.Has("data-from-memory"));
        Assert.False(LimeTarget.For(Kind("crimson-clover"), Institution.Find("Iowa")).Has("data-from-memory"));
        Assert.Null(LimeTarget.For(Kind("chicory") with { Ph = null }, Institution.Find("Iowa")).Ph);
    }

    [Fact]
    public void A_range_an_old_edition_and_a_kind_without_a_row_say_so()
    {
        var range = LimeTarget.For(Kind("barley"), Institution.Find("Oklahoma"));
        Assert.Contains("a range of pH 6.3 to 7", range.Findings.Single(f => f.Code == "lime-target-from-range").Text, StringComparison.Ordinal);
        Assert.True(LimeTarget.For(Kind("alfalfa"), Institution.Find("Ohio/Indiana/Michigan 1995")).Has("lime-target-superseded"));
        Assert.True(LimeTarget.For(Kind("alfalfa"), Institution.Find("Oregon")).Has("lime-target-superseded"));
        Assert.False(LimeTarget.For(Kind("alfalfa"), Institution.Find("Pennsylvania")).Has("lime-target-superseded"));
        Assert.False(LimeTarget.For(Kind("alfalfa"), Institution.Find("Pennsylvania")).Has("lime-target-from-range"));
        Assert.Contains("has no say", LimeTarget.For(Kind("chicory") with { Ph = null }, Institution.Find("Iowa")).Findings.Single().Text, StringComparison.Ordinal);
    }
}
