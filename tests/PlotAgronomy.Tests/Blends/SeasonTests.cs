using FsCheck.Xunit;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Blends;

[Properties(Arbitrary = [typeof(PlotArbitraries), typeof(BlendArbitraries)])]
public class SeasonTests
{
    private static KindShare Share(string id, double share) => KindShare.FromShare(SampleBlends.Kind(id), share);

    [Theory]
    [InlineData(0.24, false)]
    [InlineData(0.25, true)]
    [InlineData(0.26, true)]
    public void A_season_is_covered_from_a_quarter_of_a_full_stand(double share, bool covered) =>
        Assert.Equal(covered, SeasonCoverage.For([Share("oats-winter", share)]).Covers(SeasonOfUse.LateWinter));

    [Fact]
    public void Shares_of_kinds_rated_high_or_medium_add_up_and_low_ones_do_not()
    {
        // Oats: high in mid fall. Turnip: high in mid fall. Balansa: low in late winter.
        var coverage = SeasonCoverage.For([Share("oats-spring", 0.15), Share("purple-top-turnip", 0.10), Share("balansa-clover", 1)]);

        Assert.True(coverage.Covers(SeasonOfUse.MidFall));
        Assert.Equal(0.25, coverage.Seasons[(int)SeasonOfUse.MidFall].Share, 1e-12);
        Assert.Equal(0.15 + 0.10 + 1, coverage.Seasons.Sum(s => s.Season is SeasonOfUse.MidFall or SeasonOfUse.Spring ? s.Share : 0), 1e-12);
    }

    [Fact]
    public void Gaps_are_said_in_words()
    {
        var findings = SeasonCoverage.For([Share("purple-top-turnip", 0.8), Share("oats-spring", 0.1)]).Findings;

        Assert.Contains(findings, f => f.Code == "blend-season-bare" && f.Text.Contains("summer (June to August)", StringComparison.Ordinal));
        Assert.Contains(findings, f => f.Code == "blend-season-thin" && f.Text.Contains("early fall", StringComparison.Ordinal) && f.Text.Contains("0.1 of a full stand", StringComparison.Ordinal));
        Assert.DoesNotContain(findings, f => f.Code == "data-from-memory");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void The_share_wanted_must_be_a_part_of_a_stand(double wanted) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SeasonCoverage.For([Share("oats-spring", 1)], wanted));

    [Fact]
    public void A_diverse_blend_covers_more_seasons_than_any_of_its_members()
    {
        // Common practice: grain for fall, brassica for winter, clover for spring and summer, each at a third of a stand, beside each member as a full stand.
        string[] members = ["oats-winter", "rape-dwarf-essex", "medium-red-clover"];
        var blend = SeasonCoverage.For(members.Select(id => Share(id, 1.0 / 3)));
        Assert.All(members, id => Assert.True(blend.Covered > SeasonCoverage.For([Share(id, 1)]).Covered));
    }

    [Fact]
    public void The_best_added_kind_fills_most_gaps()
    {
        var turnips = SeasonCoverage.For([Share("purple-top-turnip", 0.6), Share("rape-dwarf-essex", 0.4)]);
        var best = turnips.BestAdditions(KindCatalog.Standard.Kinds, 0.25);

        Assert.Equal(2, turnips.Covered);
        Assert.Equal(5, best[0].After.Covered);
        Assert.All(best[0].SeasonsGained, s => Assert.True(best[0].Added.Kind.Seasons!.In(s) >= UseRating.Medium));
        Assert.True(best.Zip(best.Skip(1)).All(x => x.First.SeasonsGained.Length >= x.Second.SeasonsGained.Length));
        Assert.DoesNotContain(best, a => a.Added.Kind.Id == "switchgrass");
    }

