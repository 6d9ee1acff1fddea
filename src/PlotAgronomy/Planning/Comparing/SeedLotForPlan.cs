using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>One lot among those of its kind, with what to buy of it for the plot.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedLotForPlan
{
    private readonly PlotPlan plan;

    internal SeedLotForPlan(PlotPlan plan, RankedLot ranked)
    {
        this.plan = plan;
        Ranked = ranked;
    }

    /// <summary>Gets its place, its bulk rate and what its price pays for.</summary>
    public RankedLot Ranked { get; }

    /// <summary>Gets the whole packages that sow the plot; null when the lot is sold by weight.</summary>
    public int? Packages => Ranked.PackagesFor(plan.Plot.Area);

    /// <summary>Gets the cost of the seed that sows the plot, in the plan's currency, unrounded.</summary>
    public decimal Cost => Ranked.CostFor(plan.Plot.Area);

    /// <summary>Gets how many percent dearer an acre is than from the cheapest lot; null for the cheapest.</summary>
    public double? PercentDearer => Ranked.Place == 1 ? null : (double)Ranked.OverCheapest * 100;

    /// <summary>Gets what is to be known of the lot and its rate, most serious first.</summary>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(Ranked.Lot.Cautions(plan.ComparedMethod).Concat(Ranked.Seeding.Findings));

    internal WorkedLine CostLine => Ranked.CostLine(plan.Currency);

    /// <summary>The place of the lot and its cost.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Ranked}, {plan.Currency.Print(Cost)}";
}
