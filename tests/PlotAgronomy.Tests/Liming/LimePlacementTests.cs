using PlotAgronomy.Liming;
using UnitsNet;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

public class LimePlacementTests
{
    [Fact]
    public void No_till_by_the_tri_state_rule_takes_half_the_table()
    {
        // Tri-state E-2567 (1995): 0-4 inch basis, half of 4.72; 4.72 x 0.90/0.80 for a lime of 80 %.
        var need = LimeMethod.Find("tri-state-1995-smp").NeedFor(Report(5.5, PlotAgronomy.SoilBuffer.Smp, 6.4), 6.5);
        var basis = LimingMaterial.FromBasis(LimeBasis.Find("ag-lime-nv-90"));
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
        string Split(LimeOrder order) => order.Findings.Single(f => f.Code is "lime-split" or "lime-split-plowed").Text;
        string text = Split(Order(5));
        Assert.Contains(
            "the most Pennsylvania puts on at once, borrowed because test laboratory prints no limit",
            text,
            StringComparison.Ordinal
        );
        // Borrowed with its way of meeting it: equal parts by the tillage before the seed (Liming Practices, Penn State).
        Assert.Contains("the first plowed down, the rest worked in", text, StringComparison.Ordinal);
        Assert.All(Order(5).Dressings, d => Assert.Equal(0, d.MonthsAfterFirst));
        Assert.Equal([5000.0, 5000], Order(5).Dressings.Select(d => Math.Round(d.Mass.Pounds, 6)));
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
}
