using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Blends;

public class BlendTests
{
    private static BlendComponent Oats => SampleBlends.Broadcast("oats-spring", 100, 16_000);

    private static BlendComponent Ladino => SampleBlends.Broadcast("ladino-clover", 5, 776_000);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_share_must_be_a_number_above_zero(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromSharesOfFullStand((Oats, share)));

    [Fact]
    public void A_tiny_share_is_still_a_share() => Assert.Equal(1e-9, Blend.FromSharesOfFullStand((Oats, 1e-9)).StandTotal.Chosen, 1e-20);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void A_factor_or_total_must_be_above_zero(double number)
    {
        var blend = Blend.FromSharesOfFullStand((Oats, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => blend.Times(number));
        Assert.Throws<ArgumentOutOfRangeException>(() => blend.AtStandTotal(number));
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromSeedShares(number, (Oats, Fraction.One)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Oats with { SeedsPerPound = number });
    }

    [Fact]
    public void Areas_and_weights_of_zero_are_refused()
    {
        var blend = Blend.FromSharesOfFullStand((Oats, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => blend.WeighFor(Area.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => blend.WeighFor(Area.FromAcres(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => blend.WeighBatch(default));
        Assert.Throws<ArgumentOutOfRangeException>(() => blend.WeighFor(Area.FromAcres(1)).RoundUpTo(Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromBatch(Area.Zero, (Oats, BulkSeedMass.FromPounds(1))));
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromBatch(Area.FromAcres(1), (Oats, default)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromWeightShares(ApplicationRate.Zero, (Oats, Fraction.One)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromTag(ApplicationRate.Zero, (Oats, Fraction.One)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromLiveRates((Oats, PureLiveSeedRate.BroadcastPoundsPerAcre(0))));
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromBulkRates((Oats, BulkSeedRate.BroadcastPoundsPerAcre(0))));
    }

    [Fact]
    public void Purity_and_viability_of_zero_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Oats with { Purity = Fraction.Zero });
        Assert.Throws<ArgumentOutOfRangeException>(() => Oats with { Viability = Fraction.Zero });
    }

    [Fact]
    public void A_blend_needs_a_kind_and_each_kind_once()
    {
        Assert.Throws<ArgumentException>(() => Blend.FromSharesOfFullStand());
        Assert.Throws<ArgumentException>(() => Blend.FromSharesOfFullStand(SowingMethod.Broadcast));
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromSharesOfFullStand((SowingMethod)9, KindShare.FromShare(Oats.Kind, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromSharesOfFullStand(SowingMethod.Drilled, KindShare.FromShare(Oats.Kind, 0)));
        Assert.Throws<ArgumentException>(() => Blend.FromSharesOfFullStand((Oats, 0.5), (Oats, 0.5)));
    }

    [Theory]
    [InlineData(60, 39.99)]
    [InlineData(60, 40.01)]
    public void Shares_of_weight_or_seeds_must_sum_to_one(double first, double second)
    {
        Assert.Throws<ArgumentException>(() => Blend.FromSeedShares(30, (Oats, Fraction.FromPercent(first)), (Ladino, Fraction.FromPercent(second))));
        Assert.Throws<ArgumentException>(() => Blend.FromWeightShares(ApplicationRate.FromPoundsPerAcre(50), (Oats, Fraction.FromPercent(first)), (Ladino, Fraction.FromPercent(second))));
    }

    [Fact]
    public void A_tag_holds_at_most_the_whole_bag()
    {
        var rate = ApplicationRate.FromPoundsPerAcre(50);
        Assert.Equal(1, Blend.FromTag(rate, (Oats, Fraction.FromPercent(90)), (Ladino, Fraction.FromPercent(10))).PureLiveSeed.Value, 1e-12);
        Assert.Throws<ArgumentException>(() => Blend.FromTag(rate, (Oats, Fraction.FromPercent(90)), (Ladino, Fraction.FromPercent(10.1))));
    }

    [Fact]
    public void A_drilled_rate_has_no_share_of_a_broadcast_stand()
    {
        Assert.Throws<ArgumentException>(() => Blend.FromLiveRates((Oats, PureLiveSeedRate.DrilledPoundsPerAcre(50))));
        Assert.Throws<ArgumentException>(() => Blend.FromBulkRates((Oats, BulkSeedRate.DrilledPoundsPerAcre(50))));
    }

    [Fact]
    public void A_home_scale_reading_is_less_the_pail()
    {
        var blend = Blend.FromHomeScale(Area.FromAcres(0.5), Mass.FromOunces(24), (Oats, Mass.FromPounds(21.5)), (Ladino, Mass.FromOunces(44)));

        Assert.Equal(40, blend.Parts[0].BulkRate.PoundsPerAcre, 1e-9);
        Assert.Equal(2.5, blend.Parts[1].BulkRate.PoundsPerAcre, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.FromHomeScale(Area.FromAcres(0.5), Mass.FromOunces(24), (Oats, Mass.FromOunces(24))));
    }

    [Fact]
    public void Seed_without_a_tag_is_counted_alive_and_said_so()
    {
        var untagged = Blend.FromSharesOfFullStand((Oats, 0.5));
        var tagged = Blend.FromSharesOfFullStand((Oats.Tagged(98, 90), 0.5));

        Assert.Contains(untagged.Findings, f => f.Code == "blend-lot-unknown");
        Assert.DoesNotContain(tagged.Findings, f => f.Code == "blend-lot-unknown");
        Assert.Equal(50, untagged.BulkRate.PoundsPerAcre, 1e-12);
        Assert.Equal(50 / 0.882, tagged.BulkRate.PoundsPerAcre, 1e-12);
    }

    [Fact]
    public void Kinds_sown_in_different_ways_are_passes_of_their_own()
    {
        var blend = Blend.FromSharesOfFullStand((SampleBlends.Drilled("oats-spring", 70, 16_000), 0.4), (Ladino, 0.6));
        Assert.Contains(blend.Findings, f => f.Code == "blend-methods-differ");
    }

    [Fact]
    public void Weights_rounded_up_to_the_scale_say_what_the_blend_then_is()
    {
        var blend = Blend.FromSharesOfFullStand((Oats, 0.4), (Ladino, 0.6));
        var weighed = blend.WeighFor(Area.FromAcres(0.33)).RoundUpTo(Mass.FromPounds(0.25));

        Assert.Equal(13.25, weighed.Lines[0].Weight.Pounds, 1e-12);
        Assert.Equal(1.0, weighed.Lines[1].Weight.Pounds, 1e-12);
        Assert.Equal(13.25 / 0.33 / 100, weighed.Blend.Parts[0].ShareOfFullStand.Chosen, 1e-12);
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Working_and_findings_print_alike_everywhere(string culture)
    {
        var blend = SampleBlends.TurnipRapeRadish();
        string work = string.Join("\n", blend.ShowWork()), findings = string.Join("\n", CrowdingReport.For(blend).Findings);
        using (new CultureScope(culture))
        {
            Assert.Equal(work, string.Join("\n", blend.ShowWork()));
            Assert.Equal(findings, string.Join("\n", CrowdingReport.For(blend).Findings));
            Assert.Contains("26.3 live seeds", findings, StringComparison.Ordinal);
            Assert.Equal("1.5 full stands (1.4-2.82 over the published full rates)", blend.StandTotal.ToString());
        }
    }

    [Fact]
    public void Five_percent_of_timothy_by_weight_is_over_a_fifth_by_number()
    {
        // Establishing Pasture and the Deception of Forage Mixture Labels, Alberta Ag-Info Centre, 2014; seed counts West Virginia University Extension, 1994.
        var timothy = SampleBlends.Drilled("timothy", 9, 1_230_000);
        var alfalfa = SampleBlends.Drilled("alfalfa", 17.5, 200_000);
        var blend = Blend.FromWeightShares(ApplicationRate.FromPoundsPerAcre(15), (timothy, Fraction.FromPercent(5)), (alfalfa, Fraction.FromPercent(95)));
        Assert.True(blend.Parts[0].ShareOfLiveSeeds.Percent > 20);
    }

    [Fact]
    public void A_whole_tag_is_read_like_its_parts()
    {
        static TagComponent Named(string id, double pure, double germination) => new() { Kind = SampleBlends.Kind(id), Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(pure), Fraction.FromPercent(germination)) };
        var tag = new SeedTag { Components = [Named("oats-spring", 90, 90), Named("purple-top-turnip", 8, 85)], Inert = Fraction.FromPercent(2), IsTreated = true };
        var blend = Blend.FromTag(tag, ApplicationRate.FromPoundsPerAcre(40), SowingMethod.Broadcast);

        // By hand: 40 x 0.90 x 0.90 and 40 x 0.08 x 0.85 lb live; broadcast full rates 90 (as drilled; two print 80-150) and 3 lb/ac.
        Assert.Equal(32.4 / 90, blend.Parts[0].ShareOfFullStand.Chosen, 1e-12);
        Assert.Equal(2.72 / 3, blend.Parts[1].ShareOfFullStand.Chosen, 1e-12);
        Assert.Equal(40, blend.BulkRate.PoundsPerAcre, 1e-12);
        Assert.All(blend.Parts, p => Assert.True(p.Component.IsTreated));
    }

    [Fact]
    public void Figures_from_memory_are_said_once_for_the_whole_blend()
    {
        var blend = Blend.FromSharesOfFullStand([.. new[] { "balansa-clover", "austrian-winter-pea", "triticale" }.Select(id => (BlendComponent.FromKind(SampleBlends.Kind(id), SowingMethod.Drilled), 0.3))]);
        Assert.Single(blend.Findings, f => f.Code == "data-from-memory" && f.Text.Contains("seed counts", StringComparison.Ordinal));
    }
}
