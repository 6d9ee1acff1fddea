using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>A rate of one product on one plot: exact, to the nearest package, and rounded up, each with what it really
/// applies.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RoundedAmounts : IWorkedResult
{
    private RoundedAmounts(
        Offer<FertilizerProduct> offer,
        Area area,
        RoundedAmount exact,
        RoundedAmount nearest,
        RoundedAmount roundedUp
    ) => (Offer, Area, Exact, Nearest, RoundedUp) = (offer, area, exact, nearest, roundedUp);

    /// <summary>Gets the offer.</summary>
    public Offer<FertilizerProduct> Offer { get; }

    /// <summary>Gets the product.</summary>
    internal FertilizerProduct Product => Offer.Item;

    /// <summary>Gets the area of the plot.</summary>
    public Area Area { get; }

    /// <summary>Gets the exact weight.</summary>
    public RoundedAmount Exact { get; }

    /// <summary>Gets the nearest number of whole packages; a half goes up.</summary>
    public RoundedAmount Nearest { get; }

    /// <summary>Gets the smallest number of whole packages that holds the weight: what to buy.</summary>
    public RoundedAmount RoundedUp { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [Source.Practice];

    /// <summary>Rounds a rate of product on a plot.</summary>
    /// <param name="offer">Product on offer.</param>
    /// <param name="rate">Rate of product, as computed for the need.</param>
    /// <param name="need">What the plot should receive.</param>
    /// <param name="area">Area of the plot; above 0.</param>
    /// <param name="tolerance">Tolerance; null for the defaults.</param>
    /// <returns>The three answers.</returns>
    /// <exception cref="ArgumentException">A value outside its range.</exception>
    public static RoundedAmounts For(
        Offer<FertilizerProduct> offer,
        ApplicationRate rate,
        PlotNeed need,
        Area area,
        RoundingTolerance? tolerance = null
    )
    {
        ArgumentNullException.ThrowIfNull(offer);
        var exact = rate.Over(area);
        double pounds = exact.Pounds;
        return new RoundedAmounts(
            offer,
            area,
            RoundedAmount.ForPackages(offer, pounds / offer.Package.Pounds, need, area, tolerance),
            RoundedAmount.ForPackages(offer, Package.RoundToNearest(exact, offer.Package.Weight), need, area, tolerance),
            RoundedAmount.ForPackages(offer, Package.RoundUp(exact, offer.Package.Weight), need, area, tolerance)
        );
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            FertilizerFormulas
                .All["product-weight"]
                .Line(
                    Amounts.Print(Exact.Spread, decimals: 2),
                    ("rate", Amounts.Print(Exact.Rate, decimals: 2)),
                    ("area", Amounts.Print(Area, decimals: 3))
                ),
            Line("Exact", Exact),
            Line("Nearest packages", Nearest),
            Line("Rounded up", RoundedUp),
        ];

    private static WorkedLine Line(string label, RoundedAmount amount) =>
        FertilizerFormulas
            .All["whole-packages"]
            .Line(
                $"{Amounts.Print(amount.Packages, 2)}; {Amounts.Print(amount.Spread, decimals: 1)}; "
                    + $"{string.Join(", ", amount.Balances)}",
                ("how", label)
            );

    private IEnumerable<Finding> Remarks()
    {
        double limit = FertilizerConstants.All["tolerance-whole-packages-over"];
        double over = Exact.Packages > 0 ? 100 * ((RoundedUp.Packages / Exact.Packages) - 1) : 0;
        if (over > limit)
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.WeighOut,
                ("percent", Amounts.Print(over, 0)),
                ("weight", Amounts.Print(Exact.Spread, decimals: 0)),
                ("left", Amounts.Print(RoundedUp.Spread - Exact.Spread, decimals: 0))
            );
        }

        foreach (var finding in Exact.Findings)
        {
            yield return finding;
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
