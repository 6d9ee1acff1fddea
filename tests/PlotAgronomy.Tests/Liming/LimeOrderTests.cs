using PlotAgronomy.Liming;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

public class LimeOrderTests
{
    private static readonly Mass FortyPounds = Mass.FromPounds(40);

    [Fact]
    public void A_plot_is_limed_by_score_depth_and_bag()
    {
        // Constructed from EM 9585 (Oregon State University, 2025): 2.1 ton/ac at 6 inches; 4 inches worked; score 92.
        var need = LimeMethod.Find("oregon-2025-sikora").NeedFor(Report(5.2, PlotAgronomy.SoilBuffer.Sikora, 6.4), 6.4);
        var order = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = need.Rate!,
                Material = LimingMaterial.FromLabel(
                    "pellets",
                    LimingForm.Pelletized,
                    LimeFigure.FromValue(LimeIndex.OregonScore, 92)
                ),
                Area = Area.FromAcres(0.25),
                WorkedDepth = Length.FromInches(4),
                Bag = FortyPounds,
            }
        );
        Assert.Equal(1.40, order.BasisRate.OfBasis.ShortTonsPerAcre, 1e-9);
        Assert.Equal(1.522, order.ProductRate.ShortTonsPerAcre, 5e-4);
        Assert.Equal(760.9, order.Product.Pounds, 0.05);
        Assert.Equal(20, order.Bags);
        Assert.True(order.Has("lime-depth-changed"));
    }

    [Fact]
    public void Cost_is_of_whole_bags_or_of_tons()
    {
        var request = new LimeOrderRequest
        {
            Rate = Rate(2, LimeBasis.OhioEnp),
            Material = LimingMaterial.PureCarbonate,
            Area = Area.FromAcres(0.26),
            Bag = FortyPounds,
            PricePerBag = 5.5m,
        };
        var bagged = LimeOrder.For(request);
        Assert.Equal(26, bagged.Bags);
        Assert.Equal(143m, bagged.Cost);
        var bulk = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = request.Rate,
                Material = request.Material,
                Area = request.Area,
                PricePerTon = 50m,
            }
        );
        Assert.Null(bulk.Bags);
        Assert.Equal(26m, bulk.Cost!.Value, 6);
    }

    [Fact]
    public void No_till_by_the_tri_state_rule_takes_half_the_table()
    {
        // Tri-state E-2567 (1995): 0-4 inch basis, half of 4.72; 4.72 x 0.90/0.80 for a lime of 80 %.
        var need = LimeMethod.Find("tri-state-1995-smp").NeedFor(Report(5.5, PlotAgronomy.SoilBuffer.Smp, 6.4), 6.5);
        var basis = LimingMaterial.FromBasis(LimeBasis.AgLimeNeutralizingValue90);
        Assert.Equal(
            2.36,
            LimeOrder
                .For(
                    new LimeOrderRequest
                    {
                        Rate = need.Rate!,
                        Material = basis,
                        Area = Area.FromAcres(1),
                        Placement = LimePlacement.Surface,
                    }
                )
                .ProductRate.ShortTonsPerAcre,
            1e-9
        );
        var eighty = LimingMaterial.FromAnalysis("lime of 80 %", LimingForm.GroundLimestone, 80);
        Assert.Equal(
            5.31,
            LimeOrder
                .For(
                    new LimeOrderRequest
                    {
                        Rate = need.Rate!,
                        Material = eighty,
                        Area = Area.FromAcres(1),
                    }
                )
                .ProductRate.ShortTonsPerAcre,
            1e-9
        );
    }

    [Fact]
    public void A_material_that_neutralizes_nothing_is_refused() =>
        Assert.Throws<InvalidOperationException>(() =>
            LimeOrder.For(
                new LimeOrderRequest
                {
                    Rate = Rate(1),
                    Material = LimingMaterial.Gypsum,
                    Area = Area.FromAcres(1),
                }
            )
        );

    [Fact]
    public void A_material_of_unknown_analysis_is_refused_with_what_to_ask()
    {
        var unknown = LimingMaterial.FromAnalysis("barn lime", LimingForm.Other, 90);
        var problem = Assert.Throws<InvalidOperationException>(() => Rate(1, LimeBasis.MinnesotaEnp).RateOf(unknown));
        Assert.Contains("8, 20, 60 mesh", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    [InlineData(0)]
    public void An_area_must_be_above_zero(double acres)
    {
        if (double.IsFinite(acres))
        {
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                LimeOrder.For(
                    new LimeOrderRequest
                    {
                        Rate = Rate(1),
                        Material = LimingMaterial.PureCarbonate,
                        Area = Area.FromAcres(acres),
                    }
                )
            );
        }
        else
        {
            Assert.ThrowsAny<ArgumentException>(() =>
                LimeOrder.For(
                    new LimeOrderRequest
                    {
                        Rate = Rate(1),
                        Material = LimingMaterial.PureCarbonate,
                        Area = Area.FromAcres(acres),
                    }
                )
            );
        }
    }

    [Fact]
    public void Later_dressings_carry_dates_and_sum_to_the_whole()
    {
        var order = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = Rate(5, institution: "Oregon"),
                Material = LimingMaterial.PureCarbonate,
                Area = Area.FromAcres(1),
                Placement = LimePlacement.Surface,
                FirstDressingOn = new DateOnly(2027, 3, 1),
            }
        );
        Assert.Equal([4000.0, 4000, 2000], order.Dressings.Select(d => Math.Round(d.Mass.Pounds, 6)));
        Assert.Equal(
            [new DateOnly(2027, 3, 1), new DateOnly(2028, 3, 1), new DateOnly(2029, 3, 1)],
            order.Dressings.Select(d => d.On!.Value)
        );
        Assert.True(order.Has("lime-split"));
        Assert.True(order.Has("lime-surface-slow"));
    }

    [Fact]
    public void The_working_says_what_a_rate_is_rounded_to()
    {
        var order = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = Rate(1.23),
                Material = LimingMaterial.PureCarbonate,
                Area = Area.FromAcres(1),
                Rounding = RoundingOf("North Carolina"),
            }
        );
        Assert.Contains(
            "Rounded as North Carolina does = to whole steps of its own = 1.2 ton/ac, in steps of 0.1 ton/ac [LIME-S7]",
            order.ShowWork().Select(l => l.ToString())
        );
    }

    [Fact]
    public void The_working_names_its_numbers_in_any_culture()
    {
        foreach (string culture in new[] { "de-DE", "tr-TR" })
        {
            using var scope = new CultureScope(culture);
            var order = LimeOrder.For(
                new LimeOrderRequest
                {
                    Rate = Rate(1.25),
                    Material = LimingMaterial.PureCarbonate,
                    Area = Area.FromAcres(0.5),
                    Bag = FortyPounds,
                }
            );
            Assert.Contains(order.ShowWork(), l => l.Numbers.Contains("1.25 x 1 = 1.25 ton/ac", StringComparison.Ordinal));
            Assert.Contains(order.ShowWork(), l => l.Numbers.StartsWith("32 bags of 40 lb", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Pennsylvania_plows_down_one_half_and_works_in_the_other()
    {
        // Liming Practices, forage fertility (Penn State): over 4 ton/acre half plowed down, half worked into the surface.
        LimeOrder Order(double tons) =>
            LimeOrder.For(
                new LimeOrderRequest
                {
                    Rate = Rate(tons, LimeBasis.Find("cce-100-fine"), 7, institution: "Pennsylvania"),
                    Material = LimingMaterial.PureCarbonate,
                    Area = Area.FromAcres(1),
                }
            );
        Assert.Equal([5000.0, 5000], Order(5).Dressings.Select(d => d.Mass.Pounds));
        Assert.All(Order(5).Dressings, d => Assert.Equal(0, d.MonthsAfterFirst));
        Assert.True(Order(5).Has("lime-split-plowed"));
        Assert.True(Order(5).Has("lime-rate-high"));
        Assert.Single(Order(4).Dressings);
        Assert.False(Order(4).Has("lime-rate-high"));
    }

    [Fact]
    public void Turf_in_pennsylvania_gets_a_hundred_pounds_at_once()
    {
        // Lime Recommendations for Turf (Penn State): 100 lb/1000 ft2 at once, repeats 4-6 months apart.
        var rate = LimeRate.FromBasis(
            ApplicationRate.FromPoundsPerThousandSquareFeet(230),
            7.0,
            Length.FromInches(7),
            LimeBasis.Find("cce-100-fine"),
            Institution.FindLaboratory("Pennsylvania turf")
        );
        var order = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = rate,
                Material = LimingMaterial.PureCarbonate,
                Area = Area.FromSquareFeet(1000),
                Placement = LimePlacement.Surface,
            }
        );
        Assert.Equal([100.0, 100, 30], order.Dressings.Select(d => Math.Round(d.Mass.Pounds, 6)));
        Assert.Equal([0, 4, 8], order.Dressings.Select(d => d.MonthsAfterFirst));
    }

    [Fact]
    public void A_borrowed_limit_names_its_owner()
    {
        LimeOrder Order(double tons, ApplicationRate? most = null) =>
            LimeOrder.For(
                new LimeOrderRequest
                {
                    Rate = Rate(tons),
                    Material = LimingMaterial.PureCarbonate,
                    Area = Area.FromAcres(1),
                    MostAtOnce = most,
                }
            );
        string Split(LimeOrder order) => order.Findings.Single(f => f.Code == "lime-split").Text;
        string text = Split(Order(5));
        Assert.Contains(
            "the most Pennsylvania puts on at once, borrowed because test laboratory prints no limit",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("12 months apart by common practice", text, StringComparison.Ordinal);
        Assert.Equal([8000.0, 2000], Order(5).Dressings.Select(d => Math.Round(d.Mass.Pounds, 6)));
        Assert.Contains(
            "the most this order allows at once",
            Split(Order(5, ApplicationRate.FromShortTonsPerAcre(3))),
            StringComparison.Ordinal
        );
        Assert.Single(Order(4).Dressings);
    }

    [Theory]
    [InlineData(10, 1)]
    [InlineData(11, 2)]
    [InlineData(20, 2)]
    [InlineData(21, 3)]
    [InlineData(40, 3)]
    public void The_garden_report_of_pennsylvania_knows_two_and_three_dressings(double poundsPer100, int parts)
    {
        // Soil test report notes (Penn State): 11-20 lb/100 ft2 in two dressings six months apart, 21 and more in three.
        var rate = LimeRate.FromBasis(
            ApplicationRate.FromPoundsPerThousandSquareFeet(10 * poundsPer100),
            6.5,
            Length.FromInches(7),
            LimeBasis.Find("cce-100-fine"),
            Institution.FindLaboratory("Pennsylvania garden")
        );
        var order = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = rate,
                Material = LimingMaterial.PureCarbonate,
                Area = Area.FromSquareFeet(100),
            }
        );
        Assert.Equal(parts, order.Dressings.Length);
        Assert.Equal(poundsPer100, order.Dressings.Sum(d => d.Mass.Pounds), 1e-9);
        Assert.All(order.Dressings, d => Assert.Equal(poundsPer100 / parts, d.Mass.Pounds, 1e-9));
    }

    [Theory]
    [InlineData(2000, false, false)]
    [InlineData(2100, true, false)]
    [InlineData(2300, false, true)]
    public void Lime_already_above_the_need_is_named(double applied, bool small, bool large)
    {
        var order = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = Rate(1),
                Material = LimingMaterial.FromBasis(LimeBasis.OregonScore100),
                Area = Area.FromAcres(1),
                AlreadyApplied =
                [
                    LimeApplication.FromMass(Mass.FromPounds(applied), LimingMaterial.FromBasis(LimeBasis.OregonScore100)),
                ],
            }
        );
        Assert.Equal(0, order.Product.Pounds);
        Assert.Equal(small, order.Has("lime-above-need-small"));
        Assert.Equal(large, order.Has("lime-above-need"));
    }

    [Theory]
    [InlineData("Missouri", 3, new[] { 2.0, 1 }, 24)]
    [InlineData("Oregon", 3, new[] { 2.0, 1 }, 12)]
    [InlineData("New York", 3, new[] { 1.0, 1, 1 }, 12)]
    public void Each_institution_limits_lime_on_the_surface(string institution, double tons, double[] parts, int months)
    {
        var order = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = Rate(tons, institution: institution),
                Material = LimingMaterial.PureCarbonate,
                Area = Area.FromAcres(1),
                Placement = LimePlacement.Surface,
            }
        );
        Assert.Equal(parts, order.Dressings.Select(d => Math.Round(d.Rate.ShortTonsPerAcre, 9)));
        Assert.Equal(months, order.Dressings[1].MonthsAfterFirst);
    }

    [Fact]
    public void Iowas_no_till_rate_is_for_the_top_inches()
    {
        // Crop Advantage Series (Iowa State, 2019): sample and lime 2-3 inches; 3,880.3 lb at 6 inches is half of that at 3.
        var need = LimeMethod.Find("iowa-pm1688-equation").NeedFor(Report(5.2, PlotAgronomy.SoilBuffer.Smp, 6.35), 6.5);
        LimeOrder Order(LimePlacement placement, double? worked) =>
            LimeOrder.For(
                new LimeOrderRequest
                {
                    Rate = need.Rate!,
                    Material = LimingMaterial.PureCarbonate,
                    Area = Area.FromAcres(1),
                    Placement = placement,
                    WorkedDepth = worked is { } w ? Length.FromInches(w) : null,
                }
            );
        Assert.Equal(3880.3 / 2, Order(LimePlacement.Surface, null).Product.Pounds, 0.05);
        Assert.Equal(2586.8, Order(LimePlacement.WorkedIn, 4).Product.Pounds, 0.05);
    }

    [Fact]
    public void An_institution_without_a_surface_rule_says_so() =>
        Assert.True(
            LimeOrder
                .For(
                    new LimeOrderRequest
                    {
                        Rate = Rate(1),
                        Material = LimingMaterial.PureCarbonate,
                        Area = Area.FromAcres(1),
                        Placement = LimePlacement.Surface,
                    }
                )
                .Has("lime-no-surface-rule")
        );

    [Fact]
    public void A_lime_of_unprinted_strength_counts_pound_for_pound_and_says_so()
    {
        var order = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = Rate(1, LimeBasis.Find("ground-limestone")),
                Material = LimingMaterial.FromAnalysis("lime", LimingForm.GroundLimestone, 90),
                Area = Area.FromAcres(1),
            }
        );
        Assert.Equal(2000, order.Product.Pounds, 1e-9);
        Assert.True(order.Has("lime-basis-unstated"));
    }

    [Fact]
    public void The_working_of_an_analysed_lime_shows_its_fineness_figure_and_magnesium()
    {
        // By hand from Ohio's bands 0.2, 0.6 and 1: 0.2 x 0.3 + 0.6 x 0.2 + 1 x 0.5 = 0.68; 90 / 100 x 0.68 x 0.95 x 2000 = 1,162.8.
        var lime = LimingMaterial.FromAnalysis(
            "dolomite",
            LimingForm.GroundLimestone,
            90,
            SieveAnalysis.FromPercent((8, 100), (20, 70), (60, 50)),
            Fraction.FromPercent(5),
            Fraction.FromPercent(6)
        );
        var order = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = Rate(1, LimeBasis.OhioEnp),
                Material = lime,
                Area = Area.FromAcres(1),
            }
        );
        var work = order.ShowWork();
        Assert.Equal(3, work.Count(l => l.Label.StartsWith("Fineness, passing", StringComparison.Ordinal)));
        Assert.Contains(work, l =>
            l.Label == "Figure of the material"
            && l.Numbers.Contains("90 / 100 x 0.68 x 0.95 x 2,000 = 1,162.8 lb/ton", StringComparison.Ordinal)
        );
        Assert.Contains(work, l => l.Label == "Magnesium" && l.Numbers.Contains("x 0.06 = ", StringComparison.Ordinal));
        Assert.Equal(0.06 * order.Product.Pounds, order.Magnesium!.Value.Pounds, 1e-9);
    }

    [Fact]
    public void The_working_of_a_North_Carolina_label_shows_its_pounds()
    {
        var lime = LimingMaterial.FromLabel("lime", LimingForm.GroundLimestone, LimeFigure.FromNorthCarolinaLabel(2500));
        var work = LimeOrder
            .For(
                new LimeOrderRequest
                {
                    Rate = Rate(1, LimeBasis.NorthCarolinaStandard),
                    Material = lime,
                    Area = Area.FromAcres(1),
                }
            )
            .ShowWork();
        Assert.Contains(work, l =>
            l.Label == "Figure of the label" && l.Numbers.Contains("100 x 2,000 / 2,500 = 80 %", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_stated_figure_needs_no_reckoning() =>
        Assert.DoesNotContain(
            LimeOrder
                .For(
                    new LimeOrderRequest
                    {
                        Rate = Rate(1),
                        Material = LimingMaterial.FromLabel(
                            "pellets",
                            LimingForm.Pelletized,
                            LimeFigure.FromValue(LimeIndex.OregonScore, 92)
                        ),
                        Area = Area.FromAcres(1),
                    }
                )
                .ShowWork(),
            l => l.Label.StartsWith("Figure", StringComparison.Ordinal)
        );
}
