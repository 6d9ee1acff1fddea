using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Seeds;

public class PureLiveSeedTests
{
    private static readonly CropKind RedClover = KindCatalog.Standard.Find("medium red clover");

    [Fact]
    public void Practice_case_C37_coating_is_not_taken_off_twice()
    {
        var analysis = SeedAnalysis.FromFractions(Percent(65.5), Percent(80), coating: Percent(34));
        var answer = PureLiveSeed.BulkRate(PureLiveSeedRate.DrilledPoundsPerAcre(15), analysis, ViabilityRule.GerminationOnly, RedClover);

        PracticeCase.AssertMatches("C37", "PLS", answer.PureLiveSeedPart.Value);
        PracticeCase.AssertMatches("C37", "bulk", answer.Bulk.PoundsPerAcre);
        PracticeCase.AssertMatches("C37", "PLS in 15 lb bulk", PureLiveSeed.Held(BulkSeedMass.FromPounds(15), analysis, ViabilityRule.GerminationOnly).Pounds);
        Assert.NotEqual(PracticeCase.Expected("C37", "double discount").Value, answer.Bulk.PoundsPerAcre, 0.1);
        Assert.Equal(15, answer.EqualWeightRate!.Value.PoundsPerAcre);
        Assert.Contains(answer.Findings, f => f.Code == "seed-low-pure-live");
        Assert.Contains(answer.Findings, f => f.Code == "seed-coated");
    }

    [Fact]
    public void Practice_case_C39_parts_are_added_up()
    {
        var tag = new SeedTag
        {
            Components = [new() { Kind = RedClover, Analysis = SeedAnalysis.FromFractions(Percent(60), Percent(90), coating: Percent(35)) }],
            Weed = Percent(0.15),
            OtherCrop = Percent(0.35),
            Inert = Percent(35),
            Coating = Percent(35),
        };
        PracticeCase.AssertMatches("C39", "unexplained", tag.UnexplainedPercent);
        PracticeCase.AssertMatches("C39", "purity if nothing is missing", tag.Components[0].Analysis.PureSeed.Percent + tag.UnexplainedPercent);
        PracticeCase.AssertMatches("C39", "PLS, 60.0", PureLiveSeed.PartOf(tag.Components[0].Analysis, ViabilityRule.GerminationOnly).Value);
        PracticeCase.AssertMatches("C39", "PLS, 64.5", PureLiveSeed.PartOf(SeedAnalysis.FromFractions(Percent(64.5), Percent(90)), ViabilityRule.GerminationOnly).Value);
        Assert.Contains(tag.Check(), f => f.Code == "seed-tag-part-missing" && f.Text.Contains("4.5 %", StringComparison.Ordinal));
    }

