using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>Several materials for one need: which to buy for the plot, what stood beside it, and what each costs for its
/// effect.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimingMaterialComparison : IWorkedResult
{
    private LimingMaterialComparison() { }

    /// <summary>Gets the rate.</summary>
    public required LimeRate Rate { get; init; }

    /// <summary>Gets the area.</summary>
    public required Area Area { get; init; }

    /// <summary>Gets the offers, cheapest per unit of effect first, those whose effect cannot be told last.</summary>
    public required ImmutableArray<LimeOfferCost> Costs { get; init; }

    /// <summary>Gets the offers that can be ordered for this plot, the cheapest order first, whole bags counted; of orders that
    /// cost the same the one offered first. The first is bought, the others are the runners-up.</summary>
    public required ImmutableArray<LimeOfferCost> ForPlot { get; init; }

    /// <summary>Lime that is there for nothing, goes on first, and is taken off the need of the orders.</summary>
    internal ImmutableArray<LimeFromStock> FromStock { get; private init; } = [];

    /// <summary>Offers of which there is less than the need takes.</summary>
    internal ImmutableArray<Offer<LimingMaterial>> TooFew { get; private init; } = [];

    /// <summary>What is to be said of offers of which there is no more.</summary>
    internal IEnumerable<Finding> OfStock =>
        FromStock
            .Select(s => s.Finding)
            .Concat(
                TooFew.Select(o =>
                    FindingCatalog.Create(
                        LimingCodes.OfferTooFew,
                        ("packages", Amounts.Print(o.Available!.Value, 0)),
                        ("package", o.Package.ToString()),
                        ("material", o.Item.Name)
                    )
                )
            );

    /// <summary>Gets the offer whose order for this plot costs least; null when none can be counted.</summary>
    public LimeOfferCost? CheapestForPlot => ForPlot.IsEmpty ? null : ForPlot[0];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            Costs
                .SelectMany(c => c.Order?.Findings ?? [])
                .Concat(OfStock)
                .Concat(Costs.Select(c => c.NearSeed).OfType<Finding>())
                .Concat(
                    Costs
                        .Where(c => !c.Offer.Item.Neutralizes)
                        .Select(c => FindingCatalog.Create(LimingCodes.NoNeutralizingValue, ("material", c.Offer.Item.Name)))
                )
        );

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Rate.Basis.Origin.Sources.Union(Rate.Basis.Figure?.Index.Origin.Sources ?? [])];

    /// <summary>Compares offers for a rate worked in to its own depth.</summary>
    /// <param name="rate">Rate that is needed.</param>
    /// <param name="area">Area; above 0.</param>
    /// <param name="offers">Offers; at least one.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">No offers, or an area that is not above 0.</exception>
    /// <remarks>cost per effective ton = price per pound x 2000 / (figure / whole of the index).</remarks>
    public static LimingMaterialComparison For(LimeRate rate, Area area, IReadOnlyList<Offer<LimingMaterial>> offers)
    {
        ArgumentNullException.ThrowIfNull(rate);
        return For(
            new LimeOrderRequest
            {
                Rate = rate,
                Material = Guard.NotEmpty(offers)[0].Item,
                Area = area,
            },
            offers
        );
    }

    /// <summary>Compares offers for a plot, a rate and a way of putting it on.</summary>
    /// <param name="request">What is asked of every offer. The material, bag and price of each offer take the place of its
    /// own.</param>
    /// <param name="offers">Offers; at least one.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">No offers, or a value of the request outside its range.</exception>
    public static LimingMaterialComparison For(LimeOrderRequest request, IReadOnlyList<Offer<LimingMaterial>> offers)
    {
        LimeOrderChecks.Check(request);
        var stock = LimeStock.For(request, Guard.NotEmpty(offers));
        var toBuy = offers.Where(o => stock.Taken.All(t => t.Offer != o));
        var costs = toBuy.Select(o => new LimeOfferCost(stock.Rest, o)).ToList();
        return new LimingMaterialComparison
        {
            Rate = request.Rate,
            Area = request.Area,
            Costs = [.. costs.OrderBy(c => c.CostPerEffectiveTon ?? decimal.MaxValue)],
            ForPlot = [.. costs.Where(c => c.Order is { } o && c.Offer.IsEnough(o.Bags)).OrderBy(c => c.Order!.Cost)],
            TooFew = [.. costs.Where(c => c.Order is { } o && !c.Offer.IsEnough(o.Bags)).Select(c => c.Offer)],
            FromStock = stock.Taken,
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Costs.Select(LineOf)];

    private static WorkedLine LineOf(LimeOfferCost cost)
    {
        string material = cost.Offer.Item.Name;
        if (cost.Order is not { Cost: { } price } order)
        {
            return LimingFormulas.All["lime-no-rate"].Line($"cannot be judged: {cost.WhyNot}", ("what", material));
        }

        if (cost.Figure is not { } figure)
        {
            return LimingFormulas
                .All["lime-counted-ton-for-ton"]
                .Line($"{Amounts.Print(order.Product, "lb", 0)} for {Amounts.Print((double)price, 2)}", ("material", material));
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

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
