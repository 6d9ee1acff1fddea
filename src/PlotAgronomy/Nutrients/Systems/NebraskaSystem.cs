namespace PlotAgronomy.Nutrients;

/// <summary>Critical levels: none at or above the level; below it fertilizer is likely to pay, but no rate is printed.</summary>
internal sealed class NebraskaSystem(SystemRecord record) : RecommendationSystem(record)
{
    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading)
    {
        var scale = RatingTables
            .Of(Id)
            .First(s =>
                s.Analyte == reading.Reading.Analyte
                && s.Crops.Contains(question.Crop.Row)
                && ReportReadings.IsAccepted(reading.Reading.Extractant, s.Extractants)
            );
        var rating = reading.RatingOn(scale, Id)!;
        double level = scale.Classes[0].PrintedHigh!.Value;
        return rating.Class.Order == 1
            ? Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.YesWithoutRate,
                $"{rating}; fertilizer is likely to pay, but it prints no rate",
                rating
            )
            : SufficiencyNeed.Of(
                reading,
                0,
                rating,
                $"{reading.Subject} is at or above the critical level of {reading.Limit(level)}, " + "so none is needed.",
                rating.Status,
                rating.SourceIds,
                () => SufficiencyNeed.BeyondTheEnd(reading, level, rating.SourceIds[0], rating.Status)
            );
    }
}
