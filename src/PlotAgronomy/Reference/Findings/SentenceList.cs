namespace PlotAgronomy.Reference;

/// <summary>Several names in a sentence.</summary>
internal static class SentenceList
{
    /// <summary>Such as <c>oats, rye and clover</c>.</summary>
    internal static string And(IReadOnlyList<string> names) =>
        names.Count <= 1 ? string.Concat(names) : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";
}
