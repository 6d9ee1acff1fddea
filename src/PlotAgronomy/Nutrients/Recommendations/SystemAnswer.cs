using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>A system's answer for one nutrient: needs, or the reason there is none.</summary>
internal sealed record SystemAnswer(ImmutableArray<NutrientNeed> Needs, UnansweredNutrient? Unanswered)
{
    public static implicit operator SystemAnswer(NutrientNeed need) => new([need], null);
}
