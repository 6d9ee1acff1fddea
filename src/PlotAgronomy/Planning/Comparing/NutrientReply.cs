using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>What one system says of one nutrient.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NutrientReply
{
    private NutrientReply(PlantNutrient nutrient, NutrientRecommendation answer)
    {
        Nutrient = nutrient;
        Answer = answer;
    }

    /// <summary>Gets the nutrient.</summary>
    public PlantNutrient Nutrient { get; }

    /// <summary>Gets the whole answer, with the row that was asked for.</summary>
    public NutrientRecommendation Answer { get; }

    /// <summary>Gets the need; null without a rate.</summary>
    public NutrientNeed? Need => Answer.For(Nutrient);

    /// <summary>Gets why there is no rate; null with one, and where the system does not deal with the nutrient.</summary>
    public UnansweredNutrient? Unanswered => Answer.Unanswered.FirstOrDefault(u => u.Nutrient == Nutrient);

    /// <summary>Gets a value indicating whether it gives a rate or a rating.</summary>
    public bool IsAnswered => Need is not null || Answer.Unanswered.Any(u => u.Nutrient == Nutrient && u.Rating is not null);

    internal static NutrientReply? Find(RecommendationSystem system, PlantNutrient nutrient, SystemComparison comparison) =>
        comparison.Answers.Concat(comparison.LeftOut).FirstOrDefault(a => a.System == system) is { } answer
            ? new(nutrient, answer)
            : null;

    /// <summary>What the system answers.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Need?.ToString() ?? Unanswered?.ToString() ?? $"{SoilWords.For(Nutrient)}: not answered";
}
