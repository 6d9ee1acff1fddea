using PlotAgronomy.Map.Layout;
using PlotAgronomy.Map.Model;

namespace PlotAgronomy.Map.Printing;

/// <summary>One line a room: how much it holds and how flat it lies.</summary>
internal static class RoomsPrinter
{
    private static readonly string[] Head =
        ["room", "files", "lines", "types", "public types", "public members", "largest folder", "its files"];


    internal static IEnumerable<string> Print(CodeModel model)
    {
        var folders = new Folders(model);
        var graph = new FileGraph(model);
        var known = graph.Files.Select(f => f.Path).ToHashSet();
        var members = model.Members.Values.Where(m => known.Contains(m.File) && !m.IsImplicit)
            .ToLookup(m => folders.RoomOf(m.File));
        var rooms = graph.Files.GroupBy(f => folders.RoomOf(f.Path)).OrderBy(r => r.Key, StringComparer.Ordinal).ToList();
        var rows = rooms.Select(r => Row(Names.Of(r.Key), [.. r], [.. members[r.Key]], folders));
        return TextTable.Lay(Head, rows.Append(Row("all", [.. graph.Files], [.. members.SelectMany(m => m)], folders)));
    }

    private static string[] Row(string name, List<CodeFile> files, List<CodeMember> members, Folders folders)
    {
        var largest = files.GroupBy(f => folders.FolderOf(f.Path)).MaxBy(g => g.Count())!;
        var types = members.FindAll(m => m.Kind == MemberKind.Type);
        return
        [
            name,
            TextTable.Number(files.Count),
            TextTable.Number(files.Sum(f => f.Lines)),
            TextTable.Number(types.Count),
            TextTable.Number(types.Count(t => t.IsPublic)),
            TextTable.Number(members.Count(m => m.IsPublic && m.Kind != MemberKind.Type)),
            Names.Of(largest.Key),
            TextTable.Number(largest.Count()),
        ];
    }
}
