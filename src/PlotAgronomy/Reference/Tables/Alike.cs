namespace PlotAgronomy.Reference;

/// <summary>Groups of things that are alike, without a key.</summary>
/// <remarks>Grouping by an enumeration or a tuple makes the runtime compile a dozen methods for that type alone; comparing two
/// things compiles none.</remarks>
internal static class Alike
{
    /// <summary>The groups in the order of their first things, each thing with the first that it is like.</summary>
    internal static List<List<T>> GroupAlike<T>(this IEnumerable<T> things, Func<T, T, bool> areAlike)
        where T : class
    {
        var groups = new List<List<T>>();
        foreach (var thing in things)
        {
            if (groups.Find(group => areAlike(group[0], thing)) is { } its)
            {
                its.Add(thing);
            }
            else
            {
                groups.Add([thing]);
            }
        }

        return groups;
    }
}
