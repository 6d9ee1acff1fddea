using FsCheck.Xunit;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Blends;

[Properties(Arbitrary = [typeof(PlotArbitraries), typeof(BlendArbitraries)])]
public class BagTests
{
    private static Offer<SeedLot> Lot(string id, decimal price, double pure, double germination, double? bag = null)
    {
        var lot = new SeedLot
        {
            Label = id,
            Kind = SampleBlends.Kind(id),
            Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(pure), Fraction.FromPercent(germination)),
        };
        return bag is { } pounds ? Offer.InBags(lot, Mass.FromPounds(pounds), price * (decimal)pounds) : Offer.ByThePound(lot, price);
    }

    private static TagComponent Named(string id, double pure, double germination, double hard = 0) => new()
    {
        Kind = SampleBlends.Kind(id),
        Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(pure), Fraction.FromPercent(germination), Fraction.FromPercent(hard)),
    };

    /// <summary>Oats 46.20, wheat 29.40, pea 14.70, crimson 4.90, turnip 1.96; other crop 1.50, inert 1.20, weed 0.14: a 50-lb bag that claims an acre.</summary>
    private static Offer<StoreBlend> Bag(double claimedAcres = 1) => Offer.InBags(new StoreBlend
    {
        Label = "fall bag",
        Tag = new SeedTag
        {
            Components = [Named("oats-spring", 46.20, 90), Named("winter-wheat", 29.40, 90), Named("austrian-winter-pea", 14.70, 85), Named("crimson-clover", 4.90, 75, 15), Named("purple-top-turnip", 1.96, 90)],
            OtherCrop = Fraction.FromPercent(1.50),
            Inert = Fraction.FromPercent(1.20),
            Weed = Fraction.FromPercent(0.14),
        },
        ClaimedArea = Area.FromAcres(claimedAcres),
    }, Mass.FromPounds(50), 60m);

    [Fact]
    public void A_thin_bag_really_covers_less_than_it_claims()
    {
        var comparison = BagOrPlainSeed.Compare(Bag(claimedAcres: 2), SowingMethod.Drilled, [], ViabilityRule.GerminationAndHard);
        // By hand, drilled full rates 90, 90, 30, 15, 1.5 lb/ac: 20.79/90 + 13.23/90 + 6.2475/30 + 2.205/15 + 0.882/1.5 acres.
        double total = 20.79 / 90 + 13.23 / 90 + 6.2475 / 30 + 2.205 / 15 + 0.882 / 1.5;
        Area covers = comparison.ReallyCovers;
        double acres = covers.Acres;

        Assert.Equal(total / 2, comparison.AsClaimed.StandTotal.Chosen, 1e-9);
        Assert.Equal(total, acres, 1e-9);
        Assert.Equal(60 / total, (double)comparison.BagCostPerAcre, 1e-9);
        Assert.Contains(comparison.Findings, f => f.Code == "blend-bag-thin");
        Assert.Equal(25, comparison.AsClaimed.BulkRate.PoundsPerAcre, 1e-9);
        Assert.Null(comparison.Plain);
    }

    [Fact]
    public void Plain_lots_make_the_same_stand_for_a_price_of_their_own()
    {
        Offer<SeedLot>[] lots = [Lot("oats-spring", 0.45m, 98, 90), Lot("winter-wheat", 0.40m, 98, 90), Lot("austrian-winter-pea", 1.10m, 99, 85), Lot("crimson-clover", 2.20m, 97, 85), Lot("purple-top-turnip", 3.00m, 99, 90), Lot("oats-spring", 0.44m, 60, 50)];
        var comparison = BagOrPlainSeed.Compare(Bag(), SowingMethod.Drilled, lots, ViabilityRule.GerminationOnly);

        Assert.Empty(comparison.NotOnOffer);
        Assert.Equal(1, comparison.Plain!.StandTotal.Chosen, 1e-12);
        Assert.All(comparison.Plain.Parts.Zip(comparison.AsClaimed.Parts), x => Assert.Equal(x.Second.ShareOfStand.Value, x.First.ShareOfStand.Value, 1e-12));
        // Each lot by hand: rate / (purity x germination) x price at one full stand.
        double total = comparison.AsClaimed.StandTotal.Chosen;
        double cost = (20.79 / (0.98 * 0.90) * 0.45 + 13.23 / (0.98 * 0.90) * 0.40 + 6.2475 / (0.99 * 0.85) * 1.10 + 50 * 0.0490 * 0.75 / (0.97 * 0.85) * 2.20 + 0.882 / (0.99 * 0.90) * 3.00) / total;
        Assert.Equal(cost, (double)comparison.PlainCostPerAcre!.Value, 1e-6);
        Assert.Equal(cost / 2, comparison.Plain.WeighFor(Area.FromAcres(0.5)).Lines.Sum(l => l.Weight.Pounds * (double)l.Component.Offer!.PricePerPound), 1e-6);
    }

    [Fact]
    public void Kinds_without_a_plain_lot_are_named_and_the_rest_makes_a_full_stand()
    {
        var comparison = BagOrPlainSeed.Compare(Bag(), SowingMethod.Drilled, [Lot("oats-spring", 0.45m, 98, 90), Lot("winter-wheat", 0.40m, 98, 90)]);

        Assert.Equal(["austrian-winter-pea", "crimson-clover", "purple-top-turnip"], comparison.NotOnOffer.Select(k => k.Id));
        Assert.Contains(comparison.Findings, f => f.Code == "blend-not-on-offer");
        Assert.Equal(1, comparison.Plain!.StandTotal.Chosen, 1e-12);
        Assert.Equal(comparison.AsClaimed.Parts.Skip(2).Sum(p => p.ShareOfStand.Value), comparison.ShareNotOnOffer.Value, 1e-12);
    }

    [Fact]
    public void A_full_bag_is_not_called_thin()
    {
        var bag = Bag();
        var honest = bag with { Item = bag.Item with { ClaimedArea = BagOrPlainSeed.Compare(bag, SowingMethod.Drilled, []).ReallyCovers } };
        Assert.DoesNotContain(BagOrPlainSeed.Compare(honest, SowingMethod.Drilled, []).Findings, f => f.Code == "blend-bag-thin");
    }

    [Fact]
    public void A_ready_blend_needs_a_name_an_area_and_a_bag()
    {
        var blend = Bag().Item;
        Assert.Throws<ArgumentOutOfRangeException>(() => blend with { ClaimedArea = Area.Zero });
        Assert.Throws<ArgumentException>(() => blend with { Label = " " });
        Assert.Throws<ArgumentException>(() => BagOrPlainSeed.Compare(Offer.InBulk(blend, 900m), SowingMethod.Drilled, []));
    }

    [Fact]
    public void Whole_bags_change_what_the_blend_becomes()
    {
        var oats = BlendComponent.FromOffer(Lot("oats-spring", 0.50m, 100, 100, 50), PureRate(100));
        var clover = BlendComponent.FromOffer(Lot("ladino-clover", 5m, 100, 100, 5), PureRate(5));
        var order = BagOrder.For(Blend.FromSharesOfFullStand((oats, 0.4), (clover, 0.6)), Area.FromAcres(0.5));

        // 20 lb of oats is one 50-lb bag, 1.5 lb of clover one 5-lb bag: on half an acre 100 lb/ac and 10 lb/ac.
        Assert.Equal([1, 1], order.Lines.Select(l => l.Bags!.Value));
        Assert.Equal(1.0, order.IfAllSown.Parts[0].ShareOfFullStand.Chosen, 1e-12);
        Assert.Equal(2.0, order.IfAllSown.Parts[1].ShareOfFullStand.Chosen, 1e-12);
        Assert.Equal(50m, order.Cost);
        Assert.Equal(30, order.Lines[0].LeftOver.Pounds, 1e-12);
        Assert.Contains(order.Findings, f => f.Code == "blend-bags-change-share");
    }

    [Fact]
    public void Seed_sold_by_weight_is_bought_as_needed()
    {
        var oats = BlendComponent.FromOffer(Lot("oats-spring", 0.50m, 98, 90), PureRate(100));
        var order = BagOrder.For(Blend.FromSharesOfFullStand((oats, 1)), Area.FromAcres(0.5));

        Assert.Null(order.Lines[0].Bags);
        Assert.Equal(50 / 0.882, order.Lines[0].Bought.Pounds, 1e-9);
        Assert.Equal(50 / 0.882 * 0.5, (double)order.Cost!.Value, 1e-9);
        Assert.Empty(order.Findings);
    }

    [Fact]
    public void A_missing_price_leaves_the_cost_open()
    {
        var order = BagOrder.For(Blend.FromSharesOfFullStand((SampleBlends.Broadcast("oats-spring", 100, 16_000), 1)), Area.FromAcres(1));
        Assert.Null(order.Cost);
    }

    [Theory]
    [InlineData(5.0, 0)]
    [InlineData(4.9, 1)]
    public void Five_ounces_is_fine_enough_for_a_tenth_of_an_ounce(double ounces, int findings)
    {
        var batch = new BlendBatch
        {
            Blend = SampleBlends.TurnipRapeRadish(),
            Area = Area.FromAcres(1),
            Lines = [new BlendWeight { Component = SampleBlends.Broadcast("ladino-clover", 5, 776_000), Weight = BulkSeedMass.FromPounds(ounces / 16) }],
        };
        Assert.Equal(findings, BatchSpread.CheckWeighing(batch, Mass.FromOunces(0.1)).Count(f => f.Code == "blend-coarse-scale"));
        Assert.Throws<ArgumentOutOfRangeException>(() => BatchSpread.CheckWeighing(batch, Mass.Zero));
    }

    [Fact]
    public void A_quarter_pound_is_no_fair_sample_of_peas()
    {
        var blend = Blend.FromWeightShares(ApplicationRate.FromPoundsPerAcre(60), (SampleBlends.Drilled("austrian-winter-pea", 50, 2_800), Fraction.FromPercent(10)), (SampleBlends.Drilled("oats-spring", 90, 16_000), Fraction.FromPercent(90)));
        Assert.Contains(BatchSpread.For(blend, BulkSeedMass.FromPounds(0.25)).Findings, f => f.Code == "blend-small-batch");
        Assert.Empty(BatchSpread.For(blend, BulkSeedMass.FromPounds(1)).Findings);
        Assert.Throws<ArgumentOutOfRangeException>(() => BatchSpread.For(blend, default));
    }

    [Property]
    public bool Bags_bought_hold_what_is_needed_and_less_than_a_bag_more(BlendSketch sketch, Area area, Mass bag)
    {
        double bagPounds = bag.Pounds;
        var blend = Blend.FromSharesOfFullStand([.. sketch.Kinds.Select(k => (k.Component with { Offer = Lot(k.Component.Kind.Id, 1, 90, 90, bagPounds) }, k.Share))]);
        var order = BagOrder.For(blend, area);
        return order.Lines.All(l => l.Bought.Pounds >= l.Needed.Pounds * (1 - 1e-8) && l.Bought.Pounds < l.Needed.Pounds * (1 + 1e-8) + bagPounds)
            && order.IfAllSown.Parts.Zip(blend.Parts).All(x => x.First.ShareOfFullStand.Chosen >= x.Second.ShareOfFullStand.Chosen * (1 - 1e-8));
    }

    private static PureLiveSeedRate PureRate(double pounds) => PureLiveSeedRate.BroadcastPoundsPerAcre(pounds);
}
