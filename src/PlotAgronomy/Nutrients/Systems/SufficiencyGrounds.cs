using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>How a system that gives one figure and no parts came to it.</summary>
internal abstract class SufficiencyGrounds(RecommendationSystem system, DomainReading reading) : NeedGrounds
{
    internal DomainReading Reading => reading;

    private protected RecommendationSystem System => system;

    private protected string NutrientInWords => SoilWords.For(reading.Nutrient);

    internal sealed override ImmutableArray<WorkedLine> Lines() => [Line()];

    /// <summary>The answer of one figure.</summary>
    internal NutrientNeed Need(double pounds, DataStatus status) => new(this, reading.Nutrient, pounds, status);

    private protected abstract WorkedLine Line();
}
