using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Blends;

public class CrowdingTests
{
    private static string[] CodesOf(Blend blend, params KindShare[] standing) => [.. CrowdingReport.For(blend, standing).Findings.Select(f => f.Code)];

    private static BlendComponent Of(string id) => BlendComponent.FromKind(SampleBlends.Kind(id), SowingMethod.Broadcast);

    [Theory]
    [InlineData(0.24, "")]
    [InlineData(0.25, "")]
    [InlineData(0.26, "blend-group-near-cap")]
    [InlineData(0.30, "blend-group-near-cap")]
    [InlineData(0.31, "blend-group-over-cap")]
    public void Brassicas_have_a_cap_beside_clover_that_must_live_on(double share, string code)
    {
        var blend = Blend.FromSharesOfFullStand((Of("ladino-clover"), 0.6), (Of("rape-dwarf-essex"), share / 2), (Of("purple-top-turnip"), share / 2));
        Assert.Equal(code.Length > 0 ? [code] : [], CodesOf(blend).Where(c => c.StartsWith("blend-group", StringComparison.Ordinal)));
    }

    // Computed: annual ryegrass 4 of 38 lb = 10.5 % of the weight, 896,000 of 1,769,440 = 50.6 % of the seeds. Limits: practice.
    [Fact]
    public void A_kind_with_half_of_the_seedlings_and_a_tenth_of_the_weight_is_told_among_annuals_too()
    {
        var bag = Blend.FromLiveRates(
            (SampleBlends.Broadcast("cereal-rye", 120, 18_160), SampleBlends.LiveBroadcast(22)),
            (SampleBlends.Broadcast("hairy-vetch", 25, 16_000), SampleBlends.LiveBroadcast(10)),
            (SampleBlends.Broadcast("annual-ryegrass", 25, 224_000), SampleBlends.LiveBroadcast(4)),
            (SampleBlends.Broadcast("rape-dwarf-essex", 6, 156_960), SampleBlends.LiveBroadcast(2)));
        var told = Assert.Single(CrowdingReport.For(bag).Findings, f => f.Code == "blend-many-seedlings");
        Assert.Contains("annual ryegrass", told.Text, StringComparison.Ordinal);
        Assert.Contains("51 %", told.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3.9, false)]
    [InlineData(4.1, true)]
    public void Two_fifths_of_the_seedlings_are_the_limit(double ryegrass, bool isTold)
    {
        // Computed: 40 % of the seeds at 4 lb of 100,000 beside 60 lb of 10,000.
        var blend = Blend.FromLiveRates(
            (SampleBlends.Broadcast("oats-spring", 100, 10_000), SampleBlends.LiveBroadcast(60)),
            (SampleBlends.Broadcast("annual-ryegrass", 25, 100_000), SampleBlends.LiveBroadcast(ryegrass)));
        Assert.Equal(isTold, CodesOf(blend).Contains("blend-many-seedlings"));
    }

    [Fact]
    public void An_all_brassica_plot_is_normal()
    {
        var blend = Blend.FromSharesOfFullStand((Of("rape-dwarf-essex"), 0.4), (Of("purple-top-turnip"), 0.4), (Of("daikon-radish"), 0.2));
        Assert.DoesNotContain(CodesOf(blend), c => c.StartsWith("blend-group", StringComparison.Ordinal));
        Assert.False(Assert.Single(CrowdingReport.For(blend).Groups).Applies);
    }

    [Fact]
    public void Clover_that_stands_already_brings_the_cap()
    {
        var blend = Blend.FromSharesOfFullStand((Of("rape-dwarf-essex"), 0.4));
        Assert.DoesNotContain("blend-group-over-cap", CodesOf(blend));
        Assert.Contains("blend-group-over-cap", CodesOf(blend, KindShare.FromShare(SampleBlends.Kind("ladino-clover"), 0.5)));
    }

    [Fact]
    public void Rape_that_stands_already_counts_in_its_group()
    {
        var blend = Blend.FromSharesOfFullStand((Of("ladino-clover"), 0.6), (Of("purple-top-turnip"), 0.2));
        Assert.Contains("blend-group-over-cap", CodesOf(blend, KindShare.FromShare(SampleBlends.Kind("rape-dwarf-essex"), 0.2)));
    }

