using PlotAgronomy.Map.Layout;
using PlotAgronomy.Map.Model;

namespace PlotAgronomy.Map.Printing;

/// <summary>How many times a file of one folder uses a file of another, and the circles of folders.</summary>
internal static class FoldersPrinter
{
    internal static IEnumerable<string> Print(CodeModel model)
    {
        var graph = new FileGraph(model);
        var grouping = new Grouping(graph, new Folders(model).FolderOf);
        string root = graph.Files[0].ProjectFolder;
        var names = grouping.Names;
        var head = names.Select((_, i) => TextTable.Number(i + 1)).Prepend("row uses column: edges from file to file");
        var rows = names.Select((from, i) => (IReadOnlyList<string>)
            [$"{TextTable.Number(i + 1),2} {Names.Of(from)}", .. names.Select(to => Count(grouping, from, to))]);
        var cycles = grouping.Cycles();
        return
        [
            .. TextTable.Lay([.. head], rows),
            "",
            $"{TextTable.Number(cycles.Count)} cycles between folders",
            .. cycles.SelectMany(cycle => PrintCycle(cycle, grouping, root)),
        ];
    }

    private static string Count(Grouping grouping, string from, string to) =>
        from == to ? "-" : grouping.Between(from, to).Count is > 0 and int count ? TextTable.Number(count) : "";

    private static IEnumerable<string> PrintCycle(IReadOnlyList<string> cycle, Grouping grouping, string root)
    {
        yield return "";
        yield return Names.OfCycle(cycle);
        foreach (var (from, to) in cycle.SelectMany(from => cycle.Select(to => (from, to))))
        {
            var edges = grouping.Between(from, to);
            if (edges.Count > 0)
            {
                yield return $"  {Names.Of(from)} uses {Names.Of(to)}: {TextTable.Number(edges.Count)}";
            }

            foreach (var edge in edges)
            {
                yield return EdgeLines.Of(edge, root);
            }
        }
    }
}
