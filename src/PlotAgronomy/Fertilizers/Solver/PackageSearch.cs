namespace PlotAgronomy.Fertilizers;

/// <summary>Finds the cheapest whole packages by branch and bound over a warm-started dual simplex.</summary>
/// <remarks>Bought whole and spread in part, a product is two columns: the part of packages already paid for, free of cost,
/// and what is bought beyond. Spread whole, it is one column. A node forbids or pays for packages; its linear program is
/// a lower bound of every plan below it.</remarks>
internal sealed class PackageSearch
{
    internal const int DefaultNodeLimit = 200_000;

    /// <summary>Nodes kept at once at most: each holds a linear program; of large ones fewer are kept.</summary>
    private const int MostDepth = 2_000;
    private const double CostTolerance = 1e-7;

    /// <summary>Whole counts that were a hair off before rounding move what is delivered by no more than this part.</summary>
    private const double LimitTolerance = 2 * WholeCount.Tolerance;

    private readonly PackageProblem problem;
    private readonly bool spreadWhole;
    private readonly int nodeLimit;
    private readonly SearchWork work;
    private readonly int products;
    private readonly double priceStep;
    private readonly List<PackageNode> path = [];
    private readonly double[] candidate;
    private int[]? best;
    private double bestCost = double.PositiveInfinity;
    private double openBound = double.PositiveInfinity;
    private int nodes;
    private long mostDepth;

    private PackageSearch(PackageProblem problem, bool spreadWhole, int nodeLimit, SearchWork work)
    {
        this.problem = problem;
        this.spreadWhole = spreadWhole;
        this.nodeLimit = nodeLimit;
        this.work = work;
        products = problem.Products;
        priceStep = problem.MissWeight is null ? PriceStep.Of(problem.Price) : 0;
        candidate = new double[products];
    }

    /// <summary>Cheapest packages.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="spreadWhole">Every bought package goes on whole; else any part of it may.</param>
    /// <param name="most">Most packages of each product; none given: no limit but usefulness.</param>
    /// <param name="nodeLimit">Most linear programs to solve.</param>
    /// <param name="work">What may still be done for the question; none given: as much as one question may cost.</param>
    /// <param name="start">A set known to be a plan, which the search only replaces by a better one; none given: none.</param>
    internal static PackageAnswer Cheapest(
        PackageProblem problem,
        bool spreadWhole,
        ReadOnlySpan<int> most = default,
        int nodeLimit = DefaultNodeLimit,
        SearchWork? work = null,
        ReadOnlySpan<int> start = default
    )
    {
        var search = new PackageSearch(problem, spreadWhole, nodeLimit, work ?? new SearchWork());
        search.StartFrom(start);
        var root = PackageNode.Root(problem, spreadWhole);
        search.mostDepth = Math.Clamp(SearchWork.MostHeld / Math.Max(1, root.Size), 1, MostDepth);
        for (int product = 0; product < problem.Products; product++)
        {
            int useful = problem.MostUseful(product);
            root.Forbid(product, most.IsEmpty ? useful : Math.Min(useful, most[product]));
        }

        search.path.Add(root);
        search.Explore();
        bool proven = double.IsPositiveInfinity(search.openBound);
        return new PackageAnswer
        {
            Packages = search.best,
            Cost = search.bestCost,
            LowerBound = proven ? search.bestCost : Math.Min(search.bestCost, search.openBound),
            Nodes = search.nodes,
            IsProven = proven,
        };
    }

    /// <summary>A plan must cost less than this to be worth finding: one price step below the best one.</summary>
    private double Cutoff =>
        best is null
            ? double.PositiveInfinity
            : bestCost - Math.Max(priceStep - CostTolerance, CostTolerance * Math.Max(1, Math.Abs(bestCost)));

