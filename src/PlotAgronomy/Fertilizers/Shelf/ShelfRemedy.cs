using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>Looks for the one material of the catalog that would make a plan fit.</summary>
internal static class ShelfRemedy
{
    /// <summary>The material needed in the least weight; of equal weights the first in the catalog.</summary>
    internal static FertilizerMaterial? Find(
        ShelfProblem shelf,
        PlotNeed need,
        Area area,
        PurchaseForm form,
        SeedPlacedLimit? seedRow,
        int searchLimit
    )
    {
        double smallestPackage = shelf.Offers.Min(o => o.Package.Pounds);
        FertilizerMaterial? best = null;
        double leastPounds = double.PositiveInfinity;
        var work = new SearchWork();
        foreach (var material in FertilizerMaterial.All.Where(CanLieOnAShelf))
        {
            var longer = shelf.Adding(
                Offer.InBags(FertilizerProduct.FromMaterial(material), Mass.FromPounds(smallestPackage), 0),
                need,
                area,
                seedRow
            );
            double pounds = LeastPounds(longer, work) * smallestPackage;
            if (work.IsSpent)
            {
                return best;
            }

            if (Tolerance.IsBelow(pounds, leastPounds) && LimitConflict.Fits(longer.Packages, form, searchLimit, work) == true)
            {
                best = material;
                leastPounds = pounds;
            }
        }

        return best;
    }

    private static bool CanLieOnAShelf(FertilizerMaterial material) => material.Form != MaterialForm.GasUnderPressure;

    /// <summary>Least packages of the last product in any plan that weighs everything; infinite when none fits.</summary>
    private static double LeastPounds(ShelfProblem shelf, SearchWork work)
    {
        var onlyTheLast = new double[shelf.Offers.Length];
        onlyTheLast[^1] = 1;
        var simplex = new DualSimplex(shelf.Packages.With(price: onlyTheLast).AsLinearProgram());
        return simplex.Solve(double.PositiveInfinity, work) == SimplexOutcome.Optimal
            ? simplex.Objective()
            : double.PositiveInfinity;
    }
}
