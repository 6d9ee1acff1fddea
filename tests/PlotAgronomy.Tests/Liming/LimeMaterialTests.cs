using PlotAgronomy.Liming;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

public class LimeMaterialTests
{
    [Fact]
    public void A_stated_figure_goes_before_a_computed_one()
    {
        var material = LimingMaterial.FromAnalysis("lime", LimingForm.GroundLimestone, 92, SieveAnalysis.FromPercent((8, 98), (20, 80), (60, 55)));
        Assert.Equal(0.92 * 73.6 * 20, material.FigureIn(LimeIndex.Find("ohio-enp")).Value, 1e-9);
        Assert.Equal(1800, material.WithFigure(LimeFigure.FromPoundsPerTon(LimeIndex.Find("ohio-enp"), 1800)).FigureIn(LimeIndex.Find("ohio-enp")).Value);
    }

    [Fact]
    public void A_finer_sieve_that_passes_all_tells_of_the_coarser_ones()
    {
        var fine = SieveAnalysis.FromPercent((60, 100));
        Assert.True(fine.Knows(8));
        Assert.Equal(1, fine.SharePassing(8).Value);
        Assert.False(fine.Knows(100));
        Assert.Throws<ArgumentException>(() => fine.SharePassing(100));
    }

    [Fact]
    public void A_finer_sieve_never_passes_more()
    {
        Assert.Throws<ArgumentException>(() => SieveAnalysis.FromPercent((8, 50), (60, 51)));
        Assert.Throws<ArgumentException>(() => SieveAnalysis.FromPercent((8, 50), (8, 50)));
        Assert.Throws<ArgumentException>(() => SieveAnalysis.FromPercent());
        Assert.Throws<ArgumentOutOfRangeException>(() => SieveAnalysis.FromPercent((0, 50)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SieveAnalysis.FromPercent((8, 100.1)));
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(250.01)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_calcium_carbonate_equivalent_outside_its_range_is_refused(double cce) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LimingMaterial.FromAnalysis("lime", LimingForm.Other, cce));

    [Theory]
    [InlineData("ohio-enp", 5000.1)]
    [InlineData("missouri-enm", 2000.1)]
    [InlineData("oregon-score", 250.1)]
    [InlineData("oregon-score", -0.1)]
    [InlineData("oregon-score", double.NaN)]
    public void A_figure_beyond_any_lime_is_refused(string index, double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LimeFigure.FromValue(LimeIndex.Find(index), value));

    [Fact]
    public void Pure_powder_is_the_whole_in_every_index_but_a_relative_one()
    {
        foreach (var index in LimeIndex.Everything)
        {
            Assert.Equal(!index.IsRelative, LimingMaterial.PureCarbonate.TryFigureIn(index, out var figure, out _));
            Assert.True(index.IsRelative || figure!.ShareOfWhole == 1);
        }
    }

    [Fact]
    public void North_carolinas_label_states_the_pounds_that_equal_a_ton()
    {
        // Soil Testing: Lime and Fertilizer Requirements (NCDA&CS): rate x label pounds / 2000.
        var lime = LimingMaterial.FromLabel("lime", LimingForm.GroundLimestone, LimeFigure.FromPoundsEqualToOneTon(2200));
        Assert.Equal(1.1, Rate(1, LimeBasis.Find("north-carolina-standard")).RateOf(lime).ShortTonsPerAcre, 1e-12);
        Assert.Throws<InvalidOperationException>(() => Rate(1, LimeBasis.Find("north-carolina-standard")).RateOf(LimingMaterial.FromAnalysis("lime", LimingForm.GroundLimestone, 95)));
    }

    [Fact]
    public void Magnesium_and_dolomite_are_weighed_against_the_soil()
    {
        // 6 % magnesium is 120 lb a ton (20 x %Mg, closed form).
        var dolomitic = LimingMaterial.FromAnalysis("dolomitic lime", LimingForm.GroundLimestone, 100, magnesium: Fraction.FromPercent(6));
        Assert.Equal(120, dolomitic.MagnesiumIn(Mass.FromPounds(2000))!.Value.Pounds, 1e-9);
        LimeOrder Order(LimingMaterial material, double magnesiumPpm) => LimeOrder.For(new LimeOrderRequest
        {
            Rate = Rate(1, LimeBasis.Find("pure-carbonate")),
            Material = material,
            Area = Area.FromAcres(1),
            Soil = new PlotAgronomy.SoilReport { Laboratory = "test", Readings = [PlotAgronomy.SoilReading.FromPrinted(PlotAgronomy.SoilAnalyte.Magnesium, magnesiumPpm, PlotAgronomy.SoilTestUnit.PartsPerMillion, PlotAgronomy.Extractant.Mehlich3)] },
            WithUreaOrAmmonium = true,
        });
        var calcitic = LimingMaterial.FromAnalysis("calcitic lime", LimingForm.GroundLimestone, 95);
        Assert.True(Order(calcitic, 49.9).Has("lime-dolomite-wanted"));
        Assert.False(Order(calcitic, 50).Has("lime-dolomite-wanted"));
        Assert.True(Order(dolomitic, 50).Has("lime-dolomite-not-needed"));
        Assert.Equal(120, Order(dolomitic, 20).Magnesium!.Value.Pounds, 1e-9);
        Assert.True(Order(dolomitic, 20).Has("lime-with-nitrogen"));
    }

    [Theory]
    [InlineData(LimingForm.Hydrated, "lime-caustic")]
    [InlineData(LimingForm.Quicklime, "lime-caustic")]
    [InlineData(LimingForm.GroundLimestone, "lime-dust")]
    [InlineData(LimingForm.WoodAsh, "lime-wood-ash")]
    public void Each_form_brings_its_caution(LimingForm form, string code) =>
        Assert.True(LimeOrder.For(new LimeOrderRequest { Rate = Rate(1, LimeBasis.Find("pure-carbonate")), Material = LimingMaterial.FromAnalysis("it", form, 90), Area = Area.FromAcres(1) }).Has(code));

    [Theory]
    [InlineData(20, false)]
    [InlineData(20.1, true)]
    public void Wood_ash_above_its_yearly_limit_is_warned_of(double poundsPerThousand, bool warned)
    {
        // Orchard practice: at most 20 lb/1000 ft2 a year.
        var rate = LimeRate.FromBasis(ApplicationRate.FromPoundsPerThousandSquareFeet(poundsPerThousand), 6.5, Length.FromInches(6), LimeBasis.Find("pure-carbonate"), Institution.FindLaboratory("test laboratory"));
        var order = LimeOrder.For(new LimeOrderRequest { Rate = rate, Material = LimingMaterial.FromAnalysis("ash", LimingForm.WoodAsh, 100), Area = Area.FromAcres(0.1) });
        Assert.Equal(warned, order.Has("lime-wood-ash-rate"));
        Assert.True(order.Has("lime-fineness-not-counted"));
    }

    [Fact]
    public void The_cce_of_a_limestone_follows_from_its_elements()
    {
        // Stoichiometry: dolomite is 21.73 % Ca and 13.18 % Mg and neutralizes 108.6 % of carbonate.
        var dolomite = LimingCompound.Find("dolomite");
        Near.Assert(dolomite.CcePercent, LimingCompound.CcePercentFromElements(dolomite.Calcium, dolomite.Magnesium));
        Assert.Equal(2.497, LimingCompound.CcePercentFromElements(Fraction.FromPercent(1), Fraction.Zero), 5e-4);
        Assert.Equal(4.118, LimingCompound.CcePercentFromElements(Fraction.Zero, Fraction.FromPercent(1)), 5e-4);
    }

    [Fact]
    public void Offers_are_ranked_by_the_cost_of_what_they_neutralize()
    {
        // Hand algebra: bulk 40/ton at ENP 1000 costs 80 per effective ton; bags 6/40 lb = 300/ton at ENP 1800 cost 333.33.
        var bulk = Offer.InBulk(LimingMaterial.FromLabel("crushed", LimingForm.GroundLimestone, LimeFigure.FromPoundsPerTon(LimeIndex.Find("ohio-enp"), 1000)), 40);
        var bags = Offer.InBags(LimingMaterial.FromLabel("pellets", LimingForm.Pelletized, LimeFigure.FromPoundsPerTon(LimeIndex.Find("ohio-enp"), 1800)), Mass.FromPounds(40), 6);
        var gypsum = Offer.InBulk(LimingMaterial.Gypsum, 1);
        var unknown = Offer.InBulk(LimingMaterial.FromAnalysis("heap", LimingForm.Other, 90), 5);
        var comparison = LimingMaterialComparison.For(Rate(1, LimeBasis.Find("ohio-enp")), Area.FromAcres(0.5), [gypsum, bags, unknown, bulk]);
        Assert.Equal(["crushed", "pellets"], comparison.Costs.Take(2).Select(c => c.Offer.Item.Name));
        Assert.Equal(80m, comparison.Costs[0].CostPerEffectiveTon!.Value, 6);
        Assert.Equal(333.333333m, comparison.Costs[1].CostPerEffectiveTon!.Value, 6);
        Assert.All(comparison.Costs.Skip(2), c => Assert.Null(c.CostPerEffectiveTon));
        Assert.Same(bulk, comparison.CheapestForPlot!.Offer);
        Assert.True(comparison.Has("lime-no-neutralizing-value"));
        Assert.Equal(28 * 6m, comparison.Costs[1].Order!.Cost);
        Assert.Equal(4, comparison.ShowWork().Length);
    }
}
