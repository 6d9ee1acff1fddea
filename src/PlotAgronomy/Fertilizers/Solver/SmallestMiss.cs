namespace PlotAgronomy.Fertilizers;

/// <summary>When no set meets every need within the caps: the needs that can be met, at the smallest sum of missing
/// shares.</summary>
/// <remarks>Miss = sum over nutrients of (need - delivered) / need. Caps are never passed.</remarks>
internal static class SmallestMiss
{
    /// <summary>A hair is taken off what can be met, so that arithmetic dust does not make it impossible again.</summary>
    private const double Hair = 1e-9;

    internal static double[] ReachableNeeds(PackageProblem problem, PurchaseForm form, int nodeLimit, out bool isSmallest)
    {
        isSmallest = true;
        double[] weights = Array.ConvertAll(problem.Need, n => n > 0 ? 1 / n : 0);
        var soft = problem.With(price: new double[problem.Products], missWeight: weights);
        double[] packages = form == PurchaseForm.SpreadWholePackages ? Whole(soft, nodeLimit, out isSmallest) : InParts(soft);
        var reachable = new double[problem.Nutrients];
        for (int nutrient = 0; nutrient < reachable.Length; nutrient++)
        {
            double delivered = Math.Max(0, problem.Delivered(nutrient, packages)) * (1 - Hair);
            reachable[nutrient] = Math.Min(problem.Need[nutrient], delivered > Hair * problem.Need[nutrient] ? delivered : 0);
        }

        return reachable;
    }

    private static double[] InParts(PackageProblem soft)
    {
        var simplex = new DualSimplex(soft.AsLinearProgram());
        simplex.Solve();
        var packages = new double[soft.Products];
        simplex.Columns(packages);
        return packages;
    }

    private static double[] Whole(PackageProblem soft, int nodeLimit, out bool isSmallest)
    {
        var answer = PackageSearch.Cheapest(soft, spreadWhole: true, default, nodeLimit);
        isSmallest = answer.IsProven;
        return Array.ConvertAll(answer.Packages ?? new int[soft.Products], p => (double)p);
    }
}
