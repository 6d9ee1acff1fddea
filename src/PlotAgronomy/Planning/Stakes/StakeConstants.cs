using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>How far measured inputs are commonly off, and how much is worked out for one plan.</summary>
internal static class StakeConstants
{
    internal static ConstantTable All { get; } = new("Planning/Data/stakes.csv");
}
