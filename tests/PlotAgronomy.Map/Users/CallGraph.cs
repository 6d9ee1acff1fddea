using PlotAgronomy.Map.Graphs;
using PlotAgronomy.Map.Model;

namespace PlotAgronomy.Map.Users;

/// <summary>Which member may run which: what it uses, and what stands in for it.</summary>
internal sealed class CallGraph
{
    private readonly ILookup<string, string> _uses;
    private readonly ILookup<string, string> _standIns;

    internal CallGraph(CodeModel model)
    {
        _uses = model.References.Concat(model.Construction)
            .Where(r => model.Members[r.Used].Kind != MemberKind.Type)
            .ToLookup(r => r.User, r => r.Used);
        _standIns = model.StandIns.ToLookup(s => s.Called, s => s.Runs);
    }

    internal bool IsStandIn(string called, string runs) => !_uses[called].Contains(runs) && _standIns[called].Contains(runs);

    internal IReadOnlyList<string> Path(IEnumerable<CodeMember> from, IEnumerable<CodeMember> to) =>
        ShortestPath.Between(from.Select(m => m.Id), to.Select(m => m.Id).ToHashSet(), id => _uses[id].Concat(_standIns[id]));
}
