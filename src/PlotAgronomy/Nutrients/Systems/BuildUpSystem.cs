namespace PlotAgronomy.Nutrients;

/// <summary>What the build-up systems share: raise below a level, put back what leaves, stop above a limit.</summary>
internal abstract class BuildUpSystem(SystemRecord record) : RecommendationSystem(record)
{
    /// <summary>The answer from its two parts.</summary>
    private protected static NutrientNeed Need(BuildUpGrounds grounds, DataStatus status, double? printedStep = null)
    {
        double pounds = grounds.Rate;
        var exact = ApplicationRate.FromPoundsPerAcre(pounds);
        return new NutrientNeed(grounds)
        {
            Nutrient = grounds.Reading.Nutrient,
            Rate = exact,
            PublishedLow = exact,
            PublishedHigh = exact,
            AsPrinted = printedStep is { } step ? ApplicationRate.FromPoundsPerAcre(SystemMath.ToNearest(pounds, step)) : null,
            BuildUp = ApplicationRate.FromPoundsPerAcre(grounds.BuildUp),
            Replacement = ApplicationRate.FromPoundsPerAcre(grounds.Replaced),
            Status = status,
        };
    }

    private protected UnansweredNutrient RefuseForRemoval(SystemRequest question, PlantNutrient nutrient) =>
        AskFor(nutrient, question, () =>
            $"the crop is carried off, and this system prints no removal for {CropRows.WordsFor(question.Crop.Row)}: state "
            + "the pounds that leave"
        );
}
