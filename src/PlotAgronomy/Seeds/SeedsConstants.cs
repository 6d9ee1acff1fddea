using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>The single numbers of this room.</summary>
internal static class SeedsConstants
{
    internal static ConstantTable All { get; } = new("Seeds/Data/constants.csv");
}
