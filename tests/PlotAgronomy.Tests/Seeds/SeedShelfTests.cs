using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Seeds;

public class SeedShelfTests
{
    private static readonly CropKind Crimson = KindCatalog.Standard.Find("crimson");

    [Fact]
    public void The_cheapest_living_pound_is_bought_not_the_cheapest_bag()
    {
        // 50 a bag of 50 lb at 98 % pure and 80 % alive is 1.00 / 0.784 = 1.2755 a living pound; 45 at 98 % and 60 % is
        // 0.90 / 0.588 = 1.5306; 60 for 50 lb of which a third is coating, 65 % pure and 90 % alive, is 1.20 / 0.585 = 2.0513.
        SeedLot good = Lot("good", 98, 80, 50m), old = Lot("old", 98, 60, 45m), coated = Lot("coated", 65, 90, 60m, coating: 34);
        var choice = SeedShelf.FromLots([coated, old, good]).Cheapest(Crimson, ViabilityRule.GerminationOnly);
        Assert.Same(good, choice.Lot);
        Assert.Equal([good, old, coated], choice.Ranked.Select(v => v.Lot));
        Near.Assert(1 / 0.784, (double)choice.Ranked[0].PricePerLivingPound);
        Near.Assert(0.9 / 0.588, (double)choice.Ranked[1].PricePerLivingPound);
        Near.Assert(1.2 / 0.585, (double)choice.Ranked[2].PricePerLivingPound);
        Assert.Equal(["1.28", "1.53", "2.05"], choice.ShowWork().Select(l => l.Numbers.Split(" = ")[^1]));
    }

    [Fact]
    public void The_published_example_of_a_cheap_lot_that_is_the_dearer_one()
    {
        // Penn State, Calculating the Price of Pure Live Seed: 1.95 a pound at 85 x 60 against 3.00 at 99 x 90. The printed
        // 3.90 and 3.30 take factors rounded to one decimal; 1.95 / 0.51 = 3.8235 and 3.00 / 0.891 = 3.3670 without.
        SeedLot cheap = Lot("cheap", 85, 60, 50 * 1.95m), dear = Lot("dear", 99, 90, 50 * 3.00m);
        var choice = SeedShelf.FromLots([cheap, dear]).Cheapest(Crimson, ViabilityRule.GerminationOnly);
        Assert.Same(dear, choice.Lot);
        Assert.Equal(3.3670, (double)choice.Ranked[0].PricePerLivingPound, 5e-5);
        Assert.Equal(3.8235, (double)choice.Ranked[1].PricePerLivingPound, 5e-5);
    }

    [Fact]
    public void Of_lots_alike_the_one_offered_first_is_bought()
    {
        SeedLot first = Lot("z", 98, 80, 50m), second = Lot("a", 98, 80, 50m);
        Assert.Same(first, SeedShelf.FromLots([first, second]).Cheapest(Crimson).Lot);
        Assert.Same(second, SeedShelf.FromLots([second, first]).Cheapest(Crimson).Lot);
    }

    [Fact]
    public void Lots_that_cannot_be_counted_are_kept_with_the_reason()
    {
        SeedLot dead = Lot("dead", 98, 0, 10m), unpriced = Lot("unpriced", 98, 90, null), good = Lot("good", 98, 80, 50m);
        var choice = SeedShelf.FromLots([dead, unpriced, good]).Cheapest(Crimson);
        Assert.Same(good, choice.Lot);
        Assert.Equal([dead, unpriced], choice.Uncounted);
        Assert.Equal("nothing in it counts as alive", choice.WhyNot(dead));
        Assert.Equal("it has no price", choice.WhyNot(unpriced));
        Assert.Null(choice.WhyNot(good));
    }

    [Fact]
    public void Lots_of_other_kinds_are_passed_over_and_an_empty_shelf_gives_no_lot()
    {
        var oats = KindCatalog.Standard.Find("oats-spring");
        var shelf = SeedShelf.FromLots([Lot("good", 98, 80, 50m)]);
        Assert.NotNull(shelf.Cheapest(Crimson).Lot);
        var none = shelf.Cheapest(oats);
        Assert.Same(oats, none.Kind);
        Assert.Null(none.Lot);
        Assert.Empty(none.Ranked);
        Assert.Empty(none.Uncounted);
        Assert.Null(SeedShelf.FromLots([]).Cheapest(Crimson).Lot);
    }

    [Fact]
    public void What_counts_as_alive_can_turn_the_choice()
    {
        // Germination alone: 1.00 / (0.98 x 0.80) = 1.28 against 0.95 / (0.98 x 0.60) = 1.62; with hard seed 0.95 / (0.98 x 0.95) = 1.02.
        SeedLot soft = Lot("soft", 98, 80, 50m), hard = Lot("hard", 98, 60, 47.5m, hard: 35);
        var shelf = SeedShelf.FromLots([soft, hard]);
        Assert.Same(soft, shelf.Cheapest(Crimson, ViabilityRule.GerminationOnly).Lot);
        Assert.Same(hard, shelf.Cheapest(Crimson, ViabilityRule.GerminationAndHard).Lot);
    }

    [Fact]
    public void A_price_below_nothing_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedShelf.FromLots([Lot("paid", 98, 80, -1m)]).Cheapest(Crimson));

    private static SeedLot Lot(string label, double pure, double germination, decimal? price, double hard = 0, double coating = 0) => new()
    {
        Label = label,
        Kind = Crimson,
        Analysis = SeedAnalysis.FromFractions(
            Fraction.FromPercent(pure), Fraction.FromPercent(germination), Fraction.FromPercent(hard), coating: Fraction.FromPercent(coating)),
        Package = Mass.FromPounds(50),
        PricePerPound = price / 50,
    };
}
