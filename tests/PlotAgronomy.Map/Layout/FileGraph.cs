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
            .GroupBy(r => (r.FromFile, r.ToFile), r => (Member: model.Members[r.Used], r.Line))
            .Select(g => new FileEdge(g.Key.FromFile, g.Key.ToFile, UsesOf(g)))
            .OrderBy(e => e.From, StringComparer.Ordinal).ThenBy(e => e.To, StringComparer.Ordinal)];
        _from = Edges.ToLookup(e => e.From);
    }

    internal IReadOnlyList<CodeFile> Files { get; }

    internal IReadOnlyList<FileEdge> Edges { get; }

    /// <summary>The circles of files, largest first; as rooms use lower rooms only, each lies in one room.</summary>
    internal IReadOnlyList<IReadOnlyList<string>> Cycles() =>
        StronglyConnected<string>.Cycles(
            Files.Select(f => f.Path), file => _from[file].Select(e => e.To), StringComparer.Ordinal);

    private static IReadOnlyList<FileUse> UsesOf(IEnumerable<(CodeMember Member, int Line)> uses) =>
        [.. uses.GroupBy(u => (u.Member.ShortName, IsType: u.Member.Kind == MemberKind.Type), u => u.Line)
            .Select(g => new FileUse(g.Key.ShortName, g.Key.IsType, g.Min()))
            .OrderBy(u => u.IsType).ThenBy(u => u.Name, StringComparer.Ordinal)];
}