    [Fact]
    public void A_published_label_that_sums_to_a_hundred_draws_no_remark_on_its_sum()
    {
        // Purchasing Seed, University of Minnesota Extension: 44 + 31 + 9 + 12 + 1.56 + 2.11 + 0.33 = 100.
        var kind = KindCatalog.Standard.Find("annual ryegrass");
        var tag = new SeedTag
        {
            Components = [.. new[] { (44.0, 85.0), (31, 80), (9, 85), (12, 90) }.Select(c => new TagComponent { Kind = kind, Analysis = SeedAnalysis.FromFractions(Percent(c.Item1), Percent(c.Item2)) })],
            OtherCrop = Percent(1.56),
            Inert = Percent(2.11),
            Weed = Percent(0.33),
        };
        Assert.Equal(100, tag.SumPercent, 1e-9);
        Assert.DoesNotContain(tag.Check(), f => f.Code.StartsWith("seed-tag", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.04, false)]
    [InlineData(0.05, false)]
    [InlineData(0.06, true)]
    [InlineData(-0.05, false)]
    [InlineData(-0.06, true)]
    public void The_sum_may_miss_a_hundred_by_a_twentieth(double missing, bool remarked)
    {
        var tag = new SeedTag { Components = [new() { Kind = RedClover, Analysis = SeedAnalysis.FromFractions(Percent(98), Percent(90)) }], Inert = Percent(2 - missing) };
        Assert.Equal(remarked, tag.Check().Any(f => f.Code.StartsWith("seed-tag", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_total_germination_that_holds_the_hard_seed_is_refused_with_the_reason()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => SeedAnalysis.FromFractions(Percent(99), Percent(92), hardSeed: Percent(10)));
        Assert.Contains("already count the hard seed", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_purity_before_coating_is_refused_as_the_tags_and_taken_by_name()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => SeedAnalysis.FromFractions(Percent(99), Percent(90), coating: Percent(34)));
        Assert.Contains(nameof(SeedAnalysis.FromPurityBeforeCoating), error.Message, StringComparison.Ordinal);
        Near.Assert(0.99 * 0.66, SeedAnalysis.FromPurityBeforeCoating(Percent(99), Percent(34), Percent(90)).PureSeed.Value);
        Near.Assert(0.5, SeedAnalysis.CoatingFromBuildUp(1).Value);
    }

    /// <summary>Hard and dormant seed stand beside germination (7 CFR 201.21), so the three can be no more than the whole.</summary>
    [Theory]
    [InlineData(80, 0, 25)]
    [InlineData(80, 25, 0)]
    [InlineData(60, 25, 25)]
    public void Parts_of_the_pure_seed_are_no_more_than_the_whole(double germination, double hard, double dormant) =>
        Assert.Equal("germination", Assert.Throws<ArgumentOutOfRangeException>(() =>
            SeedAnalysis.FromFractions(Percent(98), Percent(germination), Percent(hard), Percent(dormant))).ParamName);

    [Fact]
    public void Both_rates_are_shown_above_a_tenth_of_hard_or_dormant_seed()
    {
        var target = PureLiveSeedRate.DrilledPoundsPerAcre(8);
        Assert.False(PureLiveSeed.BulkRate(target, SeedAnalysis.FromFractions(Percent(98), Percent(80), Percent(10)), ViabilityRule.GerminationAndHard).ShowBothRates);
        var hard = PureLiveSeed.BulkRate(target, SeedAnalysis.FromFractions(Percent(98), Percent(80), Percent(10.1)), ViabilityRule.GerminationAndHard);
        Assert.True(hard.ShowBothRates);
        Assert.Contains(hard.Findings, f => f.Code == "seed-much-hard-or-dormant");
        Near.Assert(8 / (0.98 * 0.80), hard.CountingGerminationOnly!.Value.PoundsPerAcre);
        Near.Assert(8 / (0.98 * 0.901), hard.CountingHardAndDormant!.Value.PoundsPerAcre);
    }

    [Theory]
    [InlineData("hairy vetch", "germination only")]
    [InlineData("ladino", "germination + hard seed")]
    [InlineData("sweetclover", "germination + hard seed")]
    [InlineData("switchgrass", "germination + dormant seed")]
    [InlineData("orchardgrass", "germination + hard seed")]
    public void The_rule_follows_the_use(string kind, string rule) => Assert.Equal(rule, ViabilityRule.For(KindCatalog.Standard.Find(kind)).Name);

    [Fact]
    public void Rules_count_what_their_names_say()
    {
        var analysis = SeedAnalysis.FromFractions(Percent(98), Percent(70), Percent(15), Percent(5));
        Near.Assert(0.70, ViabilityRule.GerminationOnly.Viable(analysis).Value);
        Near.Assert(0.85, ViabilityRule.GerminationAndHard.Viable(analysis).Value);
        Near.Assert(0.75, ViabilityRule.GerminationAndDormant.Viable(analysis).Value);
        Near.Assert(0.90, ViabilityRule.TotalViable.Viable(analysis).Value);
        Near.Assert(0.785, ViabilityRule.Credit(0.5, 0.2).Viable(analysis).Value);
        Near.Assert(0.93, ViabilityRule.Tetrazolium(Percent(93)).Viable(analysis).Value);
        Near.Assert(0.10, analysis.Dead.Value);
        Assert.Throws<ArgumentOutOfRangeException>(() => ViabilityRule.Credit(1.01, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ViabilityRule.Credit(0, -0.01));
    }

    [Fact]
    public void A_smaller_test_leaves_a_wider_range_of_rates()
    {
        var target = PureLiveSeedRate.BroadcastPoundsPerAcre(10);
        var wide = PureLiveSeed.BulkRate(target, SeedAnalysis.FromFractions(Percent(98), Percent(80), seedsTested: 50), ViabilityRule.GerminationOnly);
        var narrow = PureLiveSeed.BulkRate(target, SeedAnalysis.FromFractions(Percent(98), Percent(80), seedsTested: 400), ViabilityRule.GerminationOnly);

        // Exact 95 % ranges for 40 of 50 and 320 of 400: 66.3-90.0 and 75.7-83.8 %.
        Assert.Equal(10 / (0.98 * 0.663), wide.BulkIfSeedIsWorse!.Value.PoundsPerAcre, 0.02);
        Assert.Equal(10 / (0.98 * 0.838), narrow.BulkIfSeedIsBetter!.Value.PoundsPerAcre, 0.02);
        Assert.True(wide.BulkIfSeedIsWorse!.Value.PoundsPerAcre > narrow.BulkIfSeedIsWorse!.Value.PoundsPerAcre);
        Assert.Contains(wide.Findings, f => f.Code == "seed-germination-range");
        Assert.Null(PureLiveSeed.BulkRate(target, SeedAnalysis.FromFractions(Percent(98), Percent(80)), ViabilityRule.GerminationOnly).BulkIfSeedIsWorse);
    }

    [Theory]
    [InlineData(79.9, true)]
    [InlineData(80, false)]
    [InlineData(80.1, false)]
    public void Germination_below_the_floor_is_remarked(double germination, bool remarked) =>
        Assert.Equal(remarked, PureLiveSeed.BulkRate(PureLiveSeedRate.DrilledPoundsPerAcre(8), SeedAnalysis.FromFractions(Percent(99), Percent(germination)), ViabilityRule.GerminationOnly, RedClover).Findings.Any(f => f.Code == "seed-below-floor"));

    [Fact]
    public void Dead_seed_has_no_rate()
    {
        var dead = SeedAnalysis.FromFractions(Percent(98), Fraction.Zero);
        Assert.Throws<ArgumentException>(() => PureLiveSeed.BulkRate(PureLiveSeedRate.DrilledPoundsPerAcre(8), dead, ViabilityRule.GerminationOnly));
        Assert.Throws<ArgumentException>(() => PureLiveSeed.PricePerLivingPound(1, dead, ViabilityRule.GerminationOnly));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedAnalysis.FromFractions(Fraction.Zero, Percent(90)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedAnalysis.FromFractions(Percent(98), Percent(90), seedsTested: 0));
    }

    [Fact]
    public void Rates_sown_in_different_ways_are_not_divided()
    {
        Assert.Throws<ArgumentException>(() => PureLiveSeedRate.DrilledPoundsPerAcre(8) / PureLiveSeedRate.BroadcastPoundsPerAcre(8));
        Assert.Throws<ArgumentException>(() => PureLiveSeedRateRange.Between(PureLiveSeedRate.DrilledPoundsPerAcre(8), PureLiveSeedRate.BroadcastPoundsPerAcre(9)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PureLiveSeedRateRange.Between(PureLiveSeedRate.DrilledPoundsPerAcre(8), PureLiveSeedRate.DrilledPoundsPerAcre(7)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PureLiveSeedRate.FromRate(ApplicationRate.Zero, (SowingMethod)99));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-0.001)]
    public void Impossible_amounts_are_refused(double amount)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PureLiveSeedRate.DrilledPoundsPerAcre(amount));
        Assert.Throws<ArgumentOutOfRangeException>(() => BulkSeedRate.BroadcastPoundsPerAcre(amount));
        Assert.Throws<ArgumentOutOfRangeException>(() => PureLiveSeedMass.FromPounds(amount));
        Assert.Throws<ArgumentOutOfRangeException>(() => BulkSeedMass.FromPounds(amount));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedCount.FromSeedsPerPound(amount));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedDensity.FromSeedsPerSquareFoot(amount));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedDensity.FromSeedsPerAcre(amount));
        Assert.Throws<ArgumentOutOfRangeException>(() => RowDensity.FromSeedsPerFoot(amount));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedDensity.FromRows(RowDensity.FromSeedsPerFoot(1), Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedDensity.FromSeedsPerAcre(1).DrilledRateAfterLoss(Fraction.One, SeedCount.FromSeedsPerPound(1000)));
        Assert.Throws<ArgumentOutOfRangeException>(() => KindShare.FromShare(RedClover, amount));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedAnalysis.CoatingFromBuildUp(amount));
    }

    [Fact]
    public void A_lot_lends_its_own_count_and_cautions()
    {
        var lot = new SeedLot { Label = "a", Kind = RedClover, Analysis = SeedAnalysis.FromFractions(Percent(98), Percent(90)), IsTreated = true, IsPreinoculated = true };
        Assert.Same(RedClover.SeedCount, lot.SeedCount);
        Assert.Equal(["seed-treated", "seed-treated-on-surface", "seed-treated-legume", "seed-preinoculated"], lot.Cautions(SowingMethod.Broadcast).Select(f => f.Code));
        Assert.DoesNotContain(lot.Cautions(SowingMethod.Drilled), f => f.Code == "seed-treated-on-surface");
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void The_working_reads_the_same_in_every_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        var answer = PureLiveSeed.BulkRate(PureLiveSeedRate.BroadcastPoundsPerAcre(15), SeedAnalysis.FromFractions(Percent(65.5), Percent(80), coating: Percent(34)), ViabilityRule.GerminationOnly);
        Assert.Equal("Bulk rate = PLS rate / pure live seed = 15 lb/ac / 0.524 = 28.63 lb/ac, broadcast [SEED-S01]", answer.ShowWork()[^1].ToString());
    }

    private static Fraction Percent(double percent) => Fraction.FromPercent(percent);
}
