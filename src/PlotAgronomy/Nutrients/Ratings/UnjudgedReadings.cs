using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Readings of sulfur and trace nutrients that stand on a report and would fall silently.</summary>
internal static class UnjudgedReadings
{
    private static readonly ImmutableArray<SoilAnalyte> Small =
    [
        SoilAnalyte.Sulfur,
        SoilAnalyte.Boron,
        SoilAnalyte.Copper,
        SoilAnalyte.Zinc,
        SoilAnalyte.Manganese,
        SoilAnalyte.Iron,
    ];

    /// <summary>What nobody rates, and what is rated low without a rate.</summary>
    /// <param name="report">Report.</param>
    /// <param name="ratings">Ratings by the report's own program; null where none is known.</param>
    /// <param name="judged">What rules for single nutrients have answered for.</param>
    internal static IEnumerable<Finding> Of(SoilReport report, SoilRatings? ratings, ImmutableArray<SoilAnalyte> judged)
    {
        SoilReading[] open = [.. report.Readings.Where(r => Small.Contains(r.Analyte) && !judged.Contains(r.Analyte))];
        string[] unrated = [.. open.Where(r => ratings?.For(r.Analyte) is null).Select(r => r.ToString()).Distinct()];
        if (unrated.Length > 0)
        {
            yield return FindingCatalog.Create(
                NutrientCodes.ReadingUnrated,
                ("readings", string.Join(", ", unrated)),
                ("laboratory", report.Laboratory)
            );
        }

        foreach (var analyte in open.Select(r => r.Analyte).Distinct())
        {
            if (ratings?.For(analyte) is { Standing: RatingStanding.WellBelow or RatingStanding.Below } low)
            {
                yield return FindingCatalog.Create(
                    NutrientCodes.RatedLow,
                    ("analyte", SoilWords.Opening(analyte)),
                    ("class", low.Name),
                    ("system", low.System?.Name ?? ratings.System.Name),
                    ("laboratory", report.Laboratory)
                );
            }
        }
    }
}
