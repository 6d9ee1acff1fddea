using PlotAgronomy.Reference;

namespace PlotAgronomy.PlanFiles;

/// <summary>The limits of whatever a person types into a plan, by id: beyond them a slip is more likely than a plot.</summary>
internal static class PlanLimits
{
    internal static ConstantTable All { get; } = new("PlanFiles/Data/constants.csv");
}
