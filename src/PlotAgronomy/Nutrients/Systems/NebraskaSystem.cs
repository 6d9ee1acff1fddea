using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>Critical levels: none at or above the level; below it fertilizer is likely to pay, but no rate is printed.</summary>
internal sealed class NebraskaSystem(SystemRecord record) : RecommendationSystem(record)
{
    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading)
    {
        var scale = question.System.PrintedScale(reading, question.Crop.Row);
        var found = scale.ClassOf(reading.Value)!;
        return IsShort(found)
            ? Silent(question, reading)
            : new Need(question, reading, scale, scale.StatusOf(found));
    }

    internal override T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user)
    {
        var scale = question.System.PrintedScale(reading, question.Crop.Row);
        return user.Use(
            new ClassNeedKernel
            {
                Limits = scale.Limits,
                Needs =
                [
                    .. scale.Classes.Select(c =>
                        IsShort(c) ? ClassNeed.None(NeedRemarks.YesWithoutRate) : ClassNeed.Figure(0)
                    ),
                ],
            }
        );
    }

    private protected override NutrientRating? RatingOf(SystemRequest question, DomainReading reading) =>
        question.System.RatingOn(reading, question.System.PrintedScale(reading, question.Crop.Row));

    private static bool IsShort(RatingClass found) => found.Order == 1;

    private UnansweredNutrient Silent(SystemRequest question, DomainReading reading) =>
        Refuse(
            reading.Nutrient,
            question,
            NutrientCodes.YesWithoutRate,
            refused => $"{refused.Rating}; fertilizer is likely to pay, but it prints no rate",
            isRated: true
        );

    private sealed class Need(SystemRequest question, DomainReading reading, RatingScale scale, DataStatus status)
        : SufficiencyNeed(question, reading, 0, status)
    {
        public override string Why =>
            $"{Reading.Subject} is at or above the critical level of {Reading.Limit(Level)}, so none is needed.";

        public override NutrientRating? Rating => Question.System.RatingOn(Reading, scale);

        public override ImmutableArray<Source> Sources => scale.Sources;

        private double Level => scale.Classes[0].PrintedHigh!.Value;

        private protected override WorkedLine Line() =>
            TableEnd.Line(Reading, Level, new(scale.Sources[0], Status));
    }
}
