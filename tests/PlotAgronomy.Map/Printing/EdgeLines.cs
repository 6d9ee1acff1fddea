using PlotAgronomy.Map.Layout;

namespace PlotAgronomy.Map.Printing;

/// <summary>A file's use of another as one line, with as many of the names it uses as the line holds.</summary>
internal static class EdgeLines
{
    private const int RoomForMore = 13;

    /// <summary>The line of an edge behind a start that says which edge it is.</summary>
    internal static string Of(string start, FileEdge edge)
    {
        string line = $"{start} {edge.Used[0]}";
        int shown = 1;
        while (shown < edge.Used.Count && line.Length + edge.Used[shown].ToString().Length + RoomForMore < TextTable.WidestLine)
        {
            line += $", {edge.Used[shown]}";
            shown++;
        }

        return shown == edge.Used.Count ? line : $"{line} and {TextTable.Number(edge.Used.Count - shown)} more";
    }

    internal static string Short(string file, string root) => file[(root.Length + 1)..];
}
