namespace PlotAgronomy.Records;

/// <summary>How many more observations would tell, in a sentence.</summary>
internal static class RankingWords
{
    /// <summary>The kinds among some that are not parted from the mean of all yet, best first; null where each is.</summary>
    internal static string? Told(KindRanking ranking, IEnumerable<CropKind> among)
    {
        var ids = among.Select(k => k.Id).ToHashSet();
        var open = ranking.Kinds.Where(k => k.Kind is { } kind && ids.Contains(kind.Id) && k.MoreToTell != 0).ToList();
        return open.Count == 0 || ranking.Kinds.Length < 2
            ? null
            : $"More counts, one a plot and year, that would tell a kind from the mean of all: "
                + $"{string.Join("; ", open.Select(k => $"{k.Name} {k.More} ({Amounts.Print(k.Observations, 0)} so far)"))}.";
    }
}
