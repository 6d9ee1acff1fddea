using System.Text;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Record;

/// <summary>Differences that were wanted, each with its cause; <c>*</c> stands for any text.</summary>
/// <remarks>A value may be <c>gone</c> or <c>changed</c>; a row allows one of the two.</remarks>
internal sealed class AllowedDifferences
{
    private const string Gone = "gone";
    private const string Changed = "changed";

    private readonly List<(Regex Case, Regex Meaning, string What, string Cause)> all;
    private readonly Dictionary<string, int> used = [];

    private AllowedDifferences(List<(Regex, Regex, string, string)> all) => this.all = all;

    internal IEnumerable<string> Report() =>
        all.Select(a => a.Cause).Distinct().Select(cause => $"{used.GetValueOrDefault(cause)} allowed: {cause}");

    internal static AllowedDifferences Read(string path)
    {
        using var reader = new StreamReader(path, Encoding.UTF8);
        return new([.. CsvLine.ReadAll(reader, "case_pattern,meaning_pattern,what,cause")
            .Select(cells => (Pattern(cells[0]), Pattern(cells[1]), What(cells[2]), cells[3]))]);
    }

    internal bool Covers(Difference difference)
    {
        foreach (var (@case, meaning, what, cause) in all)
        {
            if (what == WhatHappened(difference) && @case.IsMatch(difference.Case) && meaning.IsMatch(difference.Meaning))
            {
                used[cause] = used.GetValueOrDefault(cause) + 1;
                return true;
            }
        }

        return false;
    }

    private static string What(string word) => word is Gone or Changed
        ? word
        : throw new InvalidDataException($"'{word}' is neither {Gone} nor {Changed}.");

    private static string WhatHappened(Difference difference) => difference.New is null ? Gone : Changed;

    private static Regex Pattern(string pattern) =>
        new($@"\A{Regex.Escape(pattern).Replace(@"\*", ".*", StringComparison.Ordinal)}\z",
            RegexOptions.CultureInvariant | RegexOptions.Singleline);
}
