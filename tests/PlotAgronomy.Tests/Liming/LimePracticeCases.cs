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
        LimeOrder Order(double bag) => LimeOrder.For(new LimeOrderRequest
        {
            Rate = Rate(tons),
            Material = LimingMaterial.FromBasis(LimeBasis.Find("oregon-score-100")),
            Area = QuarterAcre,
            Placement = LimePlacement.Surface,
            MostAtOnce = ApplicationRate.FromShortTonsPerAcre(1),
            Package = Package.FromWeight(Mass.FromPounds(bag)),
        });
        var order = Order(40);
        PracticeCase.AssertMatches("C01", total, order.Product.Pounds);
        PracticeCase.AssertMatches("C01", "first dressing each", order.Dressings[0].Mass.Pounds);
        PracticeCase.AssertMatches("C01", "40 lb bags per dressing", order.Dressings[0].Bags!.Value);
        PracticeCase.AssertMatches("C01", "50 lb bags per dressing", Order(50).Dressings[0].Bags!.Value);
        PracticeCase.AssertMatches("C01", years, order.Dressings.Length);
        Assert.True(order.Has("lime-split"));
        Assert.Equal(["the most this order allows at once"], order.Findings.Where(f => f.Code == "lime-split").Select(f => f.Text.Split(", ")[1].Split(": ")[0]));
        Assert.True(order.Has("lime-surface-slow"));
    }

    [Theory]
    [InlineData(4.9, new string[0])]
    [InlineData(5.2, new[] { "cereal-rye", "buckwheat" })]
    public void C01_clover_waits_while_the_surface_lime_is_young(double ph, string[] now)
    {
        var outlook = LimeOutlook.For(new LimeOutlookRequest
        {
            Soil = Report(ph),
            Rate = Rate(4),
            ShareDelivered = Fraction.FromPercent(25),
            Material = LimingMaterial.FromBasis(LimeBasis.Find("oregon-score-100")),
            Placement = LimePlacement.Surface,
            LimedOn = new DateOnly(2027, 6, 15),
            PlantingOn = new DateOnly(2027, 9, 1),
            Kinds = [Kind("white-dutch-clover"), Kind("cereal-rye"), Kind("buckwheat")],
        });
        // The published lower limit of rye and buckwheat is pH 5.0, of white clover 5.5 or more: at 4.9 none of them is met.
        Assert.Contains("white-dutch-clover", outlook.HoldBack.Select(k => k.Id));
        Assert.Equal(now, outlook.SowNow.Select(k => k.Id));
        Assert.True(outlook.Has("lime-kind-hold-back"));
        Assert.True(outlook.Has("lime-too-young"));
        Assert.Contains("2 inches after 12 months", outlook.Findings.Single(f => f.Code == "lime-surface-slow").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void C07_pounds_of_neutralizing_power_are_not_pounds_of_lime()
    {
        var pellets = LimingMaterial.FromLabel("pellets", LimingForm.Pelletized, LimeFigure.FromPoundsPerTon(LimeIndex.Find("minnesota-enp"), 1800));
        var crushed = LimingMaterial.FromLabel("crushed lime", LimingForm.GroundLimestone, LimeFigure.FromPoundsPerTon(LimeIndex.Find("minnesota-enp"), 1000));
        LimeOrder Order(double enp, LimingMaterial material) => LimeOrder.For(new LimeOrderRequest { Rate = Rate(enp / 2000, LimeBasis.Find("minnesota-enp")), Material = material, Area = QuarterAcre, Package = Package.FromWeight(Mass.FromPounds(40)) });
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
        var perAcre = LimeOrder.For(new LimeOrderRequest { Rate = Rate(2.4), Material = LimingMaterial.FromBasis(LimeBasis.Find("oregon-score-100")), Area = Area.FromAcres(0.5) });
        PracticeCase.AssertMatches("C13", "plot if 2.4 ton/acre", perAcre.Product.Pounds);
        PracticeCase.AssertMatches("C13", "same", perAcre.Product.ShortTons);
        var onPlot = ApplicationRate.FromMassAndArea(Mass.FromShortTons(2.4), Area.FromAcres(0.5));
        PracticeCase.AssertMatches("C13", "rate if 2.4 ton went on the plot", onPlot.ShortTonsPerAcre);
        Assert.True(PrintedLimeRate.Read(onPlot, 6.5, Length.FromInches(6), LimeBasis.Find("oregon-score-100"), Institution.FindLaboratory("Oregon")).Has("lime-rate-high"));
    }

    [Fact]
    public void C15_a_blank_buffer_is_never_read_as_zero()
    {
        var method = LimeMethod.Find("tri-state-1995-smp");
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
        PracticeCase.AssertMatches("C15", "raw value at 7.2", method.Formula.PoundsPerAcre(7.2, PlotSoil.For(Report(5.5)), 6.5)!.Value / 2000);
    }

    [Fact]
    public void C03_the_balance_says_what_is_owed_and_what_is_too_much()
    {
        var lime = LimingMaterial.FromBasis(LimeBasis.Find("oregon-score-100"));
        var rate = Rate(1, targetPh: 6.5);
        var area = Area.FromAcres(0.75);
        var before = LimeBalance.For(rate, area, [LimeApplication.FromBags(30, Mass.FromPounds(40), lime)]);
        PracticeCase.AssertMatches("C03", "need", before.Need.Pounds);
        PracticeCase.AssertMatches("C03", "applied", before.Applied.Pounds);
        PracticeCase.AssertMatches("C03", "rate applied", before.AppliedRate.PoundsPerAcre);
        PracticeCase.AssertMatches("C03", "still owed", before.StillOwed.Pounds);
        Assert.True(before.Has("lime-below-need"));
        var order = LimeOrder.For(new LimeOrderRequest { Rate = rate, Material = lime, Area = area, AlreadyApplied = [LimeApplication.FromMass(Mass.FromPounds(1200), lime)], Package = Package.FromWeight(Mass.FromPounds(40)) });
        PracticeCase.AssertMatches("C03", "still owed", order.Product.Pounds);
        PracticeCase.AssertMatches("C03", "40 lb bags", order.Bags!.Value);
        var after = LimeBalance.For(rate, area, [LimeApplication.FromMass(Mass.FromPounds(1200), lime)], [LimeApplication.FromMass(Mass.FromPounds(500), lime)]);
        PracticeCase.AssertMatches("C03", "rate after 500 lb more", after.RateAfterPlan.PoundsPerAcre);
        PracticeCase.AssertMatches("C03", "over", after.AboveNeedPercent!.Value);
        Assert.True(after.Has("lime-above-need"));

        var outlook = LimeOutlook.For(new LimeOutlookRequest
        {
            Soil = Report(5.5),
            Rate = rate,
            Material = lime,
            LimedOn = new DateOnly(2027, 8, 15),
            PlantingOn = new DateOnly(2027, 8, 29),
            Kinds = [Kind("white-dutch-clover"), Kind("medium-red-clover"), Kind("crimson-clover"), Kind("cereal-rye")],
        });
        Assert.True(outlook.Has("lime-too-young"));
        Assert.Equal(["white-dutch-clover"], outlook.HoldBack.Select(k => k.Id));
    }

    [Fact]
    public void C05_fewer_pounds_of_fine_lime_only_where_the_rate_assumes_coarse_lime()
    {
        var rate = LimeRate.FromBasis(ApplicationRate.FromPoundsPerThousandSquareFeet(90), 6.5, Length.FromInches(6), LimeBasis.Find("georgia-ag-lime"), Institution.FindLaboratory("Georgia"));
        PracticeCase.AssertMatches("C05", "rate", rate.OfBasis.ShortTonsPerAcre);
        PracticeCase.AssertMatches("C05", "plot, ordinary lime", rate.OfBasis.Over(QuarterAcre).Pounds);
        var allowance = FineLimeAllowance.For(rate);
        var low = allowance.Low!.Value.Over(QuarterAcre);
        var high = allowance.High!.Value.Over(QuarterAcre);
        PracticeCase.AssertMatches("C05", "plot, fine lime low", low.Pounds);
        PracticeCase.AssertMatches("C05", "plot, fine lime high", high.Pounds);
        PracticeCase.AssertMatches("C05", "bags low", Package.RoundUp(low, Mass.FromPounds(40)));
        PracticeCase.AssertMatches("C05", "bags high", Package.RoundUp(high, Mass.FromPounds(40)));
        foreach (string basis in new[] { "pure-carbonate", "cce-100-fine", "ohio-enp", "iowa-ecce", "ground-limestone" })
        {
            var refused = FineLimeAllowance.For(Rate(2, LimeBasis.Find(basis)));
            Assert.Null(refused.Low);
            Assert.True(refused.Has("lime-allowance-refused"));
        }
    }

    [Fact]
    public void C09_one_for_luck_is_half_as_much_again()
    {
        var lime = LimingMaterial.FromBasis(LimeBasis.Find("oregon-score-100"));
        var balance = LimeBalance.For(Rate(2), QuarterAcre, [], [LimeApplication.FromMass(Mass.FromPounds(1500), lime)]);
        PracticeCase.AssertMatches("C09", "recommended", balance.Need.Pounds);
        PracticeCase.AssertMatches("C09", "planned", balance.Planned.Pounds);
        PracticeCase.AssertMatches("C09", "over", balance.AboveNeedPercent!.Value);
        Assert.True(balance.Has("lime-above-need"));
        Assert.True(balance.Has("lime-extra-effect"));
    }

    [Fact]
    public void C11_gypsum_meets_nothing_of_the_need()
    {
        var gypsum = Mass.FromPounds(1000);
        var balance = LimeBalance.For(Rate(0.75, LimeBasis.Find("pure-carbonate")), Area.FromAcres(1), [LimeApplication.FromMass(gypsum, LimingMaterial.Gypsum)]);
        PracticeCase.AssertMatches("C11", "lime credit", balance.Applied.Pounds);
        PracticeCase.AssertMatches("C11", "still owed", balance.StillOwed.Pounds);
        var compound = LimingCompound.Find("gypsum");
        PracticeCase.AssertMatches("C11", "Ca", gypsum.Pounds * compound.Calcium.Value);
        PracticeCase.AssertMatches("C11", "S", gypsum.Pounds * compound.Sulfur.Value);
        Assert.True(balance.Has("lime-no-neutralizing-value"));
        Assert.True(balance.Has("lime-gypsum-sulfur"));
    }

    [Fact]
    public void C21_a_margin_with_a_slipped_decimal_point_is_rejected()
    {
        PracticeCase.AssertMatches("C21", "trigger pH, 0.2", LimeTrigger.Below(6.8, 0.2).Ph!.Value);
        PracticeCase.AssertMatches("C21", "trigger pH, 0.3", LimeTrigger.Below(6.8, 0.3).Ph!.Value);
        Assert.NotNull(LimeTrigger.Below(6.8, 0.5).Ph);
        var slip = LimeTrigger.Below(6.8, 2);
        Assert.Equal(4.8, PracticeCase.Expected("C21", "misprint result").Value);
        Assert.Null(slip.Ph);
        Assert.True(slip.Has("lime-trigger-implausible"));
    }

    [Fact]
    public void C23_sand_gets_a_range_and_a_careful_first_dressing()
    {
        var sample = PlotSoil.For(Report(5.4, SoilBuffer.Smp, 6.9, cec: 4));
        var weak = WeaklyBufferedLime.For(sample, 6.5, LimeMethod.Find("tri-state-1995-smp"), LimeMethod.Find("adams-evans"));
        PracticeCase.AssertMatches("C23", "table", weak.BufferNeeds[0].Rate!.OfBasis.ShortTonsPerAcre);
        PracticeCase.AssertMatches("C23", "rule low", weak.RuleLow.OfBasis.ShortTonsPerAcre);
        PracticeCase.AssertMatches("C23", "rule high", weak.RuleHigh.OfBasis.ShortTonsPerAcre);
        PracticeCase.AssertMatches("C23", "advice low", weak.AdviceLow.OfBasis.ShortTonsPerAcre);
        PracticeCase.AssertMatches("C23", "advice high", weak.AdviceHigh.OfBasis.ShortTonsPerAcre);
        PracticeCase.AssertMatches("C23", "first dressing", weak.FirstDressing.OfBasis.ShortTonsPerAcre);
        Assert.Equal(500, weak.FirstDressing.OfBasis.Over(QuarterAcre).Pounds, 1e-9);
        Assert.Equal(12, weak.RetestWithinMonths);
        Assert.True(weak.Has("lime-weakly-buffered-range"));
        Assert.True(weak.Has("data-from-memory"));
        Assert.True(weak.BufferNeeds[0].Has("lime-weakly-buffered"));
    }

    [Fact]
    public void C23_without_a_method_from_memory_the_advice_rests_on_the_rule_alone()
    {
        var sample = PlotSoil.For(Report(5.4, SoilBuffer.Sikora, 6.9, cec: 4));
        var weak = WeaklyBufferedLime.For(sample, 6.5);
        Assert.Null(weak.ByCapacity);
        Assert.False(weak.Has("data-from-memory"));
        Assert.DoesNotContain("LIME-AE1", weak.Sources.Select(s => s.Id));
        // By hand: the rule asks for 2.75 to 3.67; from the first dressing of 1 to the cap of 2.
        Assert.Equal(1, weak.AdviceLow.OfBasis.ShortTonsPerAcre, 1e-12);
        Assert.Equal(2, weak.AdviceHigh.OfBasis.ShortTonsPerAcre, 1e-12);
    }

    [Fact]
    public void C73_lime_by_test_saves_what_a_blanket_wastes()
    {
        var lime = LimingMaterial.FromBasis(LimeBasis.Find("oregon-score-100"));
        var rate = Rate(1.5);
        LimePlotNeed[] plots =
        [
            LimePlotNeed.FromRate("1", Area.FromAcres(0.3), rate), LimePlotNeed.FromRate("2", Area.FromAcres(0.4), rate),
            .. Enumerable.Range(3, 4).Select(i => LimePlotNeed.FromRate($"{i}", Area.FromAcres(1.7 / 4), null)),
        ];
        var comparison = LimeByTest.Compare(plots, rate, lime);
        PracticeCase.AssertMatches("C73", "by test", comparison.ByTest.Pounds);
        PracticeCase.AssertMatches("C73", "bags by test", Package.RoundUp(comparison.ByTest, Mass.FromPounds(40)));
        PracticeCase.AssertMatches("C73", "blanket", comparison.Blanket.Pounds);
        PracticeCase.AssertMatches("C73", "wasted", comparison.Wasted.Pounds);
        Assert.Equal(0, comparison.LeftShort.Pounds);
        Assert.Contains("No plot inherits the report of another", comparison.Findings.Single(f => f.Code == "lime-blanket-waste").Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2023, 11, 24, true)]
    [InlineData(2023, 11, 25, false)]
    public void C73_an_old_test_or_a_borrowed_one_is_named(int year, int month, int day, bool old)
    {
        SoilReport Tested() => new() { Laboratory = "test laboratory", SampledOn = new DateOnly(year, month, day) };
        var shared = Tested();
        LimePlotNeed Plot(string name, SoilReport report) => LimePlotNeed.FromRate(name, Area.FromAcres(0.4), Rate(1.5), report);
        LimeByTest Compare(params LimePlotNeed[] plots) => LimeByTest.Compare(plots, Rate(1.5), LimingMaterial.FromBasis(LimeBasis.Find("oregon-score-100")), new DateOnly(2026, 11, 25));
        Assert.Equal(old, Compare(Plot("1", Tested()), Plot("2", Tested())).Has("soil-report-old"));
        Assert.False(Compare(Plot("1", Tested()), Plot("2", Tested())).Has("lime-report-shared"));
        Assert.True(Compare(Plot("1", shared), Plot("2", shared)).Has("lime-report-shared"));
    }

    private static PlotAgronomy.CropKind Kind(string id) => PlotAgronomy.KindCatalog.Standard.Kinds.Single(k => k.Id == id);
}
