using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The coefficients of the systems and the agreed numbers of a blend's need, by id.</summary>
internal static class NutrientConstants
{
    internal static ConstantTable All { get; } = new("Nutrients/Data/constants.csv");
}
