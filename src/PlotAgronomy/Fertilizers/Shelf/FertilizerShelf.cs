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

    private FertilizerShelf(ImmutableArray<FertilizerProduct> products) => Products = products;

    /// <summary>Gets the products, in the order of their names.</summary>
    public ImmutableArray<FertilizerProduct> Products { get; }

    /// <summary>Puts products on a shelf.</summary>
    /// <param name="products">Products; at least one.</param>
    /// <returns>The shelf.</returns>
    /// <exception cref="ArgumentException">No product.</exception>
    public static FertilizerShelf FromProducts(params IReadOnlyList<FertilizerProduct> products) =>
        new([
            .. Guard
                .NotEmpty(products)
                .OrderBy(p => p.Name, StringComparer.Ordinal)
                .ThenBy(p => p.Analysis.ToString(), StringComparer.Ordinal)
                .ThenBy(p => p.PackagePounds)
                .ThenBy(p => p.Price),
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
        double acres = area.Acres;
        Guard.Above(acres, 0, "ac", nameof(area));
        Guard.Defined(form);
        Guard.AtLeast(searchLimit, 1, "linear programs");
        return ShelfProblem.Of(Products, need, area, field?.SeedRowLimit);
    }
}
