using System.Globalization;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Root;

public class OfferTests
{
    private static readonly Offer<string> Bag = Offer.InBags("rye", Mass.FromPounds(50), 24.50m);

    [Fact]
    public void A_package_is_a_bag_a_jug_or_loose()
    {
        Assert.Equal(50, Bag.Package.Weight.Pounds, 1e-12);
        Assert.True(Bag.Package.IsWhole);
        Assert.Null(Bag.Package.Volume);

        // 2.5 gal at 10.67 lb/gal
        var jug = Package.FromVolume(Volume.FromUsGallons(2.5), Density.FromPoundsPerUSGallon(10.67));
        Near.Assert(26.675, jug.Weight.Pounds, 1e-8);
        Near.Assert(10.67, jug.Density!.Value.PoundsPerUSGallon, 1e-8);
        Assert.True(jug.IsWhole);

        Assert.Equal(2000, Package.BulkByTheTon.Weight.Pounds, 1e-12);
        Assert.False(Package.BulkByTheTon.IsWhole);
        Assert.Equal(1, Package.LooseByThePound.Weight.Pounds, 1e-12);
    }

    /// <summary>Half a pound is 8 oz; what is sold by the ounce or the crumb is never "0 lb".</summary>
    [Theory]
    [InlineData(50, "50 lb"), InlineData(55.115, "55.1 lb"), InlineData(1, "1 lb"), InlineData(0.5, "8 oz"), InlineData(0.015625, "0.25 oz"), InlineData(0.01, "0.16 oz")]
    public void A_small_packet_is_said_in_ounces(double pounds, string said) =>
        Assert.Equal(said, Package.FromWeight(Mass.FromPounds(pounds)).ToString());

    [Fact]
    public void A_crumb_keeps_its_digits() =>
        Assert.Matches("^0\\.00[0-9]+ g$", Package.FromWeight(Mass.FromPounds(0.00001)).ToString());

    [Fact]
    public void A_package_without_a_weight_is_refused()
    {
        Assert.Contains("lb", Assert.Throws<ArgumentOutOfRangeException>(() => Package.FromWeight(Mass.Zero)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Package.FromWeight(Mass.FromPounds(-50)));
        Assert.Equal("volume", Assert.Throws<ArgumentOutOfRangeException>(() => Package.FromVolume(Volume.Zero, Density.FromPoundsPerUSGallon(10))).ParamName);
        Assert.Equal("density", Assert.Throws<ArgumentOutOfRangeException>(() => Package.FromVolume(Volume.FromUsGallons(1), Density.Zero)).ParamName);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(50, 1)]
    [InlineData(50.1, 2)]
    [InlineData(100, 2)]
    public void Whole_packages_hold_a_weight(double pounds, int expected) =>
        Assert.Equal(expected, Bag.Package.CountFor(Mass.FromPounds(pounds)));

    [Fact]
    public void What_is_sold_loose_has_no_whole_packages() => Assert.Null(Package.BulkByTheTon.CountFor(Mass.FromPounds(50)));

    [Fact]
    public void A_pound_costs_its_part_of_the_package()
    {
        Assert.Equal(0.49m, Bag.PricePerPound);
        Assert.Equal(0.0225m, Offer.InBulk("lime", 45m).PricePerPound);
        Assert.Equal(1.10m, Offer.ByThePound("peas", 1.10m).PricePerPound);
        Assert.Equal(73.50m, Bag.CostOf(3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bag.CostOf(-1));
    }

    [Fact]
    public void An_offer_refuses_what_cannot_be()
    {
        Assert.Throws<ArgumentNullException>(() => Offer.InBags<string>(null!, Mass.FromPounds(50), 1));
        Assert.Equal("bag", Assert.Throws<ArgumentOutOfRangeException>(() => Offer.InBags("rye", Mass.Zero, 1)).ParamName);
        Assert.Equal("pricePerBag", Assert.Throws<ArgumentOutOfRangeException>(() => Offer.InBags("rye", Mass.FromPounds(50), -0.01m)).ParamName);
        Assert.Equal("pricePerTon", Assert.Throws<ArgumentOutOfRangeException>(() => Offer.InBulk("lime", -1)).ParamName);
        Assert.Equal("pricePerPound", Assert.Throws<ArgumentOutOfRangeException>(() => Offer.ByThePound("peas", -1)).ParamName);
        Assert.Throws<ArgumentNullException>(() => Bag with { Item = null! });
        Assert.Throws<ArgumentNullException>(() => Bag with { Package = null! });
        Assert.Throws<ArgumentOutOfRangeException>(() => Bag with { Price = -1 });
    }

    [Fact]
    public void An_offer_is_only_equal_to_itself_and_can_be_varied()
    {
        var same = Bag with { };
        Assert.Equal(Bag, Bag);
        Assert.NotEqual(Bag, same);
        Assert.True(Bag != same);
        Assert.NotEqual(Bag.GetHashCode(), same.GetHashCode());
        var dearer = Bag with { Price = 30 };
        Assert.Same(Bag.Package, dearer.Package);
        Assert.Equal(0.6m, dearer.PricePerPound);
    }

    [Fact]
    public void It_prints_the_same_in_every_culture()
    {
        var jug = Package.FromVolume(Volume.FromUsGallons(2.5), Density.FromPoundsPerUSGallon(10.67));
        var lot = new SeedLot
        {
            Kind = KindCatalog.Standard.Find("crimson"),
            Label = "C-3",
            Analysis = SeedAnalysis.FromFractions(Fraction.One, Fraction.One),
        };
        foreach (string name in new[] { "de-DE", "fa-IR", "sv-SE" })
        {
            using (new CultureScope(name))
            {
                Assert.Equal("rye, 50 lb for 24.50", Bag.ToString());
                Assert.Equal("2.5 gal (26.7 lb)", jug.ToString());
                Assert.Equal("lime, in bulk by the ton for 45", Offer.InBulk("lime", 45).ToString());
                Assert.Equal("peas, loose by the pound for 1.1", Offer.ByThePound("peas", 1.1m).ToString());
                Assert.Equal("Crimson clover, lot C-3", lot.ToString());
            }
        }
    }

    [Fact]
    public void A_lot_of_seed_refuses_what_cannot_be_and_is_only_equal_to_itself()
    {
        var lot = new SeedLot
        {
            Kind = KindCatalog.Standard.Find("crimson"),
            Label = "C-3",
            Analysis = SeedAnalysis.FromFractions(Fraction.One, Fraction.One),
        };
        Assert.Throws<ArgumentException>(() => lot with { Label = " " });
        Assert.Throws<ArgumentNullException>(() => lot with { Kind = null! });
        Assert.Throws<ArgumentNullException>(() => lot with { Analysis = null! });
        Assert.NotEqual(lot, lot with { });
        Assert.Equal("other", (lot with { Label = "other" }).Label);
    }
}
