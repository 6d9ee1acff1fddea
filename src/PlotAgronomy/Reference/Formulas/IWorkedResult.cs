using System.Collections.Immutable;

namespace PlotAgronomy;

/// <summary>A result that shows its working, names its sources and carries its findings.</summary>
[JsonConverter(typeof(NotForJson))]
public interface IWorkedResult
{
    /// <summary>Gets the remarks, most serious first.</summary>
    ImmutableArray<Finding> Findings { get; }

    /// <summary>Gets the sources of its numbers and formulas.</summary>
    ImmutableArray<Source> Sources { get; }

    /// <summary>Lays out the lines of the sum. The text is built only when asked for.</summary>
    /// <returns>The lines, in the order a person would write them.</returns>
    ImmutableArray<WorkedLine> ShowWork();
}

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
            return $"no working; {Amounts.Print(result.Findings.Length, 0)} remark(s)";
        }

        var last = lines[^1];
        int equal = last.Numbers.LastIndexOf(Equal, StringComparison.Ordinal);
        string found = equal < 0 ? last.Numbers : last.Numbers[(equal + Equal.Length)..];
        return $"{last.Label}: {found}";
    }
}
