using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <content>Plans beside the cheapest one.</content>
public sealed partial class FertilizerShelf
{
    /// <summary>The next cheapest set: cheapest of those that do without at least one package of the cheapest set.</summary>
    /// <inheritdoc cref="Cheapest" path="/param"/>
    /// <returns>The plan, or null when nothing fits, nothing else fits, or everything is weighed (then the next set costs only a
    /// hair more).</returns>
    /// <exception cref="ArgumentException">A value outside its range.</exception>
    /// <remarks>Sets that merely add packages to the cheapest are not counted.</remarks>
    public Purchase? NextCheapest(
        PlotNeed need,
        Area area,
        PurchaseForm form = PurchaseForm.BuyWholePackages,
        FieldConditions? field = null,
        int searchLimit = DefaultSearchLimit
    )
    {
        var shelf = Problem(need, area, form, field, searchLimit);
        if (
            form == PurchaseForm.WeighExact
            || PackageSolver.Cheapest(shelf.Packages, form, shelf.Load, searchLimit, out _) is not { } cheapest
        )
        {
            return null;
        }

        SolvedPackages? next = null;
        double lowerBound = double.PositiveInfinity;
        var work = new SearchWork();
        for (int product = 0; product < shelf.Offers.Length; product++)
        {
            if (cheapest.Bought[product] > 0)
            {
                int[] most = new int[shelf.Offers.Length];
                Array.Fill(most, int.MaxValue);
                most[product] = (int)cheapest.Bought[product] - 1;
                var without = PackageSolver.Cheapest(shelf.Packages, form, shelf.Load, searchLimit, out bool isKnown, most, work);
                lowerBound = Math.Min(lowerBound, without?.LowerBound ?? (isKnown ? double.PositiveInfinity : 0));
                next = without is not null && (next is null || without.Cost < next.Cost) ? without : next;
            }
        }

        next = next?.BoundedBy(lowerBound);
        return next is null
            ? null
            : PurchaseBuilder.Build(shelf, area, form, field ?? FieldConditions.Unknown, next, next.IsProven, null, need);
    }

    /// <summary>The cheapest set among those of the fewest different products: fewer passes with the spreader.</summary>
    /// <inheritdoc cref="Cheapest" path="/param"/>
    /// <returns>The plan, or null when nothing fits.</returns>
    /// <exception cref="ArgumentException">A value outside its range.</exception>
    public Purchase? FewestProducts(
        PlotNeed need,
        Area area,
        PurchaseForm form = PurchaseForm.BuyWholePackages,
        FieldConditions? field = null,
        int searchLimit = DefaultSearchLimit
    )
    {
        var shelf = Problem(need, area, form, field, searchLimit);
        var fewest = FewestProductsSearch.Find(shelf.Packages, form, shelf.Load, searchLimit);
        return fewest is null
            ? null
            : PurchaseBuilder.Build(shelf, area, form, field ?? FieldConditions.Unknown, fewest, fewest.IsProven, null, need);
    }
}
