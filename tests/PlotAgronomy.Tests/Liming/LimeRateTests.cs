using PlotAgronomy.Liming;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

public class LimeRateTests
{
    [Fact]
    public void Rates_on_different_labels_are_neither_added_nor_compared()
    {
        var one = Rate(1);
        Assert.Throws<InvalidOperationException>(() => one.Plus(Rate(1, LimeBasis.Find("ohio-enp"))));
        Assert.Throws<InvalidOperationException>(() => one.Plus(Rate(1, depthInches: 8)));
        Assert.Throws<InvalidOperationException>(() => one.Plus(Rate(1, targetPh: 6)));
        Assert.Throws<InvalidOperationException>(() => one.Plus(Rate(1, institution: "Oregon")));
        Assert.Throws<InvalidOperationException>(() => one.RatioTo(Rate(1, LimeBasis.Find("ohio-enp"))));
        Assert.Equal(3, one.Plus(Rate(2)).OfBasis.ShortTonsPerAcre, 1e-12);
        Assert.Equal(0.5, one.RatioTo(Rate(2, targetPh: 6)), 1e-12);
    }

    [Fact]
    public void A_conversion_between_indices_needs_a_material_and_shows_its_factor()
    {
        var rate = Rate(2, LimeBasis.Find("ag-lime-nv-90"));
        Assert.Throws<InvalidOperationException>(() => rate.ConvertTo(LimeBasis.Find("ohio-enp")));
        // Legal ground grade: 90 % and 95/70/50/40 through 8/20/60/100 rates 1206 lb/ton in Ohio (Ohio Department of Agriculture).
        var ground = LimingMaterial.FromAnalysis("ground grade", LimingForm.GroundLimestone, 90, SieveAnalysis.FromPercent((8, 95), (20, 70), (60, 50), (100, 40)));
        var through = rate.ConvertTo(LimeBasis.Find("ohio-enp"), ground);
        Assert.Equal(0.603, through.Factor, 1e-9);
        Assert.Equal(1.206, through.Rate.OfBasis.ShortTonsPerAcre, 1e-9);
        Assert.False(through.Has("data-from-memory"));
        Assert.True(rate.ConvertTo(LimeBasis.Find("minnesota-enp"), ground).Has("data-from-memory"));
        Assert.Contains("0.603", through.ShowWork()[0].Numbers, StringComparison.Ordinal);
        Assert.Equal(1.8, rate.ConvertTo(LimeBasis.Find("ohio-enp"), LimingMaterial.PureCarbonate).Rate.OfBasis.ShortTonsPerAcre, 1e-9);
    }

    [Fact]
    public void Georgias_pure_carbonate_becomes_ordinary_lime_by_its_efficiency()
    {
        // Lime buffer capacity by single addition (University of Georgia, 2010): 545.8 lb pure at 73 % is 747.6 lb.
        var pure = LimeRate.FromBasis(ApplicationRate.FromPoundsPerAcre(545.8), 6.3, Length.FromInches(20.0 / 3), LimeBasis.Find("pure-carbonate"), Institution.FindLaboratory("Georgia"));
        Assert.Equal(747.6, pure.ConvertTo(LimeBasis.Find("georgia-ag-lime"), LimingMaterial.PureCarbonate).Rate.OfBasis.PoundsPerAcre, 0.1);
    }

    [Fact]
    public void A_lime_of_unprinted_strength_is_not_converted() =>
        Assert.Throws<InvalidOperationException>(() => Rate(1, LimeBasis.Find("ground-limestone")).ConvertTo(LimeBasis.Find("ohio-enp"), LimingMaterial.PureCarbonate));

