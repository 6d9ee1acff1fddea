namespace PlotAgronomy.Nutrients;

/// <summary>A system's answer for one nutrient: the need, or the reason there is none; neither where it is not asked.</summary>
internal readonly record struct SystemAnswer(NutrientNeed? Need, UnansweredNutrient? Unanswered)
{
    public static implicit operator SystemAnswer(NutrientNeed need) => new(need, null);

    public static implicit operator SystemAnswer(UnansweredNutrient unanswered) => new(null, unanswered);
}
