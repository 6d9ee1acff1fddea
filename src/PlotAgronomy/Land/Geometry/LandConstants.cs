using PlotAgronomy.Reference;

namespace PlotAgronomy.Land;

/// <summary>The limits at which this room speaks up.</summary>
internal static class LandConstants
{
    internal static ConstantTable All { get; } = new("Land/Data/constants.csv");
}
