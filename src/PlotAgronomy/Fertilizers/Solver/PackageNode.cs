namespace PlotAgronomy.Fertilizers;

/// <summary>One node of the search: how many packages of each product must be bought at least and at most.</summary>
internal sealed class PackageNode
{
    private const double WeightOfTheDearerSide = 0.1;

    private readonly DualSimplex simplex;
    private readonly double[] price;
    private readonly bool spreadWhole;
    private readonly int[] least;
    private readonly int[] most;
    private readonly double[] values;
    private double paid;

    private PackageNode(DualSimplex simplex, double[] price, bool spreadWhole)
    {
        this.simplex = simplex;
        this.price = price;
        this.spreadWhole = spreadWhole;
        least = new int[price.Length];
        most = new int[price.Length];
        values = new double[price.Length];
    }

    /// <summary>Gets the cost of the node's linear program, packages already paid for included.</summary>
    internal double Cost => paid + simplex.Objective();

    internal static PackageNode Root(PackageProblem problem, bool spreadWhole)
    {
        // Columns 0 to Products - 1 are packages bought at their price; behind them stand the packages already paid for.
        int productColumns = spreadWhole ? problem.Products : 2 * problem.Products;
        var program = new LinearProgram(problem.Nutrients, productColumns + (problem.MissWeight is null ? 0 : problem.Nutrients));
        problem.Price.CopyTo(program.Cost, 0);
        problem.Fill(program, 0);
        if (!spreadWhole)
        {
            problem.Fill(program, problem.Products);
            program.ColumnHigh.AsSpan(problem.Products, problem.Products).Clear();
        }

        problem.FillMisses(program, productColumns);

        return new PackageNode(new DualSimplex(program), problem.Price, spreadWhole);
    }

    internal PackageNode Copy()
    {
        var copy = new PackageNode(simplex.Copy(), price, spreadWhole);
        copy.CopyCounts(this);
        return copy;
    }

    internal void CopyFrom(PackageNode other)
    {
        simplex.CopyFrom(other.simplex);
        CopyCounts(other);
    }

    /// <summary>Allows at most so many packages of a product.</summary>
    internal void Forbid(int product, int atMost)
    {
        most[product] = atMost;
        simplex.Limit(product, spreadWhole ? least[product] : 0, spreadWhole ? atMost : atMost - least[product]);
    }

    /// <summary>Buys at least so many packages of a product.</summary>
    internal void Require(int product, int atLeast)
    {
        paid += spreadWhole ? 0 : price[product] * (atLeast - least[product]);
        least[product] = atLeast;
        simplex.Limit(product, spreadWhole ? atLeast : 0, spreadWhole ? most[product] : most[product] - atLeast);
        if (!spreadWhole)
        {
            simplex.Limit(price.Length + product, 0, atLeast);
        }
    }

    /// <summary>Numbers held.</summary>
    internal long Size => simplex.Size;

    internal SimplexOutcome Solve(double cutoff, SearchWork work)
    {
        var outcome = simplex.Solve(cutoff - paid, work);
        if (outcome == SimplexOutcome.Optimal)
        {
            simplex.Columns(values);
        }

        return outcome;
    }

    /// <summary>Packages bought at the node's optimum, whole or not.</summary>
    internal double PackagesBought(int product) => (spreadWhole ? 0 : least[product]) + values[product];

    /// <summary>Lowers the most packages of every product whose next package would lift the cost above the cutoff.</summary>
    internal void ForbidWhatCostsTooMuch(double cutoff)
    {
        double room = cutoff - Cost;
        if (!double.IsFinite(room))
        {
            return;
        }

        Span<double> extraCost = price.Length <= 64 ? stackalloc double[price.Length] : new double[price.Length];
        simplex.ReducedCosts(extraCost);
        for (int product = 0; product < price.Length; product++)
        {
            int bought = (int)Math.Round(PackagesBought(product), MidpointRounding.AwayFromZero);
            double extra = spreadWhole ? extraCost[product] : Math.Min(extraCost[product], price[product]);
            if (extra > 0 && (most[product] - bought) * extra > room)
            {
                Forbid(product, bought + (int)Math.Max(0, Math.Floor((room / extra) + 1e-9)));
            }
        }
    }

    /// <summary>Chooses the product whose two sides both cost most: that lifts the bound fastest.</summary>
    internal PackageBranch ChooseBranch(double cutoff)
    {
        var chosen = PackageBranch.None;
        double bestScore = double.NegativeInfinity,
            cost = Cost;
        for (int product = 0; product < price.Length; product++)
        {
            double bought = PackagesBought(product);
            double below = WholeCount.Below(bought);
            double part = bought - below;
            if (
                WholeCount.IsWhole(bought)
                || below < least[product]
                || below >= most[product]
                || !simplex.TryCostOfMoving(product, out double perUnitDown, out double perUnitUp)
            )
            {
                continue;
            }

            // Bought in part, the last package can also be paid for and left unused, at the price of that part.
            double fewer = cost + (part * perUnitDown);
            double more = cost + ((1 - part) * (spreadWhole ? perUnitUp : Math.Min(perUnitUp, price[product])));
            if (fewer > cutoff && more > cutoff)
            {
                return PackageBranch.None;
            }

            double score = Math.Min(fewer, more) + (WeightOfTheDearerSide * Math.Min(Math.Max(fewer, more), cutoff));
            if (score > bestScore)
            {
                bestScore = score;
                chosen = new PackageBranch(product, (int)below, fewer, more);
            }
        }

        return chosen;
    }

    private void CopyCounts(PackageNode other)
    {
        other.least.CopyTo(least, 0);
        other.most.CopyTo(most, 0);
        paid = other.paid;
    }
}
