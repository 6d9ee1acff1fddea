using PlotAgronomy.Liming;
using UnitsNet;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Which lime is bought for a plot, and what stood beside it.</summary>
public class LimeChoiceTests
{
    private static readonly Offer<LimingMaterial> Large = Bags("large", 80, 8m);
    private static readonly Offer<LimingMaterial> Small = Bags("small", 40, 5m);

    [Fact]
    public void Whole_bags_for_the_plot_decide_not_the_cost_of_the_effect()
    {
        // 1 ton/ac of pure carbonate on 0.05 acre is 100 lb: two bags of 80 lb for 16.00, or three of 40 lb for 15.00, though a
        // pound costs 0.10 in the one and 0.125 in the other.
        var choice = LimingMaterialComparison.For(Rate(1, LimeBasis.Find("pure-carbonate")), Area.FromAcres(0.05), [Large, Small]);
        Assert.Same(Large, choice.Costs[0].Offer);
        Assert.Same(Small, choice.CheapestForPlot!.Offer);
        Assert.Equal([(3, 15m), (2, 16m)], choice.ForPlot.Select(c => (c.Order!.Bags!.Value, c.Order.Cost!.Value)));
        Assert.DoesNotContain(choice.Costs, c => c.Order is null);
    }

    [Fact]
    public void What_is_asked_of_the_plot_counts_for_every_offer()
    {
        // Worked in 3 inches of the 6 the rate is for, half of the 100 lb: one bag of 80 lb for 8.00, two of 40 lb for 10.00.
        var choice = LimingMaterialComparison.For(
            new LimeOrderRequest
            {
                Rate = Rate(1, LimeBasis.Find("pure-carbonate")),
                Material = LimingMaterial.Gypsum,
                Area = Area.FromAcres(0.05),
                WorkedDepth = Length.FromInches(3),
                FirstDressingOn = new DateOnly(2026, 9, 1),
            },
            [Small, Large]
        );
        Assert.Same(Large, choice.CheapestForPlot!.Offer);
        Assert.Equal([8m, 10m], choice.ForPlot.Select(c => c.Order!.Cost!.Value));
        Assert.All(choice.ForPlot, c => Assert.Equal(new DateOnly(2026, 9, 1), Assert.Single(c.Order!.Dressings).On));
    }

    [Fact]
    public void Of_orders_that_cost_the_same_the_one_offered_first_is_bought()
    {
        Offer<LimingMaterial> one = Bags("one", 100, 9m), other = Bags("other", 100, 9m);
        LimingMaterialComparison Choice(params Offer<LimingMaterial>[] offers) =>
            LimingMaterialComparison.For(Rate(1, LimeBasis.Find("pure-carbonate")), Area.FromAcres(0.05), offers);
        Assert.Same(one, Choice(one, other).CheapestForPlot!.Offer);
        Assert.Same(other, Choice(other, one).CheapestForPlot!.Offer);
    }

    [Fact]
    public void What_cannot_be_counted_is_kept_with_the_reason()
    {
        var gypsum = Offer.InBulk(LimingMaterial.Gypsum, 1);
        var heap = Offer.InBulk(LimingMaterial.FromAnalysis("heap", LimingForm.Other, 90), 5);
        var choice = LimingMaterialComparison.For(Rate(1, LimeBasis.Find("ohio-enp")), Area.FromAcres(0.5), [gypsum, heap]);
        Assert.Null(choice.CheapestForPlot);
        Assert.Empty(choice.ForPlot);
        var uncounted = choice.Costs.Where(c => c.Order is null).ToList();
        Assert.Equal([gypsum, heap], uncounted.Select(c => c.Offer));
        Assert.Equal("it neutralizes nothing", uncounted[0].WhyNot);
        Assert.Contains("Ask the dealer", uncounted[1].WhyNot, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_rates_lime_has_no_printed_strength_a_ton_counts_for_a_ton_and_the_order_says_so()
    {
        var choice = LimingMaterialComparison.For(Rate(1, LimeBasis.Find("ground-limestone")), Area.FromAcres(0.05), [Large]);
        var bought = choice.CheapestForPlot!;
        Assert.Equal(100, bought.Order!.Product.Pounds, 1e-9);
        Assert.Null(bought.CostPerEffectiveTon);
        Assert.Null(bought.WhyNot);
        Assert.True(choice.Has("lime-basis-unstated"));
        Assert.Contains("100 lb for 16", Assert.Single(choice.ShowWork()).Numbers, StringComparison.Ordinal);
    }

    [Fact]
    public void An_offer_takes_over_every_part_of_the_question_but_material_bag_and_price()
    {
        var asked = new LimeOrderRequest
        {
            Rate = Rate(1),
            Material = LimingMaterial.PureCarbonate,
            Area = Area.FromAcres(0.3),
            Placement = LimePlacement.Surface,
            WorkedDepth = Length.FromInches(3),
            EarlierLime = EarlierLime.FromRate(ApplicationRate.FromShortTonsPerAcre(1), 6),
            Soil = PlotSoil.For(Report(5.5)) with { SoilClass = SoilClass.Organic },
            WithUreaOrAmmonium = true,
            AlreadyApplied = [LimeApplication.FromMass(Mass.FromPounds(10), LimingMaterial.PureCarbonate)],
            Rounding = RoundingOf("North Carolina"),
            MostAtOnce = ApplicationRate.FromShortTonsPerAcre(2),
            MonthsBetween = 5,
            FirstDressingOn = new DateOnly(2026, 9, 1),
            SowingOn = new DateOnly(2026, 10, 1),
            StandsForYears = true,
            Package = Package.FromWeight(Mass.FromPounds(50)),
            Price = 40,
        };
        var taken = asked.ForOffer(Large);
        string[] ofTheOffer = ["Material", "Package", "Price"];
        foreach (var part in typeof(LimeOrderRequest).GetProperties().Where(p => !ofTheOffer.Contains(p.Name)))
        {
            object? unstated = part.PropertyType.IsValueType ? Activator.CreateInstance(part.PropertyType) : null;
            Assert.False(Equals(unstated, part.GetValue(asked)), $"{part.Name} is not stated here");
            Assert.True(Equals(part.GetValue(asked), part.GetValue(taken)), $"{part.Name} is not taken over");
        }

        Assert.Same(Large.Item, taken.Material);
        Assert.Equal(8m, taken.Price);
        Assert.Same(Large.Package, taken.Package);
    }

    private static Offer<LimingMaterial> Bags(string name, double pounds, decimal price) =>
        Offer.InBags(
            LimingMaterial.FromLabel(name, LimingForm.Pelletized, LimeFigure.FromPercent(LimeIndex.CalciumCarbonateEquivalent, 100)),
            Mass.FromPounds(pounds),
            price
        );
}
