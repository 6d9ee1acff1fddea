using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>The published and customary limits of this room, by id.</summary>
internal static class SpreadingConstants
{
    internal static ConstantTable All { get; } = new("Spreading/Data/constants.csv");
}
