using PlotAgronomy.Map.Graphs;
using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Sources;

namespace PlotAgronomy.Map.Layout;

/// <summary>Which file of the library uses which.</summary>
internal sealed class FileGraph
{
    private readonly ILookup<string, FileEdge> _from;

    internal FileGraph(CodeModel model)
    {
        Files = [.. model.Files.Where(f => f.Part == Part.Library).OrderBy(f => f.Path, StringComparer.Ordinal)];
        var known = Files.Select(f => f.Path).ToHashSet();
        Edges = [.. model.References
            .Where(r => r.FromFile != r.ToFile && known.Contains(r.FromFile) && known.Contains(r.ToFile))
            .GroupBy(r => (r.FromFile, r.ToFile), r => model.Members[r.Used].ShortName)
            .Select(g => new FileEdge(g.Key.FromFile, g.Key.ToFile, [.. g.Distinct().Order(StringComparer.Ordinal)]))
            .OrderBy(e => e.From, StringComparer.Ordinal).ThenBy(e => e.To, StringComparer.Ordinal)];
        _from = Edges.ToLookup(e => e.From);
    }

    internal IReadOnlyList<CodeFile> Files { get; }

    internal IReadOnlyList<FileEdge> Edges { get; }

    internal IReadOnlyList<IReadOnlyList<string>> Cycles() =>
        StronglyConnected<string>.Cycles(
            Files.Select(f => f.Path), file => _from[file].Select(e => e.To), StringComparer.Ordinal);
}
