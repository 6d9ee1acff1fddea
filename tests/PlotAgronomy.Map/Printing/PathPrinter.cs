using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Users;

namespace PlotAgronomy.Map.Printing;

/// <summary>The shortest way by which one member comes to run another.</summary>
internal static class PathPrinter
{
    internal static IEnumerable<string> Print(CodeModel model, string from, string to)
    {
        var calls = new CallGraph(model);
        var path = calls.Path(MemberFinder.Find(model, from), MemberFinder.Find(model, to));
        var rows = path.Select((id, i) => Row(model.Members[id], i == 0 ? "from" : Step(calls, path[i - 1], id)));
        return path.Count == 0 ? [$"No path leads from {from} to {to}."] : TextTable.Lay(["how", "member", "file"], rows);
    }

    private static string Step(CallGraph calls, string user, string used) =>
        calls.IsStandIn(user, used) ? "stood in for by" : "uses";

    private static string[] Row(CodeMember member, string how) =>
        [how, member.ShortName, $"{member.File}:{TextTable.Number(member.Line)}"];
}
