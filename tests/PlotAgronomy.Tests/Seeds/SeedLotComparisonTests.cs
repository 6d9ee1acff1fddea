using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Seeds;

public class SeedLotComparisonTests
{
    private static readonly CropKind Crimson = KindCatalog.Standard.Find("crimson");

    [Fact]
    public void Practice_case_C41_break_even_with_a_coated_bag()
    {
        var coated = SeedAnalysis.FromFractions(Fraction.FromPercent(65), Fraction.FromPercent(90), coating: Fraction.FromPercent(35));
        var pure = SeedAnalysis.FromFractions(Fraction.One, Fraction.FromPercent(90));
        var real = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(90));
        PracticeCase.AssertMatches("C41", "claim", (double)PureLiveSeed.BreakEvenPrice(30m, coated, pure, ViabilityRule.GerminationOnly));
        PracticeCase.AssertMatches("C41", "break-even price", (double)PureLiveSeed.BreakEvenPrice(30m, coated, real, ViabilityRule.GerminationOnly));
    }

    [Fact]
    public void Practice_case_C41_says_to_compare_on_living_seed_with_both_tags()
    {
        var target = PureLiveSeedRate.BroadcastPoundsPerAcre(20);
        Offer<SeedLot> coated = Lot("coated", 65, 90, 0, 35, 1.20m), bare = Lot("bare", 98, 90, 0, 0, 1.80m), other = Lot("other", 98, 90, 0, 0, 1.90m);
        var finding = Assert.Single(SeedLotComparison.Rank([coated, other, bare], target).Findings, f => f.Code == "seed-coated-beside-bare");
        // 1.20 / (0.65 x 0.90) = 2.05 and 1.80 / (0.98 x 0.90) = 2.04.
        Assert.Contains("2.05 in the one, 2.04 in the other", finding.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(SeedLotComparison.Rank([bare, other], target).Findings, f => f.Code == "seed-coated-beside-bare");
        Assert.DoesNotContain(SeedLotComparison.Rank([coated, coated], target).Findings, f => f.Code == "seed-coated-beside-bare");
    }

    [Fact]
    public void Five_lots_are_ranked_by_the_cost_of_the_same_live_stand()
    {
        var lots = new[]
        {
            Lot("bare, good", 98, 90, 0, 0, 2.40m),
            Lot("bare, old", 97, 60, 0, 0, 1.80m),
            Lot("coated", 65, 90, 0, 34, 1.90m),
            Lot("hard", 98, 70, 25, 0, 2.00m),
            Lot("weedy", 90, 85, 0, 0, 2.10m),
        };
        var answer = SeedLotComparison.Rank(lots, PureLiveSeedRate.BroadcastPoundsPerAcre(20));

        // Closed form: 20 lb x price / (pure x germination).
        double Cost(double pure, double germination, double price) => 20 * price / (pure * germination);
        Assert.Equal(["bare, good", "weedy", "hard", "bare, old", "coated"], answer.Ranked.Select(r => r.Lot.Label));
        Assert.Equal([1, 2, 3, 4, 5], answer.Ranked.Select(r => r.Place));
        Near.Assert(Cost(0.98, 0.90, 2.40), (double)answer.Ranked[0].CostPerAcre);
        Near.Assert(Cost(0.65, 0.90, 1.90), (double)answer.Ranked[4].CostPerAcre);
        Near.Assert(Cost(0.65, 0.90, 1.90) / Cost(0.98, 0.90, 2.40) - 1, (double)answer.Ranked[4].OverCheapest, 1e-9);
        Assert.Equal(answer.Ranked.Length * 5, answer.ShowWork().Length);

        // Counting hard seed turns the order.
        Assert.Equal("hard", SeedLotComparison.Rank(lots, PureLiveSeedRate.BroadcastPoundsPerAcre(20), ViabilityRule.For(SeedUse.PerennialOrReseeding)).Ranked[0].Lot.Label);
    }

    [Fact]
    public void The_price_is_split_into_what_it_pays_for()
    {
        var value = LotValue.For(Lot("a", 65, 80, 10, 34, 3.00m));
        Near.Assert(3 * 0.65 * 0.80, (double)value.ForLivingSeed);
        Near.Assert(3 * 0.65 * 0.20, (double)value.ForDeadSeed);
        Near.Assert(3 * 0.34, (double)value.ForCoating);
        Near.Assert(3 * 0.01, (double)value.ForFiller, 1e-9);
        Assert.Equal(value.PricePerPound, value.ForLivingSeed + value.ForDeadSeed + value.ForCoating + value.ForFiller);
        Near.Assert(3 / (0.65 * 0.80), (double)value.PricePerLivingPound);
        Near.Assert(3 / (0.65 * 0.80) / Crimson.RequireSeedCount().SeedsPerPound * 1e6, (double)value.PricePerMillionLiveSeeds!.Value);
    }

    [Fact]
    public void A_lot_of_smaller_seed_needs_less_weight_for_the_same_stand()
    {
        double usual = Crimson.RequireSeedCount().SeedsPerPound;
        var usualLot = Lot("usual", 98, 90, 0, 0, 2m);
        var small = usualLot with { Item = usualLot.Item with { Label = "small", OwnSeedCount = SeedCount.FromSeedsPerPound(usual * 1.25) } };
        var answer = SeedLotComparison.Rank([usualLot, small], PureLiveSeedRate.DrilledPoundsPerAcre(20));
        Assert.Equal("small", answer.Ranked[0].Lot.Label);
        Near.Assert(1.25, answer.Ranked[1].Seeding.Bulk.Rate / answer.Ranked[0].Seeding.Bulk.Rate);
    }

    [Fact]
    public void Whole_packages_are_bought()
    {
        var lot = Offer.InBags(Lot("bag", 100, 100, 0, 0, 0).Item, Mass.FromPounds(25), 50m);
        var ranked = SeedLotComparison.Rank([lot], PureLiveSeedRate.DrilledPoundsPerAcre(20)).Ranked[0];
        Assert.Equal(2, ranked.PackagesFor(Area.FromAcres(1.3)));
        Assert.Equal(100m, ranked.CostFor(Area.FromAcres(1.3)));
        Assert.Equal(1, ranked.PackagesFor(Area.FromAcres(1.25)));
    }

    [Fact]
    public void Equal_costs_share_a_place()
    {
        var answer = SeedLotComparison.Rank([Lot("b", 98, 90, 0, 0, 2m), Lot("a", 98, 90, 0, 0, 2m), Lot("c", 98, 90, 0, 0, 3m)], PureLiveSeedRate.DrilledPoundsPerAcre(20));
        Assert.Equal([1, 1, 3], answer.Ranked.Select(r => r.Place));
    }

    [Fact]
    public void Unlike_lots_are_refused()
    {
        var target = PureLiveSeedRate.DrilledPoundsPerAcre(20);
        var rye = Offer.ByThePound(Lot("rye", 100, 100, 0, 0, 0).Item with { Kind = KindCatalog.Standard.Find("rye") }, 1m);
        Assert.Throws<ArgumentException>(() => SeedLotComparison.Rank([], target));
        Assert.Throws<ArgumentException>(() => SeedLotComparison.Rank([Lot("a", 98, 90, 0, 0, 1), rye], target));
        Assert.Throws<ArgumentException>(() => SeedLotComparison.Rank([Lot("a", 98, 0, 50, 0, 1)], target));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedLotComparison.Rank([Lot("a", 98, 90, 0, 0, -1)], target));
    }

    [Fact]
    public void A_lot_comes_from_its_tag()
    {
        var tag = SeedTag.Read("Kind: crimson clover\nPure seed 98%\nInert 2%\nGerm 85%\nTest date 3/2025\nNet wt 25 lb").Tag!;
        var lot = SeedLot.FromTag(tag, tag.Components[0], "farm store");
        Assert.Equal("2025-03", lot.TestMonth.ToString());
        Assert.Throws<ArgumentException>(() => SeedLot.FromTag(tag, new TagComponent { Kind = Crimson, Analysis = lot.Analysis }, "other"));
    }

    private static Offer<SeedLot> Lot(string label, double pure, double germination, double hard, double coating, decimal price) => Offer.ByThePound(new SeedLot
    {
        Label = label,
        Kind = Crimson,
        Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(pure), Fraction.FromPercent(germination), Fraction.FromPercent(hard), coating: Fraction.FromPercent(coating)),
    }, price);
}
