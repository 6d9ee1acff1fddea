using PlotAgronomy.Map.Graphs;

namespace PlotAgronomy.Map.Layout;

/// <summary>Groups of files, such as folders or rooms, and which group uses which.</summary>
internal sealed class Grouping
{
    private readonly Dictionary<string, string> _groupOf;
    private readonly ILookup<(string From, string To), FileEdge> _between;

    internal Grouping(FileGraph graph, Func<string, string> groupOf)
    {
        _groupOf = graph.Files.ToDictionary(f => f.Path, f => groupOf(f.Path));
        Names = [.. _groupOf.Values.Distinct().Order(StringComparer.Ordinal)];
        _between = graph.Edges.Where(e => Of(e.From) != Of(e.To)).ToLookup(e => (Of(e.From), Of(e.To)));
    }

    /// <summary>Gets the names of the groups; the root's is empty and stands first.</summary>
    internal IReadOnlyList<string> Names { get; }

    internal string Of(string file) => _groupOf[file];

    internal IReadOnlyList<FileEdge> Between(string from, string to) => [.. _between[(from, to)]];

    internal IEnumerable<FileEdge> Edges() => _between.SelectMany(edges => edges);

    /// <summary>The groups that use one another in a circle, largest circle first.</summary>
    internal IReadOnlyList<IReadOnlyList<string>> Cycles() =>
        StronglyConnected<string>.Cycles(Names, from => Names.Where(to => _between.Contains((from, to))), StringComparer.Ordinal);
}
