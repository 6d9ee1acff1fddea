namespace PlotAgronomy.Fertilizers;

/// <summary>A set of needs and caps that cannot all be kept, none of which can be left out of the quarrel.</summary>
internal static class LimitConflict
{
    /// <summary>Takes one limit away at a time; what can go while the rest still quarrel is no part of the quarrel.</summary>
    /// <returns>Nutrients whose need, and nutrients whose cap, takes part.</returns>
    internal static (List<int> Needs, List<int> Caps) Find(PackageProblem problem, PurchaseForm form, int nodeLimit)
    {
        double[] need = [.. problem.Need],
            cap = [.. problem.Cap];
        bool whole =
            form == PurchaseForm.SpreadWholePackages
            && Fits(problem, PurchaseForm.WeighExact, nodeLimit, new SearchWork()) != false;
        var tested = whole ? PurchaseForm.SpreadWholePackages : PurchaseForm.WeighExact;
        var work = new SearchWork();
        for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
        {
            TakeAway(need, nutrient, 0);
            TakeAway(cap, nutrient, double.PositiveInfinity);
        }

        var nutrients = Enumerable.Range(0, problem.Nutrients).ToList();
        return (nutrients.FindAll(n => need[n] > 0), nutrients.FindAll(n => double.IsFinite(cap[n])));

        void TakeAway(double[] limits, int nutrient, double none)
        {
            double kept = limits[nutrient];
            limits[nutrient] = none;
            if (Fits(problem.With(need, cap), tested, nodeLimit, work) != false)
            {
                limits[nutrient] = kept;
            }
        }
    }

    /// <summary>Whether any set respects all limits; null when the search stopped before it knew.</summary>
    internal static bool? Fits(PackageProblem problem, PurchaseForm form, int nodeLimit, SearchWork work)
    {
        if (form != PurchaseForm.SpreadWholePackages)
        {
            var outcome = new DualSimplex(problem.AsLinearProgram()).Solve(double.PositiveInfinity, work);
            return outcome == SimplexOutcome.Stopped ? null : outcome == SimplexOutcome.Optimal;
        }

        var free = PackageReduction.Of(problem.With(price: new double[problem.Products]), spreadWhole: true).Problem;
        var answer = PackageSearch.Cheapest(free, spreadWhole: true, default, nodeLimit, work);
        return answer.Packages is not null ? true
            : answer.IsProven ? false
            : null;
    }
}
