using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A need of one figure and no parts.</summary>
internal abstract class SufficiencyNeed(
    SystemRequest question,
    DomainReading reading,
    double poundsPerAcre,
    DataStatus status
) : NutrientNeed(question, reading.Nutrient, poundsPerAcre, status)
{
    private protected DomainReading Reading => reading;

    private protected string NutrientInWords => SoilWords.For(Nutrient);

    internal sealed override ImmutableArray<WorkedLine> Work() => [Line()];

    private protected abstract WorkedLine Line();
}
