namespace PlotAgronomy.Seeds;

/// <summary>The kind that words on a tag name, in full or with words before or after it that are taken as its variety.</summary>
internal readonly record struct TagKind(CropKind? Kind, string? Variety)
{
    internal static TagKind In(string text, KindCatalog catalog)
    {
        if (catalog.TryFind(text, out var whole, out _))
        {
            return new(whole, null);
        }

        string[] words =
        [
            .. text.Split([' ', ',', ':', '\t', '"', '|', ';'], StringSplitOptions.RemoveEmptyEntries)
                .Where(w => w.Any(char.IsLetter)),
        ];
        for (int length = Math.Min(words.Length - 1, catalog.MostWordsInAName); length > 0; length--)
        {
            var fitting = Enumerable
                .Range(0, words.Length - length + 1)
                .Select(start => (Start: start, Kinds: catalog.Candidates(string.Join(' ', words[start..(start + length)]))))
                .Where(f => !f.Kinds.IsEmpty)
                .ToList();
            if (fitting.Count > 0)
            {
                return fitting is [{ Kinds.Length: 1 } only]
                    ? new(only.Kinds[0], string.Join(' ', words[..only.Start].Concat(words[(only.Start + length)..])))
                    : default;
            }
        }

        return default;
    }

    /// <summary>Why no kind was found.</summary>
    internal static string Problem(string text, KindCatalog catalog)
    {
        _ = catalog.TryFind(text.Trim(' ', ',', ':', '.', '-'), out _, out string problem);
        return problem;
    }
}
