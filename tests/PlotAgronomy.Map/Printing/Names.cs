namespace PlotAgronomy.Map.Printing;

/// <summary>How groups are named in print.</summary>
internal static class Names
{
    internal static string Of(string group) => group.Length == 0 ? "root" : group;

    internal static string OfCycle(IEnumerable<string> groups) => string.Join(" <-> ", groups.Select(Of));
}
