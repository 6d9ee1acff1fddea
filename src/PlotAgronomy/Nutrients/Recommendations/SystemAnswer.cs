namespace PlotAgronomy.Nutrients;

/// <summary>The answer for one nutrient: the need, or the reason there is none; neither where it is not asked.</summary>
internal readonly struct SystemAnswer
{
    /// <summary>One of the two, so that a recommendation keeps one reference for each nutrient.</summary>
    private readonly object? answer;

    private SystemAnswer(object answer) => this.answer = answer;

    internal NutrientNeed? Need => answer as NutrientNeed;

    internal UnansweredNutrient? Unanswered => answer as UnansweredNutrient;

    public static implicit operator SystemAnswer(NutrientNeed need) => new(need);

    public static implicit operator SystemAnswer(UnansweredNutrient unanswered) => new(unanswered);
}
