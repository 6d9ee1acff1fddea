using PlotAgronomy.Map.Layout;
using PlotAgronomy.Map.Model;

namespace PlotAgronomy.Map.Printing;

/// <summary>How many times a file of one folder uses a file of another: the rooms, then the folders of each room.</summary>
internal sealed class FoldersPrinter
{
    private readonly FileGraph _graph;
    private readonly Grouping _rooms;
    private readonly Grouping _folders;

    private FoldersPrinter(CodeModel model)
    {
        var folders = new Folders(model);
        _graph = new FileGraph(model);
        _rooms = new Grouping(_graph, folders.RoomOf);
        _folders = new Grouping(_graph, folders.FolderOf);
    }

    internal static IEnumerable<string> Print(CodeModel model) => new FoldersPrinter(model).Lines();

    private IEnumerable<string> Lines()
    {
        var cycles = _folders.Cycles();
        return
        [
            "The row uses the column: edges from file to file. A letter is a room, a number a folder of the row's room.",
            "",
            .. Matrix("room", _rooms.Names, LetterOf, _rooms.Names.Select(to => (LetterOf(to), CountOfRoom(to)))),
            .. _rooms.Names.SelectMany(RoomLines),
            "",
            $"{TextTable.Number(cycles.Count)} cycles between folders",
            .. cycles.SelectMany(CycleLines),
        ];
    }

    private IEnumerable<string> RoomLines(string room)
    {
        var inside = _graph.Files.Where(f => _rooms.Of(f.Path) == room).Select(f => _folders.Of(f.Path)).ToHashSet();
        var names = _folders.Names.Where(inside.Contains).ToList();
        if (names.Count == 1)
        {
            return [];
        }

        string NumberOf(string folder) => TextTable.Number(names.IndexOf(folder) + 1);
        var own = names.Select(to => (NumberOf(to), CountOfFolder(to)));
        var others = _rooms.Names.Where(to => _rooms.Between(room, to).Count > 0).Select(to => (LetterOf(to), CountInRoom(to)));
        return ["", .. Matrix("folder", names, NumberOf, own.Concat(others))];
    }

    private string LetterOf(string room) => $"{(char)('a' + _rooms.Names.TakeWhile(name => name != room).Count())}";

    private Func<string, string> CountOfRoom(string to) => from => Cell(from == to, _rooms.Between(from, to).Count);

    private Func<string, string> CountOfFolder(string to) => from => Cell(from == to, _folders.Between(from, to).Count);

    private Func<string, string> CountInRoom(string room) => from =>
        Cell(false, _graph.Edges.Count(e => _folders.Of(e.From) == from && _rooms.Of(e.To) == room));

    private static string Cell(bool isItself, int count) => isItself ? "-" : count == 0 ? "" : TextTable.Number(count);

    private static IEnumerable<string> Matrix(
        string title,
        IReadOnlyList<string> names,
        Func<string, string> markOf,
        IEnumerable<(string Mark, Func<string, string> CountFrom)> columns)
    {
        var shown = columns.ToList();
        return TextTable.Lay(
            ["", title, .. shown.Select(c => c.Mark)],
            names.Select(from => (IReadOnlyList<string>)[markOf(from), Names.Of(from), .. shown.Select(c => c.CountFrom(from))]));
    }

    private IEnumerable<string> CycleLines(IReadOnlyList<string> cycle)
    {
        string root = _graph.Files[0].ProjectFolder;
        yield return "";
        yield return Names.OfCycle(cycle);
        foreach (var (from, to) in cycle.SelectMany(from => cycle.Select(to => (from, to))))
        {
            var edges = _folders.Between(from, to);
            if (edges.Count > 0)
            {
                yield return $"  {Names.Of(from)} uses {Names.Of(to)}: {TextTable.Number(edges.Count)}";
            }

            foreach (var edge in edges)
            {
                yield return EdgeLines.Of($"    {EdgeLines.Short(edge.From, root)} -> {EdgeLines.Short(edge.To, root)}", edge);
            }
        }
    }
}
