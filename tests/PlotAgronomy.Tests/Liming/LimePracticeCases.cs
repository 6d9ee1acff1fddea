using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Situations plot owners ask about (common practice), warnings included.</summary>
public class LimePracticeCases
{
    private static readonly Area QuarterAcre = Area.FromAcres(0.25);

    [Theory]
    [InlineData(4, "total lime, plot 1", "years plot 1")]
    [InlineData(2, "total lime, plot 2", "years plot 2")]
    public void C01_a_surface_limit_splits_the_rate_by_year(double tons, string total, string years)
    {
        LimeOrder Order(double bag) => LimeOrder.For(new LimeOrderTerms
        {
            Rate = Rate(tons),
            Material = LimingMaterial.OfBasis(LimeBasis.OregonScore100),
            Area = QuarterAcre,
            Placement = LimePlacement.Surface,
            MostAtOnce = ApplicationRate.FromShortTonsPerAcre(1),
            Bag = Mass.FromPounds(bag),
        });
        var order = Order(40);
        PracticeCase.AssertMatches("C01", total, order.Product.Pounds);
        PracticeCase.AssertMatches("C01", "first dressing each", order.Dressings[0].Mass.Pounds);
        PracticeCase.AssertMatches("C01", "40 lb bags per dressing", order.Dressings[0].Bags!.Value);
        PracticeCase.AssertMatches("C01", "50 lb bags per dressing", Order(50).Dressings[0].Bags!.Value);
        PracticeCase.AssertMatches("C01", years, order.Dressings.Length);
        Assert.True(order.Has("lime-split"));
        Assert.True(order.Has("lime-surface-slow"));
    }

    [Fact]
    public void C07_pounds_of_neutralizing_power_are_not_pounds_of_lime()
    {
        var pellets = LimingMaterial.FromLabel("pellets", LimingForm.Pelletized, LimeFigure.Of(LimeIndex.MinnesotaEnp, 1800));
        var crushed = LimingMaterial.FromLabel("crushed lime", LimingForm.GroundLimestone, LimeFigure.Of(LimeIndex.MinnesotaEnp, 1000));
        LimeOrder Order(double enp, LimingMaterial material) => LimeOrder.For(new LimeOrderTerms { Rate = Rate(enp / 2000, LimeBasis.MinnesotaEnp), Material = material, Area = QuarterAcre, Bag = Mass.FromPounds(40) });
        PracticeCase.AssertMatches("C07", "pellets, first site", Order(3000, pellets).ProductRate.PoundsPerAcre);
        PracticeCase.AssertMatches("C07", "crushed, first site", Order(3000, crushed).ProductRate.PoundsPerAcre);
        PracticeCase.AssertMatches("C07", "pellets, second site", Order(2000, pellets).ProductRate.PoundsPerAcre);
        PracticeCase.AssertMatches("C07", "pellets 0.25 acre, first", Order(3000, pellets).Product.Pounds);
        PracticeCase.AssertMatches("C07", "bags, first", Order(3000, pellets).Bags!.Value);
        PracticeCase.AssertMatches("C07", "pellets 0.25 acre, second", Order(2000, pellets).Product.Pounds);
        PracticeCase.AssertMatches("C07", "bags, second", Order(2000, pellets).Bags!.Value);
        PracticeCase.AssertMatches("C07", "crushed 0.25 acre, first", Order(3000, crushed).Product.Pounds);
        Assert.Throws<InvalidOperationException>(() => Order(3000, LimingMaterial.FromAnalysis("mill ash", LimingForm.WoodAsh, 50)));
    }

    [Fact]
    public void C13_a_figure_without_its_unit_is_refused_and_a_high_one_is_questioned()
    {
        Assert.False(Amounts.TryReadRate("2.4", out _, out _));
        var perAcre = LimeOrder.For(new LimeOrderTerms { Rate = Rate(2.4), Material = LimingMaterial.OfBasis(LimeBasis.OregonScore100), Area = Area.FromAcres(0.5) });
        PracticeCase.AssertMatches("C13", "plot if 2.4 ton/acre", perAcre.Product.Pounds);
        PracticeCase.AssertMatches("C13", "same", perAcre.Product.ShortTons);
        var onPlot = ApplicationRate.Of(Mass.FromShortTons(2.4), Area.FromAcres(0.5));
        PracticeCase.AssertMatches("C13", "rate if 2.4 ton went on the plot", onPlot.ShortTonsPerAcre);
        Assert.True(PrintedLimeRate.Read(onPlot, 6.5, Length.FromInches(6), LimeBasis.OregonScore100, "Oregon").Has("lime-rate-high"));
    }

    [Fact]
    public void C15_a_blank_buffer_is_never_read_as_zero()
    {
        var method = LimeRequirement.ByName("tri-state-1995-smp");
        var atTarget = method.NeedFor(Report(6.9), 6.5);
        PracticeCase.AssertMatches("C15", "lime", atTarget.Rate!.OfBasis.ShortTonsPerAcre);
        Assert.True(atTarget.Has("lime-ph-at-target"));
        Assert.Equal(60.4, PracticeCase.Expected("C15", "wrong value if blank = 0").Value);
        Assert.Throws<ArgumentOutOfRangeException>(() => BufferPh.FromValue(0, SoilBuffer.Smp));

        var blank = method.NeedFor(Report(5.5), 6.5);
        Assert.Null(blank.Rate);
        Assert.True(blank.Has("lime-reading-missing"));

        var high = method.NeedFor(Report(5.5, SoilBuffer.Smp, 7.2), 6.5);
        Assert.Equal(0, high.Rate!.OfBasis.PoundsPerAcre);
        Assert.True(high.Has("lime-buffer-high"));
        PracticeCase.AssertMatches("C15", "raw value at 7.2", method.Formula.PoundsPerAcre(7.2, LimeSample.From(Report(5.5)), 6.5)!.Value / 2000);
    }
}
