using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The single numbers of this room's formulas and limits, by id.</summary>
internal static class LimingConstants
{
    internal static ConstantTable All { get; } = new("Liming/Data/constants.csv");
}
