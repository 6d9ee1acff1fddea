using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The single numbers of this room, each with its source.</summary>
internal static class PlanningConstants
{
    internal static ConstantTable All { get; } = new("Planning/Data/constants.csv");
}
