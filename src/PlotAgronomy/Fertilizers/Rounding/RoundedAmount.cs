using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>One way of rounding a product to packages: what is spread and what that really applies.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RoundedAmount
{
    private const double Dust = PlotAgronomy.Tolerance.Dust;

    private readonly FertilizerAnalysis counted;

    private RoundedAmount(
        FertilizerAnalysis counted,
        double packages,
        Mass spread,
        ApplicationRate rate,
        ImmutableArray<NutrientBalance> balances,
        RoundingTolerance tolerance
    ) => (this.counted, Packages, Spread, Rate, Balances, Tolerance) = (counted, packages, spread, rate, balances, tolerance);

    /// <summary>Gets the packages emptied on the plot.</summary>
    public double Packages { get; }

    /// <summary>Gets the weight spread.</summary>
    public Mass Spread { get; }

    /// <summary>Gets the rate of product.</summary>
    public ApplicationRate Rate { get; }

    /// <summary>Gets what every nutrient receives beside its need.</summary>
    public ImmutableArray<NutrientBalance> Balances { get; }

    /// <summary>Gets the tolerance it is judged by.</summary>
    public RoundingTolerance Tolerance { get; }

    /// <summary>Gets a value indicating whether every need the product serves is met within the tolerance.</summary>
    internal bool IsWithinTolerance =>
        Balances.All(b => !Serves(b) || Math.Abs(b.PercentOfNeed!.Value - 100) <= Tolerance.AcceptPercent + Dust);

    /// <summary>Gets the remarks: too much nitrogen, phosphate where none is needed, too little of any.</summary>
    public ImmutableArray<Finding> Findings => Judge(FieldConditions.Unknown);

    /// <summary>The remarks in the light of what is known of the field.</summary>
    /// <param name="field">What is known of the field.</param>
    /// <returns>The remarks, most serious first.</returns>
    public ImmutableArray<Finding> Judge(FieldConditions field)
    {
        ArgumentNullException.ThrowIfNull(field);
        return Finding.InOrder(Remarks().Concat(RateFindings.Of(Balances, field)));
    }

    /// <summary>Weight of one nutrient's need in percent that this amount brings.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>Percent of the need, or null when none is needed.</returns>
    internal double? PercentOfNeed(PlantNutrient nutrient)
    {
        Guard.Defined(nutrient);
        return Balances.FirstOrDefault(b => b.Nutrient == nutrient)?.PercentOfNeed;
    }

    /// <summary>What so many packages emptied on a plot apply.</summary>
    /// <param name="offer">Product on offer.</param>
    /// <param name="packages">Packages emptied, whole or not; at least 0.</param>
    /// <param name="need">What the plot should receive.</param>
    /// <param name="area">Area of the plot; above 0.</param>
    /// <param name="tolerance">Tolerance; null for the defaults.</param>
    /// <returns>The amount.</returns>
    /// <exception cref="ArgumentException">A value outside its range.</exception>
    public static RoundedAmount ForPackages(
        Offer<FertilizerProduct> offer,
        double packages,
        PlotNeed need,
        Area area,
        RoundingTolerance? tolerance = null
    )
    {
        ArgumentNullException.ThrowIfNull(offer);
        ArgumentNullException.ThrowIfNull(need);
        double acres = area.Acres;
        Guard.AtLeast(packages, 0, "packages");
        Guard.Above(acres, 0, "ac", nameof(area));
        var spread = Mass.FromPounds(packages * offer.Package.Pounds);
        var rate = ApplicationRate.FromMassAndArea(spread, area);
        return new RoundedAmount(
            offer.Item.Counted,
            packages,
            spread,
            rate,
            NutrientBalances.Of(need.Targets, (offer.Item, rate)),
            tolerance ?? RoundingTolerance.Default
        );
    }

    /// <summary>Whether the product holds a nutrient that is needed; what it does not hold, other products bring.</summary>
    private bool Serves(NutrientBalance balance) => balance.PercentOfNeed is not null && counted.Percent(balance.Nutrient) > 0;

    private IEnumerable<Finding> Remarks()
    {
        foreach (var balance in Balances)
        {
            string nutrient = PlantNutrients.Symbols[balance.Nutrient];
            if (balance.Nutrient == PlantNutrient.Nitrogen && balance.PercentOfNeed > 100 + Tolerance.NitrogenOverPercent + Dust)
            {
                yield return FindingCatalog.Create(
                    FertilizerCodes.NitrogenOver,
                    ("percent", Amounts.Print(balance.PercentOfNeed.Value - 100, 0))
                );
            }

            if (Serves(balance) && balance.PercentOfNeed is { } share && share < 100 - Tolerance.ShortPercent - Dust)
            {
                yield return FindingCatalog.Create(
                    FertilizerCodes.Short,
                    ("nutrient", nutrient),
                    ("percent", Amounts.Print(100 - share, 0))
                );
            }
        }
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Spread, "lb", 2)}, {Rate}";
}
