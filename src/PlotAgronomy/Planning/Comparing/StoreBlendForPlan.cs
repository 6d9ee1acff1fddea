using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>One store blend beside plain lots, by the acre of living stand and in whole bags for the plot.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class StoreBlendForPlan
{
    private readonly PlotPlan plan;

    internal StoreBlendForPlan(PlotPlan plan, BagOrPlainSeed comparison)
    {
        this.plan = plan;
        Comparison = comparison;
        (Bags, BagsCost) = comparison.BagsFor(plan.Plot.Area);
        PlainOrder = comparison.Plain is { } plain ? BagOrder.For(plain, plan.Plot.Area) : null;
    }

    /// <summary>Gets what the bag really plants, and the nearest blend from plain lots.</summary>
    public BagOrPlainSeed Comparison { get; }

    /// <summary>Gets the whole bags that sow the plot to one full stand.</summary>
    public int Bags { get; }

    /// <summary>Gets the price of these bags, in the plan's currency.</summary>
    public decimal BagsCost { get; }

    /// <summary>Gets the whole bags of plain seed that sow the plot to one full stand; null when none of the kinds is on
    /// offer.</summary>
    public BagOrder? PlainOrder { get; }

    /// <summary>Gets what plain seed saves on an acre of living stand, below 0 where the bag is cheaper; null when none of the
    /// kinds is on offer.</summary>
    public decimal? SavedByPlainPerAcre => Comparison.BagCostPerAcre - Comparison.PlainCostPerAcre;

    /// <summary>Gets what plain seed saves on the plot in whole bags, below 0 where the store's bag is cheaper; null when none of
    /// the kinds is on offer.</summary>
    public decimal? SavedByPlainInBags => BagsCost - PlainOrder?.Cost;

    /// <summary>Each kind of the stand with what the bag's tag says of it.</summary>
    internal ImmutableArray<(BlendPart Part, TagComponent Tagged)> Contents =>
        [.. Comparison.AsClaimed.Parts.Select(p => (p, Comparison.Bag.Tag.ByKind.Single(c => c.Kind.Id == p.Kind.Id)))];

    /// <summary>Each kind of plain seed with what to buy of it.</summary>
    internal ImmutableArray<(BlendPart Part, BagLine Line)> PlainLines =>
        PlainOrder is { } order ? [.. order.Planned.Parts.Zip(order.Lines)] : [];

    internal WorkedLine CoveredLine => Comparison.CoveredLine();

    internal WorkedLine BagCostLine => Comparison.BagCostLine(plan.Currency);

    internal WorkedLine BagsLine => Comparison.BagsLine(plan.Plot.Area);

    internal ImmutableArray<WorkedLine> PlainCostLines => [.. Comparison.PlainCostLines(plan.Currency)];

    /// <summary>The blend, its bags and their cost.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Comparison.Bag}: {Amounts.PrintCount(Bags, "bag")}, {plan.Currency.Print(BagsCost)}";
}
