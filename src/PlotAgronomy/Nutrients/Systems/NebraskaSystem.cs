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
        string level = Amounts.Print(scale.Classes[0].PrintedHigh!.Value, 4);
        return rating.Class.Order == 1
            ? Refuse(
                reading.Nutrient,
                question,
                "nutrient-yes-without-rate",
                $"{rating}; fertilizer is likely to pay, but it prints no rate",
                rating
            )
            : SufficiencyNeed.Of(
                reading,
                0,
                rating,
                $"{reading.Subject} is at or above the critical level of {reading.Limit(scale.Classes[0].PrintedHigh!.Value)}, "
                    + "so none is needed.",
                rating.Status,
                rating.SourceIds,
                "none at or above the critical level",
                $"{Amounts.Print(reading.Value, 4)} against {level}"
            );
    }
}
