namespace PlotAgronomy.Map.Graphs;

/// <summary>The groups of nodes that reach one another, by Tarjan's walk.</summary>
internal sealed class StronglyConnected<T>
    where T : notnull
{
    private readonly Func<T, IEnumerable<T>> _next;
    private readonly Dictionary<T, int> _order = [];
    private readonly Dictionary<T, int> _lowest = [];
    private readonly Stack<T> _open = [];
    private readonly HashSet<T> _isOpen = [];
    private readonly List<IReadOnlyList<T>> _groups = [];

    private StronglyConnected(Func<T, IEnumerable<T>> next) => _next = next;

    /// <summary>Every group of one node or more; a group stands after the groups it leads to.</summary>
    internal static IReadOnlyList<IReadOnlyList<T>> Groups(IEnumerable<T> nodes, Func<T, IEnumerable<T>> next)
    {
        var search = new StronglyConnected<T>(next);
        foreach (var node in nodes)
        {
            if (!search._order.ContainsKey(node))
            {
                search.Walk(node);
            }
        }

        return search._groups;
    }

    /// <summary>The groups of more than one node, largest first, each in the order of the nodes' names.</summary>
    internal static IReadOnlyList<IReadOnlyList<T>> Cycles(
        IEnumerable<T> nodes, Func<T, IEnumerable<T>> next, IComparer<T> names) =>
        [.. Groups(nodes, next).Where(g => g.Count > 1)
            .Select(g => (IReadOnlyList<T>)[.. g.Order(names)])
            .OrderByDescending(g => g.Count).ThenBy(g => g[0], names)];

    private void Walk(T node)
    {
        _order[node] = _lowest[node] = _order.Count;
        _open.Push(node);
        _isOpen.Add(node);
        foreach (var other in _next(node))
        {
            if (!_order.TryGetValue(other, out int seen))
            {
                Walk(other);
                _lowest[node] = Math.Min(_lowest[node], _lowest[other]);
            }
            else if (_isOpen.Contains(other))
            {
                _lowest[node] = Math.Min(_lowest[node], seen);
            }
        }

        if (_lowest[node] == _order[node])
        {
            Close(node);
        }
    }

    private void Close(T first)
    {
        var group = new List<T>();
        T node;
        do
        {
            node = _open.Pop();
            _isOpen.Remove(node);
            group.Add(node);
        }
        while (!node.Equals(first));

        _groups.Add(group);
    }
}
