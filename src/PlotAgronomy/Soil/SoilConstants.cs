using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>The single numbers of this room.</summary>
internal static class SoilConstants
{
    internal static ConstantTable All { get; } = new("Soil/Data/constants.csv");
}