    [Fact]
    public void The_user_says_what_must_live_on()
    {
        var annual = Of("crimson-clover");
        Assert.DoesNotContain("blend-group-over-cap", CodesOf(Blend.FromSharesOfFullStand((annual, 0.5), (Of("annual-ryegrass"), 0.4))));
        Assert.Contains("blend-group-over-cap", CodesOf(Blend.FromSharesOfFullStand((annual with { MustLiveOn = true }, 0.5), (Of("annual-ryegrass"), 0.4))));
    }

    [Theory]
    [InlineData(2, 1.25, false)]
    [InlineData(2, 1.26, true)]
    [InlineData(4, 1.50, false)]
    [InlineData(4, 1.51, true)]
    public void More_kinds_may_stand_closer(int kinds, double total, bool crowded)
    {
        string[] ids = ["oats-spring", "crimson-clover", "austrian-winter-pea", "winter-wheat"];
        var blend = Blend.FromSharesOfFullStand([.. ids.Take(kinds).Select(id => (Of(id), total / kinds))]);
        Assert.Equal(crowded, CodesOf(blend).Contains("blend-crowded"));
    }

    [Fact]
    public void One_kind_is_crowded_above_its_own_full_rate()
    {
        Assert.DoesNotContain(CodesOf(Blend.FromSharesOfFullStand((Of("oats-spring"), 1))), c => c.StartsWith("blend-crowded", StringComparison.Ordinal));
        Assert.Contains("blend-crowded", CodesOf(Blend.FromSharesOfFullStand((Of("oats-spring"), 1.01))));
        Assert.Contains("blend-crowded-at-every-rate", CodesOf(Blend.FromSharesOfFullStand((Of("oats-spring"), 1.7))));
    }

    [Fact]
    public void Five_kinds_with_slow_perennials_are_many()
    {
        (BlendComponent, double)[] kinds = [(Of("ladino-clover"), 0.2), (Of("medium-red-clover"), 0.2), (Of("chicory"), 0.2), (Of("oats-spring"), 0.2), (Of("alfalfa"), 0.2)];
        Assert.DoesNotContain("blend-many-kinds", CodesOf(Blend.FromSharesOfFullStand([.. kinds.Take(4)])));
        Assert.Contains("blend-many-kinds", CodesOf(Blend.FromSharesOfFullStand(kinds)));
    }

    [Theory]
    [InlineData("purple-top-turnip", 20, false)]
    [InlineData("purple-top-turnip", 20.1, true)]
    [InlineData("austrian-winter-pea", 6, false)]
    [InlineData("austrian-winter-pea", 6.1, true)]
    [InlineData("chicory", 60, false)]
    [InlineData("chicory", 60.1, true)]
    [InlineData("ladino-clover", 80, false)]
    [InlineData("ladino-clover", 80.1, true)]
    public void A_stand_has_a_densest_sowing(string id, double seeds, bool tooDense) =>
        Assert.Equal(tooDense, CodesOf(Blend.FromSeedShares(seeds, (Of(id), Fraction.One))).Contains("blend-too-dense"));

    [Fact]
    public void A_full_rate_of_the_users_own_outside_the_range_is_said()
    {
        var outside = BlendComponent.FromKind(SampleBlends.Kind("ladino-clover"), SampleBlends.LiveBroadcast(8.1));
        var inside = BlendComponent.FromKind(SampleBlends.Kind("ladino-clover"), SampleBlends.LiveBroadcast(8));
        Assert.Contains(Blend.FromSharesOfFullStand((outside, 0.5)).Findings, f => f.Code == "blend-own-full-rate");
        Assert.DoesNotContain(Blend.FromSharesOfFullStand((inside, 0.5)).Findings, f => f.Code == "blend-own-full-rate");
    }

    [Fact]
    public void Targets_of_a_kind_are_found()
    {
        Assert.Equal([35.0, 30, 30, 40], DensityTarget.For(SampleBlends.Kind("winter-wheat")).Select(t => t.LowPerSquareFoot));
        Assert.Equal(27, DensityTarget.For(SampleBlends.Kind("cereal-rye"))[0].HighPerSquareFoot);
        Assert.StartsWith("27 per ft2: ", DensityTarget.For(SampleBlends.Kind("cereal-rye"))[0].ToString(), StringComparison.Ordinal);
    }
}
