using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>The kind that words on a tag name, in full or with words before or after it that are taken as its variety.</summary>
internal readonly record struct TagKind(CropKind? Kind, string? Variety)
{
    internal static TagKind In(string text, KindCatalog catalog)
    {
        if (catalog.Candidates(text) is [var whole])
        {
            return new(whole, null);
        }

        string[] words = WordsOf(text);
        return LongestFitting(words, catalog) is [{ Kinds.Length: 1 } only]
            ? new(only.Kinds[0], string.Join(' ', words[..only.Start].Concat(words[(only.Start + only.Length)..])))
            : default;
    }

    /// <summary>Why no kind was found.</summary>
    internal static string Problem(string text, KindCatalog catalog)
    {
        string[] words = WordsOf(text);
        string name = LongestFitting(words, catalog) is [var only]
            ? string.Join(' ', words[only.Start..(only.Start + only.Length)])
            : text.Trim(' ', ',', ':', '.', '-');
        _ = catalog.TryFind(catalog.Candidates(text).IsEmpty ? name : text, out _, out string problem);
        return problem;
    }

    private static string[] WordsOf(string text) =>
        [
            .. text.Split([' ', ',', ':', '\t', '"', '|', ';'], StringSplitOptions.RemoveEmptyEntries)
                .Where(w => w.Any(char.IsLetter)),
        ];

    /// <summary>The longest phrases of a text that name any kind, with the kinds each may be.</summary>
    private static List<(int Start, int Length, ImmutableArray<CropKind> Kinds)> LongestFitting(
        string[] words,
        KindCatalog catalog
    )
    {
        for (int length = Math.Min(words.Length - 1, catalog.MostWordsInAName); length > 0; length--)
        {
            List<(int Start, int Length, ImmutableArray<CropKind> Kinds)> fitting =
            [
                .. Enumerable
                    .Range(0, words.Length - length + 1)
                    .Select(start => (start, length, catalog.Candidates(string.Join(' ', words[start..(start + length)]))))
                    .Where(f => !f.Item3.IsEmpty),
            ];
            if (fitting.Count > 0)
            {
                return fitting;
            }
        }

        return [];
    }
}
