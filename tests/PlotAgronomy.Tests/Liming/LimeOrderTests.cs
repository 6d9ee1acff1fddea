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
                    LimeFigure.FromPercent(LimeIndex.OregonScore, 92)
                ),
                Area = Area.FromAcres(0.25),
                WorkedDepth = Length.FromInches(4),
                Package = Package.FromWeight(FortyPounds),
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
            Rate = Rate(2, LimeBasis.Find("ohio-enp")),
            Material = LimingMaterial.PureCarbonate,
            Area = Area.FromAcres(0.26),
            Package = Package.FromWeight(FortyPounds),
            Price = 5.5m,
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
                Price = 50m,
            }
        );
        Assert.Null(bulk.Bags);
        Assert.Equal(26m, bulk.Cost!.Value, 6);
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
        var problem = Assert.Throws<InvalidOperationException>(() => Rate(1, LimeBasis.Find("minnesota-enp")).RateOf(unknown));
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
                    Package = Package.FromWeight(FortyPounds),
                }
            );
            Assert.Contains(order.ShowWork(), l => l.Numbers.Contains("1.25 x 1 = 1.25 ton/ac", StringComparison.Ordinal));
            Assert.Contains(order.ShowWork(), l => l.Numbers.StartsWith("32 bags of 40 lb", StringComparison.Ordinal));
        }
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
                Material = LimingMaterial.FromBasis(LimeBasis.Find("oregon-score-100")),
                Area = Area.FromAcres(1),
                AlreadyApplied =
                [
                    LimeApplication.FromMass(Mass.FromPounds(applied), LimingMaterial.FromBasis(LimeBasis.Find("oregon-score-100"))),
                ],
            }
        );
        Assert.Equal(0, order.Product.Pounds);
        Assert.Equal(small, order.Has("lime-above-need-small"));
        Assert.Equal(large, order.Has("lime-above-need"));
    }

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
                Rate = Rate(1, LimeBasis.Find("ohio-enp")),
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
        var lime = LimingMaterial.FromLabel("lime", LimingForm.GroundLimestone, LimeFigure.FromPoundsEqualToOneTon(2500));
        var work = LimeOrder
            .For(
                new LimeOrderRequest
                {
                    Rate = Rate(1, LimeBasis.Find("north-carolina-standard")),
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
                            LimeFigure.FromPercent(LimeIndex.OregonScore, 92)
                        ),
                        Area = Area.FromAcres(1),
                    }
                )
                .ShowWork(),
            l => l.Label.StartsWith("Figure", StringComparison.Ordinal)
        );
}
