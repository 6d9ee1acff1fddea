using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Fertilizers;

/// <summary>How well one product alone fits a need: the rate with the smallest sum of squared misses, each as a share of its
/// need.</summary>
/// <remarks>For ranking single products only: least squares trades an overdose against a shortage and knows no caps, so it is no
/// plan.
/// Minimise the sum over needed nutrients of ((rate x percent - need) / need) squared, rate at least 0 (active-set method,
/// common practice).</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ProductFit
{
    private ProductFit(FertilizerProduct product, ApplicationRate rate, double miss, ImmutableArray<NutrientBalance> balances) =>
        (Product, Rate, Miss, Balances) = (product, rate, miss, balances);

    /// <summary>Gets the product.</summary>
    public FertilizerProduct Product { get; }

    /// <summary>Gets the rate that fits best.</summary>
    public ApplicationRate Rate { get; }

    /// <summary>Gets the length of the misses, each as a share of its need; 0 is a perfect fit.</summary>
    public double Miss { get; }

    /// <summary>Gets what every nutrient receives beside its need.</summary>
    public ImmutableArray<NutrientBalance> Balances { get; }

    /// <summary>Ranks products by how well each fits alone, best first.</summary>
    /// <param name="need">What the plot should receive; at least one nutrient needed.</param>
    /// <param name="products">Products; at least one.</param>
    /// <returns>The fits, best first; alike ones in the order of their names.</returns>
    /// <exception cref="ArgumentException">No product, or nothing needed.</exception>
    public static ImmutableArray<ProductFit> Rank(PlotNeed need, params IReadOnlyList<FertilizerProduct> products)
    {
        ArgumentNullException.ThrowIfNull(need);
        var needed = need.Targets.Where(t => t.AtLeast > ApplicationRate.Zero).ToList();
        if (needed.Count == 0)
        {
            throw new ArgumentException("No nutrient is needed.", nameof(need));
        }

        return
        [
            .. Guard
                .NotEmpty(products)
                .OrderBy(p => p.Name, StringComparer.Ordinal)
                .ThenBy(p => p.Analysis.ToString(), StringComparer.Ordinal)
                .Select(p => Of(p, need, needed))
                .OrderBy(f => f.Miss),
        ];
    }

    private static ProductFit Of(FertilizerProduct product, PlotNeed need, List<NutrientTarget> needed)
    {
        var matrix = new double[needed.Count, 1];
        var target = new double[needed.Count];
        for (int row = 0; row < needed.Count; row++)
        {
            matrix[row, 0] = product.Counted.Percent(needed[row].Nutrient) / needed[row].AtLeast.PoundsPerAcre;
            target[row] = 1;
        }

        var (values, miss) = NonnegativeLeastSquares.Solve(matrix, target);
        var rate = ApplicationRate.FromPoundsPerAcre(100 * values[0]);
        return new ProductFit(product, rate, miss, NutrientBalances.Of(need.Targets, (product, rate)));
    }

    /// <summary>The product, its rate and what it misses.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Product} at {Amounts.Print(Rate, decimals: 1)}, missing {Amounts.Print(Miss, 3)}";
}
