namespace PlotAgronomy.Reference;

/// <summary>A worked result as one short text.</summary>
internal static class WorkedWords
{
    private const string Equal = " = ";

    /// <summary>What the last line of the working finds: <c>Bulk rate: 9.6 lb/ac</c>; without a line, how many remarks there
    /// are.</summary>
    internal static string InWords(this IWorkedResult result)
    {
        var lines = result.ShowWork();
        if (lines.IsEmpty)
        {
            return $"no working; {Amounts.PrintCount(result.Findings.Length, "remark")}";
        }

        var last = lines[^1];
        int equal = last.Numbers.LastIndexOf(Equal, StringComparison.Ordinal);
        string found = equal < 0 ? last.Numbers : last.Numbers[(equal + Equal.Length)..];
        return $"{last.Label}: {found}";
    }
}
