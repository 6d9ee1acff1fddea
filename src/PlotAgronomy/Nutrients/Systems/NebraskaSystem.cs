using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>Critical levels: none at or above the level; below it fertilizer is likely to pay, but no rate is printed.</summary>
internal sealed class NebraskaSystem(SystemRecord record) : RecommendationSystem(record)
{
    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading)
    {
        var scale = PrintedScale(reading, question.Crop.Row);
        var found = scale.ClassOf(reading.Value)!;
        return found.Order == 1
            ? Silent(question, reading, RatingOn(reading, scale)!)
            : new Grounds(this, reading, scale).Need(0, scale.StatusOf(found));
    }

    private UnansweredNutrient Silent(SystemRequest question, DomainReading reading, NutrientRating rating) =>
        Refuse(
            reading.Nutrient,
            question,
            NutrientCodes.YesWithoutRate,
            () => $"{rating}; fertilizer is likely to pay, but it prints no rate",
            rating
        );

    private sealed class Grounds(RecommendationSystem system, DomainReading reading, RatingScale scale)
        : SufficiencyGrounds(system, reading)
    {
        internal override string Why =>
            $"{Reading.Subject} is at or above the critical level of {Reading.Limit(Level)}, so none is needed.";

        internal override NutrientRating? Rating => System.RatingOn(Reading, scale);

        internal override ImmutableArray<Source> Sources => scale.Sources;

        private double Level => scale.Classes[0].PrintedHigh!.Value;

        private protected override WorkedLine Line() =>
            TableEnd.Line(Reading, Level, new(scale.Sources[0], scale.StatusOf(scale.ClassOf(Reading.Value)!)));
    }
}
