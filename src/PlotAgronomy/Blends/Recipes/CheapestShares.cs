namespace PlotAgronomy.Blends;

/// <summary>Finds the cheapest shares of a full stand, in whole steps, that meet every limit: exact, by best-first
/// search.</summary>
/// <remarks>Kinds are settled one after another. What is left to meet, not the path to it, decides how a partial recipe may
/// go on, so only the cheapest path to each such state is kept. The bound on the cost still to come never exceeds the true
/// one, so the first whole recipe taken from the queue is the cheapest.</remarks>
internal sealed class CheapestShares
{
    private readonly Candidate[] candidates;
    private readonly Limits limits;
    private readonly double[] cheapestFrom;
    private readonly double[,] cheapestFromInSeason;
    private readonly List<Node> nodes = [];
    private readonly Dictionary<State, double> bestCost = [];
    private readonly PriorityQueue<int, (double Bound, int Order)> queue = new();

    private CheapestShares(Candidate[] candidates, Limits limits)
    {
        this.candidates = candidates;
        this.limits = limits;
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

    /// <summary>Steps of each candidate in the cheapest recipe, or null when none meets the limits.</summary>
    internal static int[]? Find(Candidate[] candidates, Limits limits) => new CheapestShares(candidates, limits).Search();

    private int[]? Search()
    {
        Add(new State(0, 0, limits.Lacking, limits.MinKinds, limits.MinFamilies, false, 0), 0, -1, 0);
        while (queue.TryDequeue(out int index, out _))
        {
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
