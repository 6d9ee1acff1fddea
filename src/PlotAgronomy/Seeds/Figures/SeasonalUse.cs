using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>How much a kind is used in each of the five seasons.</summary>
/// <remarks>The ratings are mostly recollection, with low confidence: use them to see gaps, not to rank kinds.
/// Their status is memory until a publication is set beside them.</remarks>
public sealed class SeasonalUse
{
    private static readonly string[] Columns = ["spring", "summer", "early_fall", "mid_fall", "late_winter"];

    /// <summary>Gets the rating of each season, in the order of <see cref="SeasonOfUse"/>.</summary>
    public required ImmutableArray<UseRating> Ratings { get; init; }

    /// <summary>Gets its use by turkeys in words, or null.</summary>
    public string? TurkeyUse { get; init; }

    /// <summary>Gets its palatability in words, or null.</summary>
    public string? Palatability { get; init; }

    /// <summary>Gets the sources.</summary>
    public required KindEvidence Evidence { get; init; }

    /// <summary>The rating of a season.</summary>
    /// <param name="season">Season.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown season.</exception>
    public UseRating In(SeasonOfUse season) => Ratings[(int)Guard.Defined(season)];

    internal static SeasonalUse FromRow(CsvRow row) =>
        new()
        {
            Ratings = [.. Columns.Select(row.Choice<UseRating>)],
            TurkeyUse = row.TextOrNull("turkey_use"),
            Palatability = row.TextOrNull("palatability"),
            Evidence = KindEvidence.FromRow(row),
        };
}
