using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>The five seasons in words and letters.</summary>
internal static class SeasonWords
{
    internal static string InWords(SeasonOfUse season) =>
        season switch
        {
            SeasonOfUse.Spring => "spring (March to May)",
            SeasonOfUse.Summer => "summer (June to August)",
            SeasonOfUse.EarlyFall => "early fall (September to mid October)",
            SeasonOfUse.MidFall => "mid fall (mid October to November)",
            _ => "late winter (December to February)",
        };

    internal static bool Feeds(CropKind kind, SeasonOfUse season) => kind.Seasons?.In(season) >= UseRating.Medium;

    /// <summary>One bit for each season in which the kind is rated high or medium.</summary>
    internal static int Mask(CropKind kind) =>
        Enum.GetValues<SeasonOfUse>().Where(s => Feeds(kind, s)).Aggregate(0, (mask, s) => mask | (1 << (int)s));
}
