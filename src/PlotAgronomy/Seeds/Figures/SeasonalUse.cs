using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>How much a kind is used in each of the five seasons.</summary>
/// <remarks>The ratings are mostly recollection, with low confidence: use them to see gaps, not to rank kinds.
/// Their status is memory until a publication is set beside them.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonalUse
{
    /// <summary>The seasons in words, with their months.</summary>
    internal static readonly EnumWords<SeasonOfUse> SeasonWords = new(
        (SeasonOfUse.Spring, "spring (March to May)"),
        (SeasonOfUse.Summer, "summer (June to August)"),
        (SeasonOfUse.EarlyFall, "early fall (September to mid October)"),
        (SeasonOfUse.MidFall, "mid fall (mid October to November)"),
        (SeasonOfUse.LateWinter, "late winter (December to February)")
    );

    private const string Figure = "season-of-use";

    /// <summary>The methods of the figure, in the order of <see cref="SeasonOfUse"/>.</summary>
    private static readonly ImmutableArray<string> Seasons = ["spring", "summer", "early-fall", "mid-fall", "late-winter"];

    /// <summary>Gets the rating of each season, in the order of <see cref="SeasonOfUse"/>.</summary>
    public required ImmutableArray<UseRating> Ratings
    {
        get;
        init => field = Guard.Made(value, nameof(Ratings));
    }

    /// <summary>Gets its use by turkeys in words, or null.</summary>
    public string? TurkeyUse { get; init; }

    /// <summary>Gets its palatability in words, or null.</summary>
    public string? Palatability { get; init; }

    /// <summary>Gets the sources.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    /// <summary>The rating of a season.</summary>
    /// <param name="season">Season.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown season.</exception>
    public UseRating In(SeasonOfUse season) => Ratings[(int)Guard.Defined(season)];

    internal static SeasonalUse? Of(KindObservations kind)
    {
        var turkeys = kind.Find("turkey-use");
        var palatability = kind.Find("palatability");
        if (kind.Find(Figure, Seasons[0]) is null)
        {
            return null;
        }

        ImmutableArray<KindObservation> ratings = [.. Seasons.Select(s => kind.Need(Figure, s))];
        return new()
        {
            Ratings = [.. ratings.Select(r => r.Word<UseRating>())],
            TurkeyUse = turkeys?.Words(),
            Palatability = palatability?.Words(),
            Evidence = KindOrigins.LeastKnownOf([.. ratings.Select(r => r.Origin)]),
        };
    }

    /// <summary>The rating of each season.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join(", ", Ratings.Select((rating, i) => $"{Seasons[i]} {RatingWords[rating]}"));

    private static readonly EnumWords<UseRating> RatingWords = EnumWords<UseRating>.FromNames();
}
