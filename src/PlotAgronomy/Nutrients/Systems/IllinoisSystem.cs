using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Fixed pounds for every pound of test below the goal, over four years; removal up to a limit; nothing above
/// it.</summary>
internal sealed class IllinoisSystem(SystemRecord record) : BuildUpSystem(record)
{
    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading)
    {
        bool isPotash = reading.Nutrient == PlantNutrient.Potash;
        var group = isPotash ? question.Setting.ExchangeCapacityGroup : question.Setting.PhosphorusSupply;
        if (group is null || (isPotash && group == SoilSupply.Medium))
        {
            return Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.FactMissing,
                isPotash
                    ? "its potassium goal asks whether the soil counts as low or high in exchange capacity"
                    : "its phosphorus goal asks for the phosphorus-supplying power of the soil (low, medium or high)"
            );
        }

        if (Replacement.For(Id, question.Crop, reading.Nutrient) is not { } replacement)
        {
            return RefuseForRemoval(question, reading.Nutrient);
        }

        string letter = isPotash ? "K" : "P";
        string level = NutrientWords.Supplies[group.Value];
        var goal = NutrientConstants.All.Find($"IL-{letter}-goal-{level}");
        var limit = NutrientConstants.All.Find($"IL-{letter}-limit-{level}");
        var factor = NutrientConstants.All.Find($"IL-{letter}-factor");
        var years = NutrientConstants.All.Find("IL-years");
        double times =
            !isPotash && question.Crop.Row is (CropRow.Wheat or CropRow.Oat) ? NutrientConstants.All["IL-wheat-maintenance"] : 1;
        double buildUp = SystemMath.IllinoisBuildUp(reading.Value, goal, factor, years);
        bool isAboveLimit = reading.Value > limit;
        double replaced = SystemMath.IllinoisReplacement(reading.Value, limit, replacement.Pounds, times);
        bool builds = buildUp > 0;
        var scale = LimitScale.Of(
            $"IL-{letter}",
            reading,
            question.Crop.Row,
            $"goal {Amounts.Print(goal, 4)}, limit {Amounts.Print(limit, 4)} lb/ac",
            Statuses.WeakestOf(goal.Status, limit.Status),
            $"{goal.SourceId};{limit.SourceId}",
            [("build-up", goal, false), ("maintenance", limit, true)],
            "none"
        );

        string nutrient = SoilWords.For(reading.Nutrient);
        return Need(
            question,
            reading,
            new Parts(
                buildUp,
                replaced,
                builds
                        ? $"{reading.Subject} is below the goal of {reading.Limit(goal)}, so a quarter of the build-up is due "
                            + $"this year; {replacement.PutBack}."
                    : isAboveLimit ? $"{reading.Subject} is above the limit of {reading.Limit(limit)}, so none is needed."
                    : $"{reading.Subject} lies between the goal of {reading.Limit(goal)} and the limit of "
                        + $"{reading.Limit(limit)}; {replacement.PutBack}.",
                Statuses.WeakestOf(
                    builds ? Statuses.WeakestOf(goal.Status, factor.Status) : Statuses.WeakestOf(goal.Status, limit.Status),
                    replacement.Status
                ),
                [.. factor.SourceId.Split(';'), .. goal.SourceId.Split(';'), replacement.SourceId ?? goal.SourceId]
            )
            {
                Rating = reading.RatingOn(scale, Id),
                Lines = () => [BuildUpLine(), .. ReplacementLines(replacement, nutrient, ReplacementLine)],
            }
        );

        WorkedLine BuildUpLine() =>
            NutrientFormulas
                .All[isPotash ? "illinois-potash-build-up" : "illinois-phosphate-build-up"]
                .Line(
                    NutrientFormulas.PerAcre(buildUp),
                    ("nutrient", nutrient),
                    ("goal", NutrientFormulas.Number(goal)),
                    ("test", NutrientFormulas.Number(reading.Value)),
                    ("pounds a pound of test", NutrientFormulas.Number(factor)),
                    ("years", NutrientFormulas.Number(years))
                );

        WorkedLine ReplacementLine() =>
            NutrientFormulas
                .All["illinois-replacement"]
                .Line(
                    NutrientFormulas.PerAcre(replaced),
                    ("nutrient", nutrient),
                    ("test", NutrientFormulas.Number(reading.Value)),
                    ("limit", NutrientFormulas.Number(limit)),
                    ("carried off", NutrientFormulas.Number(replacement.Pounds)),
                    ("times removal", NutrientFormulas.Number(times))
                );
    }
}
