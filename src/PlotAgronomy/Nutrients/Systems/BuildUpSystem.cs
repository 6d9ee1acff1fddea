namespace PlotAgronomy.Nutrients;

/// <summary>What the build-up systems share: raise below a level, put back what leaves, stop above a limit.</summary>
internal abstract class BuildUpSystem(SystemRecord record) : RecommendationSystem(record)
{
    private protected UnansweredNutrient RefuseForRemoval(SystemRequest question, PlantNutrient nutrient) =>
        AskFor(nutrient, question, _ =>
            $"the crop is carried off, and this system prints no removal for {CropRows.WordsFor(question.Crop.Row)}: state "
            + "the pounds that leave"
        );
}
