namespace PlotAgronomy.Blends;

/// <summary>Finds the cheapest shares of a full stand, in whole steps, that meet every limit: exact, by best-first
/// search.</summary>
/// <remarks>Kinds are settled one after another. What is left to meet, not the path to it, decides how a partial recipe may
/// go on, so only the cheapest path to each such state is kept. The bound on the cost still to come never exceeds the true
/// one, so the first whole recipe taken from the queue is the cheapest. A search that stops at its limit goes on with the few
/// cheapest lots of each season and family alone, and of these with the few most promising partial recipes, which takes little
/// and mostly ends in a whole recipe.</remarks>
internal sealed class CheapestShares
{
    /// <summary>Partial recipes kept of each kind once the search has stopped.</summary>
    private const int KeptAfterStop = 20;

    /// <summary>Lots of each season and family that the search goes on with.</summary>
    private const int FewOfEach = 3;
    private const int MostPromising = 20;

    private readonly Candidate[] candidates;
    private readonly Limits limits;
    private readonly RecipeWork work;
    private readonly double[] cheapestFrom;
    private readonly double[,] cheapestFromInSeason;
    private readonly List<Node> nodes = [];
    private readonly Dictionary<State, double> bestCost = [];
    private readonly PriorityQueue<int, (double Bound, int Order)> queue = new();

    private CheapestShares(Candidate[] candidates, Limits limits, RecipeWork work)
    {
        this.candidates = candidates;
        this.limits = limits;
        this.work = work;
        cheapestFrom = new double[candidates.Length + 1];
        cheapestFromInSeason = new double[candidates.Length + 1, SeasonSteps.Seasons];
        cheapestFrom[^1] = double.PositiveInfinity;
        for (int s = 0; s < SeasonSteps.Seasons; s++)
        {
            cheapestFromInSeason[candidates.Length, s] = double.PositiveInfinity;
        }

        for (int i = candidates.Length - 1; i >= 0; i--)
        {
            double cost = candidates[i].CostPerStep;
            cheapestFrom[i] = Math.Min(cheapestFrom[i + 1], cost);
            for (int s = 0; s < SeasonSteps.Seasons; s++)
            {
                double later = cheapestFromInSeason[i + 1, s];
                cheapestFromInSeason[i, s] = (candidates[i].SeasonMask & (1 << s)) != 0 ? Math.Min(later, cost) : later;
            }
        }
    }

    /// <summary>A lot that may go in. Candidates of one family, and of one capped group, must stand together.</summary>
    internal readonly record struct Candidate(
        int MinSteps,
        int MaxSteps,
        double CostPerStep,
        int SeasonMask,
        int Family,
        bool InCappedGroup
    );

    /// <summary>What the recipe must meet. Steps lacking: one figure for each season, 0 where nothing is asked.</summary>
    internal readonly record struct Limits(
        int MinTotalSteps,
        int MaxTotalSteps,
        SeasonSteps Lacking,
        int MinKinds,
        int MinFamilies,
        int MaxCappedGroupSteps
    );

    private readonly record struct State(
        int Next,
        int Steps,
        SeasonSteps Lacking,
        int Kinds,
        int Families,
        bool FamilyUsed,
        int GroupSteps
    );

    private readonly record struct Node(State State, double Cost, int Parent, int StepsChosen);

    /// <summary>Steps of each candidate in the cheapest recipe, or none when none meets the limits.</summary>
    internal static FoundShares Find(Candidate[] candidates, Limits limits, RecipeWork work)
    {
        if (new CheapestShares(candidates, limits, work).Search(out bool isDone) is var steps && isDone)
        {
            return new(steps, true);
        }

        int[] places = Promising(candidates, limits);
        var few = new CheapestShares([.. places.Select(p => candidates[p])], limits, work.Afterwards);
        if (few.SearchAmongFew() is not { } stepsOfFew)
        {
            return new(null, false);
        }

        var all = new int[candidates.Length];
        for (int i = 0; i < places.Length; i++)
        {
            all[places[i]] = stepsOfFew[i];
        }

        return new(all, false);
    }

    /// <summary>The cheapest few of each season and of each family, and as many kinds as are asked for.</summary>
    private static int[] Promising(Candidate[] candidates, Limits limits)
    {
        int[] byCost = [.. Enumerable.Range(0, candidates.Length).OrderBy(c => candidates[c].CostPerStep)];
        var chosen = new HashSet<int>(byCost.Take(Math.Min(limits.MinKinds, MostPromising)));
        for (int s = 0; s < SeasonSteps.Seasons; s++)
        {
            chosen.UnionWith(byCost.Where(c => (candidates[c].SeasonMask & (1 << s)) != 0).Take(FewOfEach));
        }

        chosen.UnionWith(byCost.GroupBy(c => candidates[c].Family).Take(MostPromising).SelectMany(f => f.Take(FewOfEach)));
        return [.. chosen.Order()];
    }

