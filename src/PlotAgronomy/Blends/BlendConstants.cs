using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>The single numbers of this room, each with its source.</summary>
internal static class BlendConstants
{
    internal static ConstantTable All { get; } = new("Blends/Data/constants.csv");
}
