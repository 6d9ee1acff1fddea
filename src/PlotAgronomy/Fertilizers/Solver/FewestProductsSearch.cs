namespace PlotAgronomy.Fertilizers;

/// <summary>Tries every pair, then every triple and so on of products until one fits, and keeps the cheapest of that
/// size.</summary>
internal static class FewestProductsSearch
{
    internal static SolvedPackages? Find(PackageProblem problem, PurchaseForm form, double[] load, int nodeLimit)
    {
        if (PackageSolver.Cheapest(problem, form, load, nodeLimit, out _) is not { } cheapest)
        {
            return null;
        }

        int used = cheapest.Bought.Count(b => b > 0);
        for (int size = 1; size < used; size++)
        {
            SolvedPackages? best = null;
            foreach (bool[] chosen in Choices(problem.Products, size))
            {
                best = Better(problem, form, load, nodeLimit, chosen, best);
            }

            if (best is not null)
            {
                return best;
            }
        }

        return cheapest;
    }

    private static SolvedPackages? Better(
        PackageProblem problem,
        PurchaseForm form,
        double[] load,
        int nodeLimit,
        bool[] chosen,
        SolvedPackages? best
    )
    {
        var part = PackageReduction.Keeping(problem, chosen);
        var simplex = new DualSimplex(part.Problem.AsLinearProgram());
        if (simplex.Solve(best?.Cost ?? double.PositiveInfinity) != SimplexOutcome.Optimal)
        {
            return best;
        }

        double[] partLoad = [.. load.Where((_, product) => chosen[product])];
        var plan = PackageSolver.Cheapest(part.Problem, form, partLoad, nodeLimit, out _);
        return plan is null || (best is not null && plan.Cost >= best.Cost)
            ? best
            : new SolvedPackages
            {
                Bought = part.Restore<double>(plan.Bought),
                Spread = part.Restore<double>(plan.Spread),
                Cost = plan.Cost,
                LowerBound = plan.LowerBound,
                IsProven = plan.IsProven,
            };
    }

    /// <summary>Every choice of so many among so many; the array is used again for the next.</summary>
    private static IEnumerable<bool[]> Choices(int count, int size)
    {
        var chosen = new bool[count];
        int[] places = [.. Enumerable.Range(0, size)];
        while (size <= count)
        {
            Array.Clear(chosen);
            foreach (int place in places)
            {
                chosen[place] = true;
            }

            yield return chosen;
            int last = size - 1;
            while (last >= 0 && places[last] == count - size + last)
            {
                last--;
            }

            if (last < 0)
            {
                yield break;
            }

            places[last]++;
            for (int next = last + 1; next < size; next++)
            {
                places[next] = places[next - 1] + 1;
            }
        }
    }
}
