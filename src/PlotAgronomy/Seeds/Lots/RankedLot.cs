using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>One lot's place among lots that all leave the same live stand.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RankedLot
{
    internal RankedLot() { }

    /// <summary>Gets the place, from 1 for the cheapest; equal costs share a place.</summary>
    public required int Place { get; init; }

    /// <summary>Gets the offer.</summary>
    public Offer<SeedLot> Offer => Value.Offer;

    /// <summary>Gets the lot.</summary>
    public SeedLot Lot => Value.Lot;

    /// <summary>Gets what its price pays for.</summary>
    public required LotValue Value { get; init; }

    /// <summary>Gets its bulk rate for the stand.</summary>
    public required BulkSeeding Seeding { get; init; }

    /// <summary>Gets the cost of an acre of the stand.</summary>
    public required decimal CostPerAcre { get; init; }

    /// <summary>Gets its cost over that of the cheapest, as a pure number: 0.2 is a fifth dearer.</summary>
    public required decimal OverCheapest { get; init; }

    /// <summary>What an acre costs, as a line; the currency where it is known.</summary>
    internal WorkedLine CostLine(Currency? currency = null)
    {
        string cost = currency?.Print(CostPerAcre) ?? Amounts.Print((double)CostPerAcre, 2);
        return SeedFormulas
            .All["lot-cost"]
            .Line(
                $"{cost} per acre",
                ("lot", Lot.Label),
                ("bulk rate", Amounts.Print(Seeding.Bulk.Rate, "lb/ac", 2)),
                ("price per lb", Amounts.Print((double)Value.PricePerPound, 4))
            );
    }

    /// <summary>Whole packages that sow an area.</summary>
    /// <param name="area">Area; finite, at least 0.</param>
    /// <returns>Packages to buy; null when the lot is sold by weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public int? PackagesFor(Area area) => Offer.Package.CountFor(Seeding.Bulk.Over(area).ToMass());

    /// <summary>Cost of the seed that sows an area: of whole packages, or by weight when it is sold so.</summary>
    /// <param name="area">Area; finite, at least 0.</param>
    /// <returns>The cost, unrounded.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public decimal CostFor(Area area)
    {
        double pounds = PackagesFor(area) is { } packages ? packages * Offer.Package.Pounds : Seeding.Bulk.Over(area).Pounds;
        return Value.PricePerPound * (decimal)pounds;
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Place, 0)}: {Lot.Label}";
}
