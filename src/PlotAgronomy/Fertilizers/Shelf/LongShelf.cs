namespace PlotAgronomy.Fertilizers;

/// <summary>Which offers of a shelf longer than any store's are looked at: those that bring a needed nutrient, or all of them
/// together, for the least money.</summary>
internal static class LongShelf
{
    /// <summary>Offers that are searched without a choice.</summary>
    internal const int Most = 600;

    /// <summary>The places of the offers that are looked at, in their order; null where all are.</summary>
    internal static int[]? Chosen(PackageProblem problem)
    {
        if (problem.Products <= Most)
        {
            return null;
        }

        var rows = Enumerable.Range(0, problem.Nutrients).Where(r => problem.Need[r] > 0).ToList();
        var chosen = new HashSet<int>();
        double[] rowPrices = RowPrices(problem);
        Func<int, double>[] dearness =
        [
            product => problem.Price[product] - Sum(product, r => rowPrices[r]),
            product => problem.Price[product] / Sum(product, _ => 1),
            .. rows.Select<int, Func<int, double>>(r => product => problem.Price[product] / problem[r, product]),
        ];
        int each = Most / dearness.Length;
        foreach (var dear in dearness)
        {
            chosen.UnionWith(Cheapest(problem.Products, dear, each));
        }

        int[] places = [.. chosen];
        Array.Sort(places);
        return places;

        double Sum(int product, Func<int, double> weight)
        {
            double sum = 0;
            foreach (int row in rows)
            {
                sum += weight(row) * problem[row, product];
            }

            return sum;
        }
    }

    /// <summary>What the whole shelf costs at the least if packages could be divided; nothing where the needs are not
    /// met.</summary>
    internal static double LowestCost(PackageProblem problem)
    {
        var simplex = new DualSimplex(problem.AsLinearProgram());
        return simplex.Solve(double.PositiveInfinity, new SearchWork()) == SimplexOutcome.Optimal ? simplex.Objective() : 0;
    }

    /// <summary>What a pound of each nutrient is worth here; nothing where the needs are not met.</summary>
    private static double[] RowPrices(PackageProblem problem)
    {
        double[] prices = new double[problem.Nutrients];
        var simplex = new DualSimplex(problem.AsLinearProgram());
        if (simplex.Solve(double.PositiveInfinity, new SearchWork()) == SimplexOutcome.Optimal)
        {
            simplex.RowPrices(prices);
        }

        return prices;
    }

    private static int[] Cheapest(int products, Func<int, double> dear, int count)
    {
        double[] keys = new double[products];
        int[] places = new int[products];
        for (int product = 0; product < products; product++)
        {
            double key = dear(product);
            keys[product] = double.IsNaN(key) ? double.PositiveInfinity : key;
            places[product] = product;
        }

        Array.Sort(places, (one, other) =>
            keys[one].CompareTo(keys[other]) is not 0 and var order ? order : one.CompareTo(other)
        );
        return places[..count];
    }
}
