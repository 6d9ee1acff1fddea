using PlotAgronomy.Map.Layout;

namespace PlotAgronomy.Map.Printing;

/// <summary>A file's use of another as one line, with a few of the names it uses.</summary>
internal static class EdgeLines
{
    private const int NamesShown = 4;

    internal static string Of(FileEdge edge, string root)
    {
        string used = string.Join(", ", edge.Used.Take(NamesShown));
        return $"    {Short(edge.From, root)} -> {Short(edge.To, root)}: {used}{More(edge.Used.Count)}";
    }

    internal static string Short(string file, string root) => file[(root.Length + 1)..];

    private static string More(int names) => names > NamesShown ? $" and {TextTable.Number(names - NamesShown)} more" : "";
}