    /// <summary>Goes through the nodes depth first. The turns are kept here and not on the stack of calls: a search may be
    /// deeper than that stack.</summary>
    private void Explore()
    {
        var turns = new List<Turn>();
        Enter(turns);
        while (turns.Count > 0)
        {
            int depth = turns.Count - 1;
            var turn = turns[depth];
            if (turn.Taken == 2)
            {
                turns.RemoveAt(depth);
                continue;
            }

            // The cheaper side first: it is where the best plan usually is, and what it finds prunes the other side.
            bool moreFirst = turn.Branch.CostOfMore <= turn.Branch.CostOfFewer;
            turns[depth] = turn with { Taken = turn.Taken + 1 };
            if (Descend(depth, turn.Branch, more: moreFirst == (turn.Taken == 0)))
            {
                Enter(turns);
            }
        }
    }

    private void StartFrom(ReadOnlySpan<int> start)
    {
        double cost = 0;
        for (int product = 0; product < start.Length; product++)
        {
            candidate[product] = start[product];
            cost += start[product] * problem.Price[product];
        }

        if (!start.IsEmpty && (!spreadWhole || IsPlan(ref cost)))
        {
            best = start.ToArray();
            bestCost = cost;
        }
    }

    /// <summary>Solves the node below the turns taken so far; if it must be branched on, that is the next turn.</summary>
    private void Enter(List<Turn> turns)
    {
        var node = path[turns.Count];
        nodes++;
        work.Add(node.Size);
        var outcome = node.Solve(Cutoff, work);
        if (outcome == SimplexOutcome.Stopped)
        {
            openBound = Math.Min(openBound, node.Cost);
        }

        if (outcome != SimplexOutcome.Optimal)
        {
            return;
        }

        TryRounding(node);
        if (node.Cost > Cutoff)
        {
            return;
        }

        node.ForbidWhatCostsTooMuch(Cutoff);
        var branch = node.ChooseBranch(Cutoff);
        if (branch.Product >= 0)
        {
            turns.Add(new Turn(branch, 0));
        }
    }

    /// <summary>Prepares one side of a branch; false when nothing cheaper can be there, or when the search is at a limit and
    /// leaves that side open.</summary>
    private bool Descend(int depth, PackageBranch branch, bool more)
    {
        double bound = more ? branch.CostOfMore : branch.CostOfFewer;
        if (bound > Cutoff || double.IsPositiveInfinity(bound))
        {
            return false;
        }

        if (nodes >= nodeLimit || depth >= mostDepth || work.IsSpent)
        {
            openBound = Math.Min(openBound, bound);
            return false;
        }

        if (path.Count == depth + 1)
        {
            path.Add(path[depth].Copy());
        }
        else
        {
            path[depth + 1].CopyFrom(path[depth]);
        }

        if (more)
        {
            path[depth + 1].Require(branch.Product, branch.WholeBelow + 1);
        }
        else
        {
            path[depth + 1].Forbid(branch.Product, branch.WholeBelow);
        }

        return true;
    }

    /// <summary>Rounds the node's packages up (and down, where a miss is allowed) and keeps what is a plan.</summary>
    private void TryRounding(PackageNode node)
    {
        Try(node, WholeCount.Above);
        if (problem.MissWeight is not null)
        {
            Try(node, WholeCount.Below);
        }
    }

    private void Try(PackageNode node, Func<double, double> round)
    {
        double cost = 0;
        for (int product = 0; product < products; product++)
        {
            candidate[product] = round(node.PackagesBought(product));
            cost += candidate[product] * problem.Price[product];
        }

        // Bought whole and spread in part, packages rounded up are always a plan: the node's optimum is spread from them.
        if (cost <= Cutoff && (!spreadWhole || IsPlan(ref cost)) && cost <= Cutoff)
        {
            best = Array.ConvertAll(candidate, c => (int)c);
            bestCost = cost;
        }
    }

    private bool IsPlan(ref double cost)
    {
        for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
        {
            double pounds = problem.Delivered(nutrient, candidate);
            bool isShort = pounds < problem.Need[nutrient] * (1 - LimitTolerance);
            if ((isShort && problem.MissWeight is null) || pounds > problem.Cap[nutrient] * (1 + LimitTolerance))
            {
                return false;
            }

            cost += isShort ? problem.MissWeight![nutrient] * (problem.Need[nutrient] - pounds) : 0;
        }

        return true;
    }

    /// <summary>A branch, and how many of its two sides were taken.</summary>
    private readonly record struct Turn(PackageBranch Branch, int Taken);
}
