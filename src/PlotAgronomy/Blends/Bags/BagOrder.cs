using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <summary>Whole bags to buy for a blend, and what the blend becomes when all of them are sown.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BagOrder : IWorkedResult
{
    internal BagOrder() { }

    /// <summary>Gets the blend as planned.</summary>
    public required Blend Planned { get; init; }

    /// <summary>Gets the area to sow.</summary>
    public required Area Area { get; init; }

    /// <summary>Gets what to buy of each lot.</summary>
    public required ImmutableArray<BagLine> Lines { get; init; }

    /// <summary>Gets the blend when every bag bought is sown on the area.</summary>
    public required Blend IfAllSown { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            Planned
                .Parts.Zip(IfAllSown.Parts)
                .Where(x =>
                    Math.Abs(x.Second.ShareOfStand.Value / x.First.ShareOfStand.Value - 1) > BlendConstants.All["share-change"]
                )
                .Select(x =>
                    FindingCatalog.Create(
                        BlendCodes.BagsChangeShare,
                        ("kind", x.First.Kind.ShortName),
                        ("planned", Amounts.Print(x.First.ShareOfStand, 0)),
                        ("becomes", Amounts.Print(x.Second.ShareOfStand, 0)),
                        ("total", Amounts.Print(IfAllSown.StandTotal.Chosen, 2))
                    )
                )
        );

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => Planned.Sources;

    /// <summary>Gets the cost of all lines; null when a price is missing.</summary>
    public decimal? Cost => Lines.Any(l => l.Cost is null) ? null : Lines.Sum(l => l.Cost);

    /// <summary>Bags for a blend.</summary>
    /// <param name="blend">Blend whose components name their lots; a lot sold loose, or a component that is not on offer, is
    /// bought by weight.</param>
    /// <param name="area">Area to sow; finite, above 0.</param>
    /// <returns>The order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An area not above 0.</exception>
    public static BagOrder For(Blend blend, Area area)
    {
        ArgumentNullException.ThrowIfNull(blend);
        ImmutableArray<BagLine> lines = [.. blend.WeighFor(area).Lines.Select(LineOf)];
        return new BagOrder
        {
            Planned = blend,
            Area = area,
            Lines = lines,
            IfAllSown = Blend.FromBatch(area, [.. lines.Select(l => (l.Component, l.Bought))]),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [.. Lines.SelectMany(l => Work(l)), BlendFormulas.Sum("If all is sown", IfAllSown.StandTotal.ToString())];

    private ImmutableArray<WorkedLine> Work(BagLine line)
    {
        double acres = Area.Acres;
        var kind = ("kind", line.Component.Kind.ShortName);
        string needed = $"{Amounts.Print(line.Needed.Pounds, 2)} lb";
        var weighed = BlendWork.Weight(line.Component, acres, line.Needed.Pounds);
        return line is { Bags: int bags, Package: { } package }
            ? [weighed, BlendFormulas.All["blend-whole-bags"].Line($"{needed} = {bags} x {Amounts.Print(package.Weight)}", kind)]
            : [weighed];
    }

    private static BagLine LineOf(BlendWeight weight)
    {
        var offer = weight.Component.Offer;
        // A need too small to weigh still takes a bag: a kind is not left out because its bag is large.
        int? bags = offer?.Package.CountFor(weight.Weight.ToMass()) is int counted ? Math.Max(1, counted) : null;
        var bought = bags is int count ? BulkSeedMass.FromPounds(count * offer!.Package.Pounds) : weight.Weight;
        return new BagLine
        {
            Component = weight.Component,
            Needed = weight.Weight,
            Bags = bags,
            Bought = bought,
            Cost = offer is null ? null : BlendMath.Cost(offer.PricePerPound, bought.Pounds),
        };
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
