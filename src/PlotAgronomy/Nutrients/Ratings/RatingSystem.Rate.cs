using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <content>The rating of a report.</content>
public sealed partial class RatingSystem
{
    /// <summary>Rates what the report holds.</summary>
    /// <param name="soil">Soil; a report will do.</param>
    /// <param name="crop">Crop row, for systems whose limits differ by crop; null when none was chosen.</param>
    /// <returns>The ratings, and what could not be rated with the reason.</returns>
    public SoilRatings Rate(PlotSoil soil, CropRow? crop = null)
    {
        ArgumentNullException.ThrowIfNull(soil);
        var report = soil.Report;
        var facts = new ScaleFacts(soil, crop is { } row ? Guard.Defined(row, nameof(crop)) : null);
        ImmutableArray<NutrientRating> ratings = [];
        ImmutableArray<UnratedNutrient> unrated = [];
        foreach (var scales in byAnalyte)
        {
            if (!Holds(report, scales[0].Analyte))
            {
                continue;
            }

            if (facts.Rate(scales) is var (scale, rated, reading, value))
            {
                ratings = ratings.Add(
                    new NutrientRating
                    {
                        System = this,
                        Scale = scale,
                        Class = rated,
                        Reading = reading,
                        ComparedValue = value,
                    }
                );
            }
            else
            {
                unrated = unrated.Add(new UnratedNutrient(facts, scales));
            }
        }

        return new SoilRatings
        {
            System = this,
            Ratings = ratings,
            Unrated = unrated,
        };
    }
}
