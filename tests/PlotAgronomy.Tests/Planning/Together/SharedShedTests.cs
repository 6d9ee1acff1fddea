using PlotAgronomy.Planning;
using PlotAgronomy.Tests.SampleConsole;
using UnitsNet;

namespace PlotAgronomy.Tests.Planning.Together;

/// <summary>Several plots take first what is in the shed and what is left of bags that were opened.</summary>
public class SharedShedTests
{
    private static PlotPlan Plan(string name, string side) => PropertyCommandTests.Plan(name, side);

    private static Offer<FertilizerProduct> Shed(PlotPlan plan, string name, int bags) =>
        plan.FertilizerOffers.First(o => o.Item.Name == name) with { Price = 0, Available = bags };

    private static PlotPlan With(PlotPlan plan, params Offer<FertilizerProduct>[] shed) =>
        plan with { FertilizerOffers = [.. shed, .. plan.FertilizerOffers] };

    private static double Free(PropertyPlan property, string name) =>
        property.Purchases.Where(p => p.Name == name && p.Price == 0).Sum(p => p.Needed.Pounds);

    /// <summary>12 dollars and 12 of nobody knows what are no sum: it is asked which plan has no currency.</summary>
    [Fact]
    public void A_plan_without_a_currency_is_asked_for_it()
    {
        var (north, south) = (Plan("North", "182 ft"), Plan("South", "150 ft") with { Currency = Currency.Unnamed });
        var refused = Assert.Throws<ArgumentException>(() => PropertyPlan.Of(north, south));
        Assert.StartsWith("The plan of 'South' names no currency, and another has prices in USD: which is it?", refused.Message, StringComparison.Ordinal);
        var without = PropertyPlan.Of(north with { Currency = Currency.Unnamed }, south);
        Assert.Equal(2, without.Plots.Length);
    }

    /// <summary>Three bags of 50 lb in the shed: both plots together take no more than 150 lb of them, and nothing is
    /// missing.</summary>
    [Fact]
    public void Bags_in_the_shed_are_counted_once_for_all_plots()
    {
        var (north, south) = (Plan("North", "182 ft"), Plan("South", "150 ft"));
        var property = PropertyPlan.Of(With(north, Shed(north, "10-20-20", 3)), With(south, Shed(south, "10-20-20", 3)));
        Assert.InRange(Free(property, "10-20-20"), 100, 150 + 1e-6);
        Assert.All(property.Purchases, p => Assert.Equal(0, p.Missing));
        Assert.All(property.Plots, p => Assert.True(p.Fertilizer.Value.Purchase.Value.MeetsEveryNeed));
    }

    /// <summary>Bags that stand in the plan of one plot alone serve the next one too, once the first has its own.</summary>
    [Fact]
    public void The_shed_of_one_plan_serves_the_other_plots()
    {
        var (north, south) = (Plan("North", "40 ft"), Plan("South", "150 ft"));
        var shed = PropertyPlan.Of(With(north, Shed(north, "10-20-20", 4)), south);
        var without = PropertyPlan.Of(north, south);
        var shared = shed.Purchases.Single(p => p is { Name: "10-20-20", Price: 0 });
        Assert.Contains(shared.Needs, n => n.Plot.Name == "South");
        Assert.True(shed.Cost < without.Cost);
    }

    /// <summary>The first plot opens a bag of 10-20-20 for 0.13 acre; the second, whose own plan has another grade alone, takes
    /// what is left of it first and little of its own.</summary>
    [Fact]
    public void What_is_left_in_an_opened_bag_goes_to_the_next_plot()
    {
        var (north, south) = (Plan("North", "40 ft"), Plan("South", "40 ft"));
        north = north with { FertilizerOffers = [.. north.FertilizerOffers.Where(o => o.Item.Name == "10-20-20")] };
        south = south with { FertilizerOffers = [.. south.FertilizerOffers.Where(o => o.Item.Name == "19-19-19")] };
        var property = PropertyPlan.Of(north, south);
        var bag = Assert.Single(property.Purchases, p => p.Name == "10-20-20");
        Assert.Equal(["North", "South"], bag.Needs.Select(n => n.Plot.Name));
        Assert.Equal(1, bag.Together);
        double alone = south.Solve().Fertilizer.Value.Purchase.Value.Lines.Single().Spread.Pounds;
        Assert.True(property.Purchases.Where(p => p.Name == "19-19-19").Sum(p => p.Needed.Pounds) < alone / 2);
        Assert.True(property.Cost <= north.Solve().TotalCost + south.Solve().TotalCost);
    }

    /// <summary>What is walked with on a plot is what it takes, product by product: an opened bag and a new one are one load.</summary>
    [Fact]
    public void The_loads_of_a_plot_are_what_it_takes()
    {
        var property = PropertyPlan.Of(Plan("North", "182 ft"), Plan("South", "60 ft"), Plan("Middle", "100 ft"));
        foreach (string name in new[] { "ground limestone", "10-20-20", "muriate of potash" })
        {
            var taken = property.Purchases.Single(p => p.Name == name).Needs.OrderBy(n => n.Plot.Name, StringComparer.Ordinal);
            var loads = property.Loads.Where(l => l.What == name).OrderBy(l => l.Plot.Name, StringComparer.Ordinal).ToList();
            Assert.Equal(taken.Select(n => (n.Plot.Name, Math.Round(n.Mass.Pounds, 6))), loads.Select(l => (l.Plot.Name, Math.Round(l.Load.Pounds, 6))));
        }
    }

    /// <summary>The shed never makes the property dearer than its plots by themselves with their bags shared.</summary>
    [Theory]
    [InlineData("40 ft", "60 ft", 1)]
    [InlineData("182 ft", "95 ft", 2)]
    [InlineData("95 ft", "182 ft", 5)]
    public void Free_bags_never_make_the_whole_dearer(string one, string two, int bags)
    {
        var (north, south) = (Plan("North", one), Plan("South", two));
        Assert.True(PropertyPlan.Of(With(north, Shed(north, "10-20-20", bags)), south).Cost <= PropertyPlan.Of(north, south).Cost);
    }

    [Fact]
    public void Seed_that_is_there_is_sown_first_and_the_rest_bought()
    {
        var (north, south) = (Plan("North", "182 ft"), Plan("South", "150 ft"));
        var lot = north.SeedOffers.First(o => o.Item.Kind.Id == "oats-spring");
        var open = Offer.InBags(lot.Item with { Label = "open bag" }, Mass.FromPounds(20), 0) with { Available = 1 };
        var property = PropertyPlan.Of(north with { SeedOffers = [.. north.SeedOffers, open] }, south);
        var oats = property.Purchases.Where(p => p.Name.StartsWith("Spring oats", StringComparison.Ordinal)).ToList();
        Assert.Equal(20, oats.Where(p => p.Price == 0).Sum(p => p.Needed.Pounds), 1e-6);
        Assert.Equal(property.Plots.Sum(p => p.Seed.Value.Kinds.Single(k => k.Planned.Kind.Id == "oats-spring").Weight.Pounds), oats.Sum(p => p.Needed.Pounds), 1e-6);
    }
}
