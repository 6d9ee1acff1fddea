namespace PlotAgronomy.Fertilizers;

/// <summary>When no set meets every need within the caps: the needs that can be met, at the smallest sum of missing
/// shares.</summary>
/// <remarks>Miss = sum over nutrients of (need - delivered) / need. Caps are never passed.</remarks>
internal static class SmallestMiss
{
    /// <summary>A hair is taken off what can be met, so that arithmetic dust does not make it impossible again.</summary>
    private const double Hair = 1e-9;

    /// <summary>Packages added one by one at most; where more are wanted, rounding comes as near.</summary>
    private const int MostAdded = 200;

    /// <param name="problem">The problem.</param>
    /// <param name="form">Form of the plan.</param>
    /// <param name="nodeLimit">Most linear programs to solve.</param>
    /// <param name="isSmallest">False when the search stopped at its limit: another set may miss less.</param>
    /// <param name="nearest">The packages that reach these needs when each is emptied; null when parts are spread.</param>
    internal static double[] ReachableNeeds(
        PackageProblem problem,
        PurchaseForm form,
        int nodeLimit,
        out bool isSmallest,
        out int[]? nearest
    )
    {
        double[] weights = Array.ConvertAll(problem.Need, n => n > 0 ? 1 / n : 0);
        var soft = problem.With(price: new double[problem.Products], missWeight: weights);
        nearest = null;
        double[] packages =
            form == PurchaseForm.SpreadWholePackages
                ? Array.ConvertAll(nearest = Whole(soft, nodeLimit, out isSmallest), p => (double)p)
                : InParts(soft, out isSmallest);
        var reachable = new double[problem.Nutrients];
        for (int nutrient = 0; nutrient < reachable.Length; nutrient++)
        {
            double delivered = Math.Max(0, problem.Delivered(nutrient, packages)) * (1 - Hair);
            reachable[nutrient] = Math.Min(problem.Need[nutrient], delivered > Hair * problem.Need[nutrient] ? delivered : 0);
        }

        return reachable;
    }

    private static double[] InParts(PackageProblem soft, out bool isSmallest)
    {
        var simplex = new DualSimplex(soft.AsLinearProgram());
        isSmallest = simplex.Solve(double.PositiveInfinity, new SearchWork()) == SimplexOutcome.Optimal;
        var packages = new double[soft.Products];
        if (isSmallest)
        {
            simplex.Columns(packages);
        }

        return packages;
    }

    /// <summary>Starts from one package after the other, so that a search stopped at once still names a set.</summary>
    private static int[] Whole(PackageProblem soft, int nodeLimit, out bool isSmallest)
    {
        if (soft.IsBeyondCounting)
        {
            isSmallest = false;
            return new int[soft.Products];
        }

        var reduction = PackageReduction.Of(soft, spreadWhole: true);
        int[] start = OneAfterTheOther(reduction.Problem);
        var answer = PackageSearch.Cheapest(reduction.Problem, spreadWhole: true, default, nodeLimit, null, start);
        isSmallest = answer.IsProven;
        return reduction.Restore<int>(answer.Packages ?? start);
    }

    /// <summary>Adds the package that lowers the missing shares most, as long as one does and no cap is passed.</summary>
    private static int[] OneAfterTheOther(PackageProblem soft)
    {
        var packages = new int[soft.Products];
        var delivered = new double[soft.Nutrients];
        for (int added = 0; added < MostAdded; added++)
        {
            int best = -1;
            double mostGained = Hair;
            for (int product = 0; product < soft.Products; product++)
            {
                double gained = Gained(soft, delivered, product);
                (best, mostGained) = gained > mostGained ? (product, gained) : (best, mostGained);
            }

            if (best < 0)
            {
                break;
            }

            packages[best]++;
            for (int nutrient = 0; nutrient < soft.Nutrients; nutrient++)
            {
                delivered[nutrient] += soft[nutrient, best];
            }
        }

        return packages;
    }

    /// <summary>Missing shares that one more package takes away; nothing when it passes a cap.</summary>
    private static double Gained(PackageProblem soft, double[] delivered, int product)
    {
        double gained = 0;
        for (int nutrient = 0; nutrient < soft.Nutrients; nutrient++)
        {
            double pounds = soft[nutrient, product];
            if (pounds > 0 && delivered[nutrient] + pounds > soft.Cap[nutrient])
            {
                return 0;
            }

            gained += soft.MissWeight![nutrient] * Math.Min(pounds, Math.Max(0, soft.Need[nutrient] - delivered[nutrient]));
        }

        return gained;
    }
}
