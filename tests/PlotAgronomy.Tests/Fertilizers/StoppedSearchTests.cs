using System.Diagnostics;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>Shelves that are too much for a search: it stops after so much work, says so, and names the best set it has.</summary>
public class StoppedSearchTests
{
    /// <summary>Two seconds for code that was optimised on a machine at rest: ten times that for neither. What bounds a search is
    /// counted work; this only tells a search without an end.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);

    private static readonly Area Plot = Area.FromAcres(3);

    /// <summary>Caps so near to the needs that whole packages hardly ever fit between them.</summary>
    private static readonly PlotNeed Tight = FertilizerShelfTests.Need(46, 63, 71, 46.4, 63.5, 71.5);

    [Fact]
    public void A_search_stopped_at_once_still_names_the_nearest_set_it_has()
    {
        var shelf = FertilizerShelf.FromOffers([.. Odd(30)]);
        var bought = shelf.Cheapest(Tight, Plot, PurchaseForm.SpreadWholePackages, searchLimit: 1);
        Assert.False(bought.IsUndecided);
        Assert.False(bought.IsProvenCheapest);
        Assert.NotEmpty(bought.Lines);
        Assert.True(bought.TotalCost > 0);
        Assert.All(bought.Balances, b => Assert.True(b.AtMost is not { } most || b.Delivered <= most * (1 + 1e-6)));
        Assert.Equal(!bought.MeetsEveryNeed, bought.Findings.Any(f => f.Code == FertilizerCodes.SearchStoppedShort));
    }

    /// <summary>What is found with more work is never dearer for the same needs, nor missing more.</summary>
    [Fact]
    public void More_work_never_ends_worse()
    {
        var shelf = FertilizerShelf.FromOffers([.. Odd(12)]);
        var need = FertilizerShelfTests.Need(46, 63, 71, 60, 80, 90);
        Purchase? before = null;
        foreach (int limit in (int[])[1, 5, 50, 500, 20_000])
        {
            var bought = shelf.Cheapest(need, Plot, PurchaseForm.SpreadWholePackages, searchLimit: limit);
            Assert.True(before is not { MeetsEveryNeed: true } || (bought.MeetsEveryNeed && bought.TotalCost <= before.TotalCost), $"{limit}");
            before = bought;
        }

        Assert.True(before!.MeetsEveryNeed);
    }

    /// <summary>Hundreds of sacks under as many names that hold the same for the same price are one product to the search.</summary>
    [Theory]
    [InlineData(PurchaseForm.BuyWholePackages), InlineData(PurchaseForm.SpreadWholePackages)]
    public void Hundreds_of_equal_offers_are_as_one(PurchaseForm form)
    {
        var need = FertilizerShelfTests.Need(40, 60, 80);
        Offer<FertilizerProduct>[] few = [Named("a", "19-19-19", 26), Named("b", "0-46-0", 36), Named("c", "0-0-60", 27), Named("d", "46-0-0", 24)];
        Offer<FertilizerProduct>[] many = [.. Enumerable.Range(0, 400).SelectMany(i => (Offer<FertilizerProduct>[])[Named($"a {i}", "19-19-19", 26), Named($"b {i}", "0-46-0", 36), Named($"c {i}", "0-0-60", 27), Named($"d {i}", "46-0-0", 24)])];
        var (one, all) = (FertilizerShelf.FromOffers(few), FertilizerShelf.FromOffers(many));
        var clock = Stopwatch.StartNew();
        var cheapest = all.Cheapest(need, Plot, form);
        Assert.True(cheapest.IsProvenCheapest);
        Assert.Equal(one.Cheapest(need, Plot, form).TotalCost, cheapest.TotalCost);

        // Another name at the same price stands in for one of the cheapest set.
        var next = all.NextCheapest(need, Plot, form)!;
        Assert.True(next.IsProvenCheapest);
        Assert.Equal(cheapest.TotalCost, next.TotalCost);
        var fewest = all.FewestProducts(need, Plot, form)!;
        Assert.True(fewest.IsProvenCheapest);
        Assert.Equal(one.FewestProducts(need, Plot, form)!.TotalCost, fewest.TotalCost);
        Assert.True(clock.Elapsed < Longest, clock.Elapsed.ToString());
    }

    /// <summary>More unlike products than any store has, on a shelf where few replace others.</summary>
    [Theory, Trait("Category", "Slow")]
    [InlineData(300, PurchaseForm.BuyWholePackages), InlineData(300, PurchaseForm.SpreadWholePackages)]
    [InlineData(1_500, PurchaseForm.BuyWholePackages), InlineData(1_500, PurchaseForm.SpreadWholePackages)]
    [InlineData(10_000, PurchaseForm.BuyWholePackages), InlineData(10_000, PurchaseForm.SpreadWholePackages)]
    public void Unlike_products_by_the_hundred_end_in_time(int products, PurchaseForm form)
    {
        var shelf = FertilizerShelf.FromOffers([.. Odd(products)]);
        foreach (var question in (Func<Purchase?>[])[() => shelf.Cheapest(Tight, Plot, form), () => shelf.NextCheapest(Tight, Plot, form), () => shelf.FewestProducts(Tight, Plot, form)])
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            var clock = Stopwatch.StartNew();
            var bought = question();
            Assert.True(clock.Elapsed < Longest, clock.Elapsed.ToString());
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 500_000_000);
            Assert.True(bought is null || bought.Lines.Length > 0 || bought.IsUndecided);
        }
    }

    /// <summary>What is chosen of a long shelf is as good as the bound of all its offers tells, and is never called proven.</summary>
    [Fact]
    public void Of_a_shelf_too_long_the_offers_worth_it_are_looked_at()
    {
        var need = FertilizerShelfTests.Need(46, 63, 71, 80, 100, 110);
        var bought = FertilizerShelf.FromOffers([.. Odd(2_000)]).Cheapest(need, Plot);
        Assert.True(bought.MeetsEveryNeed);
        Assert.False(bought.IsProvenCheapest);
        Assert.InRange(bought.ProvenGap, 0, bought.TotalCost * 0.1m);
        Assert.Contains(bought.Findings, f => f.Code == FertilizerCodes.SearchStopped);
    }

    /// <summary>Analyses and prices of no common step, so that no sum of packages comes out even and few replace others.</summary>
    private static IEnumerable<Offer<FertilizerProduct>> Odd(int products)
    {
        var random = new Random(products);
        for (int i = 0; i < products; i++)
        {
            double nitrogen = Part(random), phosphate = Part(random), potash = Part(random);
            decimal price = Math.Round((decimal)((nitrogen * 0.31) + (phosphate * 0.37) + (potash * 0.22) + random.NextDouble()), 4, MidpointRounding.ToEven);
            yield return Offer.InBags(FertilizerProduct.Create($"sack {i}", FertilizerAnalysis.FromPercent(nitrogen, phosphate, potash)), Mass.FromPounds(37 + random.Next(20)), 5 + price);
        }
    }

    private static double Part(Random random) => Math.Round(1 + (random.NextDouble() * 20), 3, MidpointRounding.ToEven);

    private static Offer<FertilizerProduct> Named(string name, string grade, decimal price) =>
        Offer.InBags(FertilizerProduct.Create(name, FertilizerAnalysis.FromGrade(grade)), Mass.FromPounds(50), price);
}
