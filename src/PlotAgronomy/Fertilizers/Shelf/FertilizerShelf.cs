using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>The products a store has, and the cheapest honest set of them for a plot.</summary>
/// <remarks>The order in which products are handed over does not matter: they are kept in the order of their names.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class FertilizerShelf
{
    /// <summary>Linear programs the search may solve before it answers with the best plan so far and its proven gap.</summary>
    public const int DefaultSearchLimit = PackageSearch.DefaultNodeLimit;

    private FertilizerShelf(ImmutableArray<Offer<FertilizerProduct>> offers) => Offers = offers;

    /// <summary>Gets the offers, in the order of the names of their products.</summary>
    public ImmutableArray<Offer<FertilizerProduct>> Offers { get; }

    /// <summary>Puts products on a shelf.</summary>
    /// <param name="offers">Products on offer; at least one.</param>
    /// <returns>The shelf.</returns>
    /// <exception cref="ArgumentException">No product.</exception>
    public static FertilizerShelf FromOffers(params IReadOnlyList<Offer<FertilizerProduct>> offers) =>
        new([
            .. Guard
                .NotEmpty(offers)
                .OrderBy(o => o.Item.Name, StringComparer.Ordinal)
                .ThenBy(o => o.Item.Analysis.ToString(), StringComparer.Ordinal)
                .ThenBy(o => o.Package.Pounds)
                .ThenBy(o => o.Price),
        ]);

    /// <summary>The cheapest set that meets every need and passes no cap.</summary>
    /// <param name="need">What the plot should receive.</param>
    /// <param name="area">Area of the plot; above 0.</param>
    /// <param name="form">What is bought and spread whole.</param>
    /// <param name="field">What is known of the field, for cautions and for the salt limit of a seed row; null when nothing
    /// is.</param>
    /// <param name="searchLimit">Linear programs to solve at most; at least 1.</param>
    /// <returns>The plan. When no set fits, the set with the smallest weighted miss, the conflict, and what would make it
    /// fit.</returns>
    /// <exception cref="ArgumentException">A value outside its range.</exception>
    /// <remarks>Minimise the price of the packages, subject to need &lt;= delivered &lt;= cap for every nutrient named.
    /// Delivered is what is spread, so caps bind what is spread. Proven by branch and bound.</remarks>
    public Purchase Cheapest(
        PlotNeed need,
        Area area,
        PurchaseForm form = PurchaseForm.BuyWholePackages,
        FieldConditions? field = null,
        int searchLimit = DefaultSearchLimit
    )
    {
        return PurchaseBuilder.Build(
            Problem(need, area, form, field, searchLimit),
            need,
            area,
            form,
            field ?? FieldConditions.Unknown,
            searchLimit
        );
    }

    private ShelfProblem Problem(PlotNeed need, Area area, PurchaseForm form, FieldConditions? field, int searchLimit)
    {
        ArgumentNullException.ThrowIfNull(need);
        Guard.Positive(area);
        Guard.Defined(form);
        Guard.AtLeast(searchLimit, 1, "linear programs");
        if (form != PurchaseForm.WeighExact && Offers.FirstOrDefault(o => !o.Package.IsWhole) is { } loose)
        {
            throw new ArgumentException(
                $"{loose.Item} is sold loose: only what is weighed exactly can be counted.",
                nameof(form)
            );
        }

        return ShelfProblem.Of(Offers, need, area, field?.SeedRowLimit).Shortened(need, area, field?.SeedRowLimit);
    }

    /// <summary>The offers.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", Offers.Select(o => o.ToString()));
}