    [Fact]
    public void A_printed_rate_without_its_lime_is_refused_with_the_question_to_ask()
    {
        var printed = PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(2), 6.5, Length.FromInches(7), null, Institution.FindLaboratory("a laboratory"));
        Assert.Null(printed.Rate);
        Assert.Contains("Ask the laboratory", printed.Findings.Single(f => f.Code == "lime-basis-unknown").Text, StringComparison.Ordinal);
        var bare = PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(2), null, null, LimeBasis.Find("ohio-enp"), null);
        Assert.Null(bare.Rate);
        Assert.Equal(2, bare.Findings.Count(f => f.Code == "lime-label-missing"));
        Assert.Contains("oregon-score-100", Assert.Throws<KeyNotFoundException>(() => LimeBasis.Find("tons")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_printed_rate_goes_through_every_step_like_any_other()
    {
        var printed = PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(1), 6.0, Length.FromInches(20.0 / 3), LimeBasis.Find("north-carolina-standard"), Institution.FindLaboratory("North Carolina"));
        // By hand: 1 - 0.3 (0.5 ton less 5 months x 0.08) = 0.7, rounded to 0.1 as the report does; half the depth; label 2000 lb.
        var order = LimeOrder.For(new LimeOrderRequest
        {
            Rate = printed.Rate!,
            Material = LimingMaterial.FromLabel("lime", LimingForm.GroundLimestone, LimeFigure.FromPoundsEqualToOneTon(2000)),
            Area = Area.FromAcres(0.5),
            EarlierLime = EarlierLime.FromRate(ApplicationRate.FromShortTonsPerAcre(0.5), 5),
            WorkedDepth = Length.FromInches(10.0 / 3),
            Rounding = RoundingOf("North Carolina"),
            Package = Package.FromWeight(Mass.FromPounds(50)),
        });
        Assert.Equal(0.35, order.BasisRate.OfBasis.ShortTonsPerAcre, 1e-9);
        Assert.Equal(0.35, order.ProductRate.ShortTonsPerAcre, 1e-9);
        Assert.Equal(7, order.Bags);
    }

    [Theory]
    [InlineData("North Carolina", 0.25, 0.3)]
    [InlineData("North Carolina", 0.2499, 0)]
    [InlineData("North Carolina", 0.75, 0.8)]
    [InlineData("Oregon", 2.65, 2.7)]
    [InlineData("Ohio/Indiana/Michigan 1995", 2.667, 2.7)]
    public void Each_institution_rounds_its_own_way(string institution, double tons, double rounded) =>
        Assert.Equal(rounded, RoundingOf(institution).Apply(ApplicationRate.FromShortTonsPerAcre(tons)).ShortTonsPerAcre, 1e-9);

    [Fact]
    public void The_garden_report_of_pennsylvania_rounds_down()
    {
        // Soil test report notes (Penn State): 5 lb/100 ft2 at a CCE of 70 % is printed as 7 lb; exact 7.14.
        var rate = LimeRate.FromBasis(ApplicationRate.FromPoundsPerThousandSquareFeet(50), 6.5, Length.FromInches(7), LimeBasis.Find("cce-100-fine"), Institution.FindLaboratory("Pennsylvania garden"));
        var exact = rate.RateOf(LimingMaterial.FromAnalysis("lime", LimingForm.GroundLimestone, 70));
        Assert.Equal(7.142857, exact.PoundsPerThousandSquareFeet / 10, 1e-6);
        Assert.Equal(7, RoundingOf("Pennsylvania garden").Apply(exact).PoundsPerThousandSquareFeet / 10, 1e-9);
        Assert.Null(Institution.Find("Kansas").LimeRounding);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(24.01)]
    [InlineData(-1)]
    public void A_depth_outside_its_range_is_refused(double inches)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Rate(1, depthInches: inches));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rate(1).AtDepth(Length.FromInches(inches)));
    }

    [Fact]
    public void Text_is_the_same_in_every_culture()
    {
        foreach (string culture in new[] { "de-DE", "tr-TR" })
        {
            using var scope = new CultureScope(culture);
            Assert.Equal("1.25 ton/ac of 100-score lime to pH 6.5, 6.5 in deep (test laboratory)", Rate(1.25, depthInches: 6.5).ToString());
        }
    }

    [Fact]
    public void A_printed_rate_is_followed_and_a_real_difference_is_named()
    {
        var need = LimeMethod.Find("oregon-2025-sikora").NeedFor(Report(5.0, PlotAgronomy.SoilBuffer.Sikora, 6.2), 6.4);
        LimeRate Printed(double tons, string institution = "Oregon", LimeBasis? basis = null) => Rate(tons, basis ?? LimeBasis.Find("oregon-score-100"), 6, 6.4, institution);
        // EM 9585: 2.5, 2.8 and 3.1 ton/ac at 6.3, 6.2 and 6.1.
        Assert.False(PrintedLimeCheck.For(Printed(2.5), need).Differs);
        Assert.False(PrintedLimeCheck.For(Printed(3.1), need).Differs);
        var above = PrintedLimeCheck.For(Printed(3.2), need);
        Assert.True(above.Differs);
        Assert.True(above.Has("lime-printed-differs"));
        Assert.Equal(2.8, above.Computed!.Value.ShortTonsPerAcre, 1e-9);
        Assert.True(PrintedLimeCheck.For(Printed(2.8, "Kentucky", LimeBasis.Find("kentucky-rnv-100")), need).Has("lime-institution-mixed"));
        Assert.Null(PrintedLimeCheck.For(Printed(2.8, "Vermont", LimeBasis.Find("ground-limestone")), need).Differs);
        Assert.Equal(2, above.ShowWork().Length);
        var otherTarget = PrintedLimeCheck.For(Rate(3.2, LimeBasis.Find("oregon-score-100"), 6, 6.8, "Oregon"), need);
        Assert.Null(otherTarget.Differs);
        Assert.True(otherTarget.Has("lime-printed-other-target"));
    }
}
