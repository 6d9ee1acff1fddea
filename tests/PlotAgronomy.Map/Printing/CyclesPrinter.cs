using PlotAgronomy.Map.Layout;
using PlotAgronomy.Map.Model;

namespace PlotAgronomy.Map.Printing;

/// <summary>The circles of files that use one another.</summary>
internal static class CyclesPrinter
{
    internal static IEnumerable<string> Print(CodeModel model)
    {
        var graph = new FileGraph(model);
        var folders = new Folders(model);
        var cycles = graph.Cycles();
        var rooms = cycles.GroupBy(cycle => folders.RoomOf(cycle[0])).OrderBy(r => r.Key, StringComparer.Ordinal).ToList();
        var counts = rooms.Select(r => Counts(Names.Of(r.Key), r)).Append(Counts("all", cycles));
        return
        [
            "Files that use one another in a circle. Under each file stand the files of its circle that it uses,",
            "with the members and types used and the line of the first use; parts of one type are files like others.",
            "",
            .. TextTable.Lay(["room", "cycles", "files in them"], counts),
            .. rooms.SelectMany(room => room.SelectMany((cycle, i) => PrintCycle(Names.Of(room.Key), i + 1, cycle, graph))),
        ];
    }

    private static IReadOnlyList<string> Counts(string name, IEnumerable<IReadOnlyList<string>> cycles) =>
        [name, TextTable.Number(cycles.Count()), TextTable.Number(cycles.Sum(c => c.Count))];

    private static IEnumerable<string> PrintCycle(string room, int number, IReadOnlyList<string> cycle, FileGraph graph)
    {
        var inside = cycle.ToHashSet();
        var edges = graph.Edges.Where(e => inside.Contains(e.From) && inside.Contains(e.To)).ToLookup(e => e.From);
        int widest = cycle.Max(file => Path.GetFileName(file).Length);
        string root = graph.Files[0].ProjectFolder;
        return
        [
            "",
            $"{room} {TextTable.Number(number)}: {TextTable.Number(cycle.Count)} files",
            .. cycle.SelectMany(file => edges[file]
                .Select(e => EdgeLines.Of($"    {Path.GetFileName(e.To).PadRight(widest)} ", e))
                .Prepend($"  {EdgeLines.Short(file, root)}")),
        ];
    }
}