    private State Start => new(0, 0, limits.Lacking, limits.MinKinds, limits.MinFamilies, false, 0);

    private int[]? Search(out bool isDone)
    {
        isDone = true;
        Add(Start, 0, -1, 0);
        while (queue.TryDequeue(out int index, out _))
        {
            if (work.IsSpent)
            {
                isDone = false;
                return null;
            }

            var node = nodes[index];
            if (node.Cost > bestCost[node.State])
            {
                continue;
            }

            if (node.State.Next == candidates.Length)
            {
                return Retrace(index);
            }

            Expand(index, node);
        }

        return null;
    }

    /// <summary>Settles one kind after another and keeps the cheapest few of what is left after each.</summary>
    private int[]? SearchAmongFew()
    {
        Add(Start, 0, -1, 0);
        for (int settled = 0; settled < candidates.Length && !work.IsSpent; settled++)
        {
            var kept = new List<int>();
            while (kept.Count < KeptAfterStop && queue.TryDequeue(out int index, out _))
            {
                if (nodes[index].Cost <= bestCost[nodes[index].State])
                {
                    kept.Add(index);
                }
            }

            queue.Clear();
            bestCost.Clear();
            foreach (int index in kept)
            {
                Expand(index, nodes[index]);
            }
        }

        return queue.TryDequeue(out int best, out _) && nodes[best].State.Next == candidates.Length ? Retrace(best) : null;
    }

    private void Expand(int index, Node node)
    {
        var state = node.State;
        var candidate = candidates[state.Next];
        Add(
            Leave(state, state.Steps, state.Lacking, state.Kinds, state.Families, state.FamilyUsed, state.GroupSteps),
            node.Cost,
            index,
            0
        );

        int most = Math.Min(candidate.MaxSteps, limits.MaxTotalSteps - state.Steps);
        most = candidate.InCappedGroup ? Math.Min(most, limits.MaxCappedGroupSteps - state.GroupSteps) : most;
        for (int steps = candidate.MinSteps; steps <= most; steps++)
        {
            var next = Leave(
                state,
                state.Steps + steps,
                state.Lacking.After(steps, candidate.SeasonMask),
                Math.Max(0, state.Kinds - 1),
                Math.Max(0, state.Families - (state.FamilyUsed ? 0 : 1)),
                true,
                state.GroupSteps + (candidate.InCappedGroup ? steps : 0)
            );
            Add(next, node.Cost + steps * candidate.CostPerStep, index, steps);
        }
    }

    /// <summary>The state before the next candidate; what only mattered inside a family or a capped group is forgotten.</summary>
    private State Leave(State state, int steps, SeasonSteps lacking, int kinds, int families, bool familyUsed, int groupSteps)
    {
        int next = state.Next + 1;
        bool last = next == candidates.Length;
        bool sameFamily = !last && families > 0 && candidates[next].Family == candidates[state.Next].Family;
        bool sameGroup = !last && candidates[next].InCappedGroup && candidates[state.Next].InCappedGroup;
        return new State(next, steps, lacking, kinds, families, sameFamily && familyUsed, sameGroup ? groupSteps : 0);
    }

    private void Add(State state, double cost, int parent, int stepsChosen)
    {
        double bound = cost + CostToCome(state);
        if (double.IsPositiveInfinity(bound) || (bestCost.TryGetValue(state, out double known) && known <= cost))
        {
            return;
        }

        work.Add();
        bestCost[state] = cost;
        nodes.Add(new Node(state, cost, parent, stepsChosen));
        queue.Enqueue(nodes.Count - 1, (bound, nodes.Count));
    }

    /// <summary>Never more than what the steps still lacking will really cost; infinite when they can no longer be had.</summary>
    private double CostToCome(State state)
    {
        int left = candidates.Length - state.Next;
        if (state.Kinds > left || state.Families > left)
        {
            return double.PositiveInfinity;
        }

        int lackingInTotal = Math.Max(0, limits.MinTotalSteps - state.Steps);
        double bound = lackingInTotal == 0 ? 0 : lackingInTotal * cheapestFrom[state.Next];
        for (int s = 0; s < SeasonSteps.Seasons; s++)
        {
            int lacking = state.Lacking[s];
            if (lacking > 0)
            {
                bound =
                    lacking > limits.MaxTotalSteps - state.Steps
                        ? double.PositiveInfinity
                        : Math.Max(bound, lacking * cheapestFromInSeason[state.Next, s]);
            }
        }

        return bound;
    }

    private int[] Retrace(int index)
    {
        var steps = new int[candidates.Length];
        for (var node = nodes[index]; node.Parent >= 0; node = nodes[node.Parent])
        {
            steps[node.State.Next - 1] = node.StepsChosen;
        }

        return steps;
    }
}
