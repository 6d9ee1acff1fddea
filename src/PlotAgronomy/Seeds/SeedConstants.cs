using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>The single numbers of this room.</summary>
internal static class SeedConstants
{
    internal static ConstantTable All { get; } = new("Seeds/Data/constants.csv");
}
