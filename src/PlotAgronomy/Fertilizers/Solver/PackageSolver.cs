namespace PlotAgronomy.Fertilizers;

/// <summary>Solves a package problem in one of the three forms.</summary>
internal static class PackageSolver
{
    /// <summary>Weight given to a pound of product beside a pound of nutrient when choosing what to spread from bought
    /// packages.</summary>
    private const double CarryingWeight = 0.001;

    /// <summary>Cheapest plan.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="form">Form of the plan.</param>
    /// <param name="load">Pounds that one package brings to the ground (nutrients of any kind, and a little for the product
    /// itself).</param>
    /// <param name="nodeLimit">Most linear programs to solve.</param>
    /// <param name="decided">False when the search stopped at its limit before it found any set.</param>
    /// <param name="most">Most packages of each product; none given: no limit.</param>
    /// <param name="work">What may still be done for the question; none given: as much as one question may cost.</param>
    /// <param name="start">A set known to be a plan when every package is emptied; none given: none.</param>
    /// <returns>The plan, or null when none fits, or none was found within the limit.</returns>
    internal static SolvedPackages? Cheapest(
        PackageProblem problem,
        PurchaseForm form,
        ReadOnlySpan<double> load,
        int nodeLimit,
        out bool decided,
        ReadOnlySpan<int> most = default,
        SearchWork? work = null,
        ReadOnlySpan<int> start = default
    )
    {
        if (form == PurchaseForm.WeighExact)
        {
            return WeighExact(problem, out decided);
        }

        if (problem.IsBeyondCounting)
        {
            decided = false;
            return null;
        }

        bool spreadWhole = form == PurchaseForm.SpreadWholePackages;
        var reduction = PackageReduction.Of(problem, spreadWhole, most, start);
        var answer = PackageSearch.Cheapest(
            reduction.Problem,
            spreadWhole,
            reduction.Kept(most),
            nodeLimit,
            work,
            reduction.Kept(start)
        );
        decided = answer.Packages is not null || answer.IsProven;
        if (answer.Packages is null)
        {
            return null;
        }

        double[] bought = Array.ConvertAll(reduction.Restore<int>(answer.Packages), p => (double)p);
        return new SolvedPackages
        {
            Bought = bought,
            Spread = spreadWhole ? bought : LeastLoad(problem, bought, load),
            Cost = answer.Cost,
            LowerBound = answer.LowerBound,
            IsProven = answer.IsProven,
        };
    }

    /// <summary>Pounds that one package brings to the ground, for <see cref="Cheapest"/>.</summary>
    internal static double Load(double nutrientPounds, double packagePounds) => nutrientPounds + (CarryingWeight * packagePounds);

    private static SolvedPackages? WeighExact(PackageProblem problem, out bool decided)
    {
        var simplex = new DualSimplex(problem.AsLinearProgram());
        var outcome = simplex.Solve(double.PositiveInfinity, new SearchWork());
        decided = outcome != SimplexOutcome.Stopped;
        if (outcome != SimplexOutcome.Optimal)
        {
            return null;
        }

        var packages = new double[problem.Products];
        simplex.Columns(packages);
        Tidy(packages);
        double cost = simplex.Objective();
        return new SolvedPackages
        {
            Bought = packages,
            Spread = packages,
            Cost = cost,
            LowerBound = cost,
            IsProven = true,
        };
    }

    /// <summary>What to spread of the packages bought: the least load on the ground that meets the needs.</summary>
    private static double[] LeastLoad(PackageProblem problem, double[] bought, ReadOnlySpan<double> load)
    {
        var program = problem.With(price: load).AsLinearProgram();
        for (int product = 0; product < bought.Length; product++)
        {
            // The search forgives this much of a package; what is spread is cut back to what was bought.
            program.ColumnHigh[product] = bought[product] > 0 ? bought[product] + WholeCount.Tolerance : 0;
        }

        var simplex = new DualSimplex(program);
        if (simplex.Solve(double.PositiveInfinity, new SearchWork()) != SimplexOutcome.Optimal)
        {
            throw new InvalidOperationException("The packages bought do not meet the needs.");
        }

        var spread = new double[problem.Products];
        simplex.Columns(spread);
        Tidy(spread);
        return [.. spread.Zip(bought, Math.Min)];
    }

    /// <summary>Arithmetic dust around zero is zero.</summary>
    private static void Tidy(Span<double> packages)
    {
        foreach (ref double value in packages)
        {
            value = Math.Abs(value) < DualSimplex.FeasibilityTolerance ? 0 : value;
        }
    }
}
