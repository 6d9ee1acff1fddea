using System.Text;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Record;

/// <summary>Differences that were wanted, each with its cause; <c>*</c> stands for any text.</summary>
internal sealed class AllowedDifferences
{
    private readonly List<(Regex Case, Regex Meaning, string Cause)> all;
    private readonly Dictionary<string, int> used = [];

    private AllowedDifferences(List<(Regex, Regex, string)> all) => this.all = all;

    internal IEnumerable<string> Report() =>
        all.Select(a => a.Cause).Distinct().Select(cause => $"{used.GetValueOrDefault(cause)} allowed: {cause}");

    internal static AllowedDifferences Read(string path)
    {
        using var reader = new StreamReader(path, Encoding.UTF8);
        return new([.. CsvLine.ReadAll(reader, "case_pattern,meaning_pattern,cause")
            .Select(cells => (Pattern(cells[0]), Pattern(cells[1]), cells[2]))]);
    }

    internal bool Covers(Difference difference)
    {
        foreach (var (@case, meaning, cause) in all)
        {
            if (@case.IsMatch(difference.Case) && meaning.IsMatch(difference.Meaning))
            {
                used[cause] = used.GetValueOrDefault(cause) + 1;
                return true;
            }
        }

        return false;
    }

    private static Regex Pattern(string pattern) =>
        new($@"\A{Regex.Escape(pattern).Replace(@"\*", ".*", StringComparison.Ordinal)}\z",
            RegexOptions.CultureInvariant | RegexOptions.Singleline);
}