    [Property]
    public bool Adding_a_kind_never_uncovers_a_season(BlendSketch sketch, Fraction share, int which)
    {
        var kinds = KindCatalog.Standard.Kinds;
        var added = KindShare.FromShare(kinds[(int)((uint)which % kinds.Count)], share.Value);
        var before = SeasonCoverage.For(sketch.Blend);
        var after = SeasonCoverage.For(sketch.Blend, added);
        return before.Seasons.Zip(after.Seasons).All(x => !x.First.IsCovered || x.Second.IsCovered) && after.Lacking <= before.Lacking + 1e-12;
    }

    [Property]
    public bool Coverage_does_not_depend_on_order(BlendSketch sketch) =>
        SeasonCoverage.For(sketch.Blend.KindShares).Seasons.Select(s => s.IsCovered).SequenceEqual(SeasonCoverage.For(sketch.Blend.KindShares.Reverse()).Seasons.Select(s => s.IsCovered));

    [Property]
    public bool The_first_addition_is_as_good_as_the_best_found_by_trying_all(BlendSketch sketch)
    {
        var coverage = SeasonCoverage.For(sketch.Blend);
        int bestByTrying = KindCatalog.Standard.Kinds.Where(k => k.Seasons is not null).Max(k => SeasonCoverage.For(sketch.Blend, KindShare.FromShare(k, 0.25)).Covered);
        var best = coverage.BestAdditions(KindCatalog.Standard.Kinds, 0.25);
        return best.IsEmpty ? bestByTrying == coverage.Covered : best[0].After.Covered == bestByTrying;
    }

    [Fact]
    public void One_kind_is_even_by_definition()
    {
        var one = Diversity.For(Blend.FromSharesOfFullStand((SampleBlends.Broadcast("oats-spring", 100, 16_000), 0.5)), BlendMeasure.Stand);
        Assert.Equal(1, one.Evenness);
        Assert.Equal(0, one.Shannon);
        Assert.Equal(1, one.EffectiveKinds);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void Equal_shares_are_as_diverse_as_their_number(int kinds)
    {
        string[] ids = ["oats-spring", "cereal-rye", "winter-wheat", "barley"];
        var blend = Blend.FromSharesOfFullStand([.. ids.Take(kinds).Select(id => (BlendComponent.FromKind(SampleBlends.Kind(id), SowingMethod.Broadcast), 0.25))]);
        var diversity = Diversity.For(blend, BlendMeasure.Stand);
        Assert.Equal(Math.Log(kinds), diversity.Shannon, 1e-12);
        Assert.Equal(1.0 - 1.0 / kinds, diversity.Simpson, 1e-12);
        Assert.Equal(kinds, diversity.EffectiveKinds, 1e-12);
    }

    [Fact]
    public void The_indices_of_diversity_are_the_sums_of_their_terms()
    {
        var blend = SampleBlends.FallFour();
        double shannon = 0, oneKind = 0;
        foreach (double q in blend.Parts.Select(p => p.ShareOfStand.Value))
        {
            shannon += BlendMath.ShannonTerm(q);
            oneKind += BlendMath.SimpsonTerm(q);
        }

        var diversity = Diversity.For(blend, BlendMeasure.Stand);
        Assert.Equal(shannon, diversity.Shannon, 1e-12);
        Assert.Equal(1 - oneKind, diversity.Simpson, 1e-12);
        Assert.Equal(0, BlendMath.ShannonTerm(0));
    }

    [Fact]
    public void The_working_of_diversity_shows_a_term_for_each_kind_and_their_sum()
    {
        string[] work = [.. Diversity.For(SampleBlends.FallFour(), BlendMeasure.Stand).ShowWork().Select(l => l.ToString())];
        Assert.Equal(4, work.Count(l => l.Contains("term of Shannon", StringComparison.Ordinal)));
        Assert.Contains(work, l => l.StartsWith("Shannon = sum over the kinds = ", StringComparison.Ordinal));
        Assert.Contains(work, l => l.StartsWith("Evenness = Shannon / ln(kinds) = ", StringComparison.Ordinal));
        Assert.Equal(9, work.Length - work.Count(l => l.Contains("both of it", StringComparison.Ordinal)));
    }
}
