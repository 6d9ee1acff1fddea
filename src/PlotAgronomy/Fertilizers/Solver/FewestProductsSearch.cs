namespace PlotAgronomy.Fertilizers;

/// <summary>Tries every pair, then every triple and so on of products until one fits, and keeps the cheapest of that
/// size.</summary>
/// <remarks>Products that another replaces are left out first: putting that one in their place makes a set neither dearer nor
/// longer. Among many products the choices are too many to try; then the search stops, and what it has found stands
/// unproven.</remarks>
internal sealed class FewestProductsSearch
{
    private readonly PackageProblem problem;
    private readonly PurchaseForm form;
    private readonly double[] load;
    private readonly int nodeLimit;
    private readonly SearchWork work = new();

    private FewestProductsSearch(PackageProblem problem, PurchaseForm form, double[] load, int nodeLimit) =>
        (this.problem, this.form, this.load, this.nodeLimit) = (problem, form, load, nodeLimit);

    internal static SolvedPackages? Find(PackageProblem problem, PurchaseForm form, double[] load, int nodeLimit)
    {
        var reduction = PackageReduction.Of(problem, form == PurchaseForm.SpreadWholePackages);
        return new FewestProductsSearch(reduction.Problem, form, reduction.Kept<double>(load), nodeLimit).Find() is { } found
            ? Restored(reduction, found)
            : null;
    }

    private SolvedPackages? Find()
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
                if (work.IsSpent)
                {
                    return (best ?? cheapest).BoundedBy(0);
                }

                best = Better(chosen, best);
            }

            if (best is not null)
            {
                return best;
            }
        }

        return cheapest;
    }

    private SolvedPackages? Better(bool[] chosen, SolvedPackages? best)
    {
        var part = PackageReduction.Keeping(problem, chosen);
        var simplex = new DualSimplex(part.Problem.AsLinearProgram());
        work.Add(simplex.Size + problem.Products);
        if (simplex.Solve(best?.Cost ?? double.PositiveInfinity, work) != SimplexOutcome.Optimal)
        {
            return best;
        }

        double[] partLoad = [.. load.Where((_, product) => chosen[product])];
        var plan = PackageSolver.Cheapest(part.Problem, form, partLoad, nodeLimit, out _, default, work);
        return plan is null || (best is not null && plan.Cost >= best.Cost) ? best : Restored(part, plan);
    }

    private static SolvedPackages Restored(PackageReduction part, SolvedPackages plan) =>
        new()
        {
            Bought = part.Restore<double>(plan.Bought),
            Spread = part.Restore<double>(plan.Spread),
            Cost = plan.Cost,
            LowerBound = plan.LowerBound,
            IsProven = plan.IsProven,
        };

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
