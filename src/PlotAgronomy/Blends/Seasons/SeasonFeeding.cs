using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>In which seasons a kind feeds: where it is rated high or medium.</summary>
internal static class SeasonFeeding
{
    internal static ImmutableArray<SeasonOfUse> Seasons { get; } = [.. Enum.GetValues<SeasonOfUse>()];

    internal static bool Feeds(CropKind kind, SeasonOfUse season) => kind.Seasons?.In(season) >= UseRating.Medium;

    /// <summary>One bit for each season in which the kind feeds.</summary>
    internal static int Mask(CropKind kind) => Seasons.Where(s => Feeds(kind, s)).Aggregate(0, (mask, s) => mask | (1 << (int)s));
}
