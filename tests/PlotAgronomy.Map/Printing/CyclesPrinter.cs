using PlotAgronomy.Map.Layout;
using PlotAgronomy.Map.Model;

namespace PlotAgronomy.Map.Printing;

/// <summary>The circles of files that use one another.</summary>
internal static class CyclesPrinter
{
    internal static IEnumerable<string> Print(CodeModel model)
    {
        var graph = new FileGraph(model);
        var cycles = graph.Cycles();
        string root = graph.Files[0].ProjectFolder;
        return
        [
            $"{TextTable.Number(cycles.Count)} cycles, {TextTable.Number(cycles.Sum(c => c.Count))} files",
            .. cycles.SelectMany((cycle, i) => PrintCycle(i + 1, cycle, graph, root)),
        ];
    }

    private static IEnumerable<string> PrintCycle(int number, IReadOnlyList<string> cycle, FileGraph graph, string root)
    {
        var inside = cycle.ToHashSet();
        return
        [
            "",
            $"{TextTable.Number(number)}. {TextTable.Number(cycle.Count)} files",
            .. cycle.Select(file => $"  {EdgeLines.Short(file, root)}"),
            "  edges",
            .. graph.Edges.Where(e => inside.Contains(e.From) && inside.Contains(e.To)).Select(e => EdgeLines.Of(e, root)),
        ];
    }
}
