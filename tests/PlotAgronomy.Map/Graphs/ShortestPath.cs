namespace PlotAgronomy.Map.Graphs;

/// <summary>The fewest steps from one set of nodes to another.</summary>
internal static class ShortestPath
{
    /// <summary>The nodes from a start to an end, both included; empty when no way leads there.</summary>
    internal static IReadOnlyList<T> Between<T>(IEnumerable<T> starts, IReadOnlySet<T> ends, Func<T, IEnumerable<T>> next)
        where T : notnull
    {
        var cameFrom = new Dictionary<T, T>();
        var waiting = new Queue<T>();
        foreach (var start in starts)
        {
            if (cameFrom.TryAdd(start, start))
            {
                waiting.Enqueue(start);
            }
        }

        while (waiting.TryDequeue(out var node))
        {
            if (ends.Contains(node))
            {
                return Back(node, cameFrom);
            }

            foreach (var other in next(node))
            {
                if (cameFrom.TryAdd(other, node))
                {
                    waiting.Enqueue(other);
                }
            }
        }

        return [];
    }

    private static List<T> Back<T>(T end, Dictionary<T, T> cameFrom)
        where T : notnull
    {
        var path = new List<T> { end };
        while (!cameFrom[path[^1]].Equals(path[^1]))
        {
            path.Add(cameFrom[path[^1]]);
        }

        path.Reverse();
        return path;
    }
}
