using PlotAgronomy.Planning;
using PlotAgronomy.Tests.SampleConsole;

namespace PlotAgronomy.Tests.Planning.Together;

/// <summary>What is left out for a budget, in which order, and what it costs.</summary>
public class BudgetCutTests
{
    private static PlotPlan Plan(string name, string side) => PropertyCommandTests.Plan(name, side);

    /// <summary>A pH that every kind bears with room to spare, so that the lime is a top-up.</summary>
    private static PlotPlan Mild(PlotPlan plan, double ph) => plan with { StatedTargetPh = 6.5, Report = plan.Report! with { WaterPh = WaterPh.FromValue(ph) } };

    private static PropertyPlan Three() => PropertyPlan.Of(Plan("North", "100 ft"), Plan("Middle", "120 ft"), Plan("South", "80 ft"));

    [Fact]
    public void Enough_money_cuts_nothing()
    {
        var property = Three();
        var (kept, cut) = property.Within(property.Cost);
        Assert.Empty(cut);
        Assert.Equal(property.Cost, kept.Cost);
    }

    /// <summary>The rest is within the budget or nothing more can go, the cuts add up to what was saved, the milder
    /// stand first, and no cut could be spared.</summary>
    [Theory]
    [InlineData(0.95)]
    [InlineData(0.8)]
    [InlineData(0.5)]
    [InlineData(0.3)]
    public void The_cuts_add_up_and_none_of_them_could_be_spared(double share)
    {
        var property = Three();
        decimal budget = property.Cost * (decimal)share;
        var (kept, cut) = property.Within(budget);
        Assert.True(kept.Cost <= budget);
        Assert.Equal(property.Cost - kept.Cost, cut.Sum(c => c.Saves));
        Assert.All(cut, c => Assert.True(c.Saves >= 0 && c.Loses.Length > 10 && c.What.Length > 0));
        Assert.True(cut[0].Saves > 0);
        Assert.Equal(cut.Select(c => c.Sort), cut.Select(c => c.Sort).Order());
        foreach (var spared in cut)
        {
            Assert.True(cut.Where(c => c != spared).Aggregate(property, (p, c) => p.Without(c)).Cost > budget, spared.ToString());
        }
    }

    /// <summary>Published: the demo's kinds stand pH 5.6 only just or not at all, so its lime is no top-up; at 6.1 it is, and goes
    /// before any kind or plot.</summary>
    [Theory]
    [InlineData(5.6, false)]
    [InlineData(6.1, true)]
    public void Lime_goes_first_where_every_kind_bears_the_soil_and_never_where_one_does_not(double ph, bool isTopUp)
    {
        var property = PropertyPlan.Of(Mild(Plan("North", "100 ft"), ph), Mild(Plan("South", "100 ft"), ph));
        Assert.Contains(property.Purchases, p => p.Name.Contains("lime", StringComparison.Ordinal) || p.Name.Contains("dolomite", StringComparison.Ordinal));
        var cut = property.Within(property.Cost - 1).Cut;
        Assert.Equal(isTopUp, cut[0].Sort == CutSort.Lime);
        if (isTopUp)
        {
            Assert.Contains("the pH stays near 6.1", cut[0].Loses, StringComparison.Ordinal);
        }
        else
        {
            Assert.DoesNotContain(property.Within(property.Cost / 3).Cut, c => c.Sort == CutSort.Lime);
        }
    }

    /// <summary>A kind that goes is in no row of the seed any more, and every season that was covered is covered still.</summary>
    [Fact]
    public void A_dear_kind_goes_only_where_no_season_is_left_bare()
    {
        var property = Three();
        var (kept, cut) = property.Within(property.Cost * 0.3m);
        Assert.Contains(cut, c => c.Sort == CutSort.DearKind);
        foreach (var kind in cut.Where(c => c.Sort == CutSort.DearKind))
        {
            var before = kind.Plot.Seed.Value.Seasons.Seasons;
            var after = kept.Plots.Single(p => p.Plan.Plot.Name == kind.Plot.Plan.Plot.Name).Seed.Value;
            Assert.Contains("no season is left bare", kind.Loses, StringComparison.Ordinal);
            Assert.DoesNotContain(after.Kinds, k => k.Planned.Kind.Id == kind.Kind!.Id);
            Assert.All(before.Where(s => s.IsCovered), s => Assert.True(after.Seasons.Seasons.Single(a => a.Season == s.Season).IsCovered));
        }
    }

    /// <summary>With little money whole plots go, the one that costs most for what it feeds first; one always stays.</summary>
    [Fact]
    public void The_dearest_plot_goes_and_the_last_one_stays()
    {
        var dear = Plan("Dear", "100 ft");
        dear = dear with { LimeOffers = [.. dear.LimeOffers.Select(o => o with { Price = o.Price * 20 })] };
        var property = PropertyPlan.Of(Plan("North", "100 ft"), dear, Plan("South", "100 ft"));
        var (kept, cut) = property.Within(property.Cost - 650);
        Assert.Equal("Dear", Assert.Single(cut, c => c.Sort == CutSort.WholePlot).Plot.Plan.Plot.Name);
        Assert.Equal(["North", "South"], kept.Plots.Select(p => p.Plan.Plot.Name));
        Assert.Contains("feed nothing in", cut.Single(c => c.Sort == CutSort.WholePlot).Loses, StringComparison.Ordinal);
        Assert.Single(property.Within(1).Kept.Plots);
    }

    [Fact]
    public void What_is_left_out_is_not_walked_with()
    {
        var property = PropertyPlan.Of(Mild(Plan("North", "100 ft"), 6.1), Mild(Plan("South", "100 ft"), 6.1));
        var (kept, cut) = property.Within(property.Cost - 1);
        string plot = cut[0].Plot.Plan.Plot.Name;
        Assert.Contains(property.Work, w => w.Plot.Name == plot && w.Walk.Lime is not null);
        Assert.DoesNotContain(kept.Work, w => w.Plot.Name == plot && w.Walk.Lime is not null);
    }
}
