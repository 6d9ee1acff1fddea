using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>Compares names of kinds, blind to case, plurals, punctuation and the order of words.</summary>
internal static class KindNames
{
    internal static ImmutableArray<string> Words(string name) =>
        [
            .. Parts(name.ToLowerInvariant())
                .Select(Singular)
                .Where(w => w is not ("x" or "and" or "or" or "seed" or "type"))
                .Distinct(),
        ];

    /// <summary>The name without gaps, so that "orchard grass" and "orchardgrass" are one.</summary>
    internal static string Joined(string name) => string.Concat(Parts(Singular(name.ToLowerInvariant().Trim())));

    internal static string InOrder(ImmutableArray<string> words) => string.Join(' ', words.Order(StringComparer.Ordinal));

    /// <summary>All names a kind answers to; what stands in brackets may be left out.</summary>
    internal static ImmutableArray<string> Of(
        string id,
        string commonName,
        string shortName,
        string scientificName,
        IEnumerable<string> otherNames
    ) => [id, commonName, shortName, WithoutBrackets(commonName), scientificName, .. otherNames];

    /// <summary>Letters to change to turn one name into another.</summary>
    internal static int Distance(string a, string b)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int above = row[j];
                row[j] = Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), diagonal + (a[i - 1] == b[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }

        return row[^1];
    }

    private static string Singular(string word) =>
        word switch
        {
            _ when word.Length < 4 => word,
            _ when word.EndsWith("ies", StringComparison.Ordinal) => word[..^3] + "y",
            _ when word.EndsWith("sses", StringComparison.Ordinal)
                    || word.EndsWith("shes", StringComparison.Ordinal)
                    || word.EndsWith("ches", StringComparison.Ordinal) => word[..^2],
            _ when word.EndsWith("ss", StringComparison.Ordinal)
                    || word.EndsWith("us", StringComparison.Ordinal)
                    || word.EndsWith("is", StringComparison.Ordinal) => word,
            _ when word[^1] == 's' => word[..^1],
            _ => word,
        };

    /// <summary>The runs of letters and digits.</summary>
    private static List<string> Parts(string name)
    {
        var parts = new List<string>();
        for (int start = 0, end; start < name.Length; start = end + 1)
        {
            for (end = start; end < name.Length && char.IsLetterOrDigit(name[end]); end++) { }

            if (end > start)
            {
                parts.Add(name[start..end]);
            }
        }

        return parts;
    }

    private static string WithoutBrackets(string name)
    {
        int open = name.IndexOf('(', StringComparison.Ordinal);
        int close = open < 0 ? -1 : name.IndexOf(')', open);
        return close < 0 ? name : WithoutBrackets($"{name[..open]} {name[(close + 1)..]}");
    }
}
