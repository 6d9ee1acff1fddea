using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>Several materials for one need, cheapest per unit of effective neutralizing power first.</summary>
public sealed class LimingMaterialComparison : IWorkedResult
{
    private LimingMaterialComparison() { }

    /// <summary>Gets the rate.</summary>
    public required LimeRate Rate { get; init; }

    /// <summary>Gets the area.</summary>
    public required Area Area { get; init; }

    /// <summary>Gets the offers, cheapest per unit of effect first, those that cannot be judged last.</summary>
    public required ImmutableArray<LimeOfferCost> Costs { get; init; }

    /// <summary>Gets the offer whose order for this plot costs least, whole bags counted; null when none can be judged.</summary>
    public LimeOfferCost? CheapestForPlot => Costs.Where(c => c.Order is not null).MinBy(c => c.Order!.Cost);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            Costs
                .SelectMany(c => c.Order?.Findings ?? [])
                .Concat(
                    Costs
                        .Where(c => !c.Offer.Material.Neutralizes)
                        .Select(c => FindingCatalog.Create(LimingCodes.NoNeutralizingValue, ("material", c.Offer.Material.Name)))
                )
        );

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Rate.Basis.Origin.Sources.Union(Rate.Basis.Figure?.Index.Origin.Sources ?? [])];

    /// <summary>Compares offers.</summary>
    /// <param name="rate">Rate that is needed.</param>
    /// <param name="area">Area; above 0.</param>
    /// <param name="offers">Offers; at least one.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">No offers, or an area that is not above 0.</exception>
    /// <remarks>cost per effective ton = price per pound x 2000 / (figure / whole of the index).</remarks>
    public static LimingMaterialComparison For(LimeRate rate, Area area, IReadOnlyList<LimeOffer> offers)
    {
        ArgumentNullException.ThrowIfNull(rate);
        Guard.NotEmpty(offers);
        double acres = area.Acres;
        Guard.Above(acres, 0, "ac", nameof(area));
        ImmutableArray<LimeOfferCost> costs =
        [
            .. offers.Select(o => new LimeOfferCost(rate, area, o)).OrderBy(c => c.CostPerEffectiveTon ?? decimal.MaxValue),
        ];
        return new LimingMaterialComparison
        {
            Rate = rate,
            Area = area,
            Costs = costs,
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Costs.Select(LineOf)];

    private static WorkedLine LineOf(LimeOfferCost cost)
    {
        string material = cost.Offer.Material.Name;
        if (cost.Order is not { Cost: { } price } order || cost.Figure is not { } figure)
        {
            return LimingFormulas.All["lime-no-rate"].Line($"cannot be judged: {cost.WhyNot}", ("what", material));
        }

        decimal perTon = cost.Offer.PricePerPound * (decimal)ExactUnits.PoundsPerShortTon;
        return LimingFormulas
            .All["lime-cost-of-effect"]
            .Line(
                $"{Amounts.Print((double)cost.CostPerEffectiveTon!.Value, 2)}; "
                    + $"{Amounts.Print(order.Product, "lb", 0)} for {Amounts.Print((double)price, 2)}",
                ("material", material),
                ("price per ton", Amounts.Print((double)perTon, 2)),
                ("figure", $"{figure}"),
                ("whole of the index", Amounts.Print(figure.Index.Whole, 0))
            )
            .From(figure.Index.Origin);
    }
}
