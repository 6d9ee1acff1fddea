using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>The lots of one kind by the cost of the stand that the plan wants of it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedLotsOfKind
{
    internal SeedLotsOfKind(PlotPlan plan, SeedLotComparison comparison)
    {
        Comparison = comparison;
        Lots = [.. comparison.Ranked.Select(r => new SeedLotForPlan(plan, r))];
    }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind => CheapestByAcre.Ranked.Lot.Kind;

    /// <summary>Gets the ranking by the cost of an acre.</summary>
    public SeedLotComparison Comparison { get; }

    /// <summary>Gets the lots, cheapest by the acre first.</summary>
    public ImmutableArray<SeedLotForPlan> Lots { get; }

    /// <summary>Gets the lot that sows an acre for the least money.</summary>
    public SeedLotForPlan CheapestByAcre => Lots[0];

    /// <summary>Gets the lot whose whole packages sow the plot for the least money.</summary>
    public SeedLotForPlan CheapestForPlot => Lots.MinBy(l => l.Cost)!;

    /// <summary>The kind and its lots.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Kind.ShortName}: {string.Join(", ", Lots)}";
}
