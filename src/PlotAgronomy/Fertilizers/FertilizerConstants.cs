using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>The thresholds behind cautions and tolerances, by id.</summary>
internal static class FertilizerConstants
{
    internal static ConstantTable All { get; } = new("Fertilizers/Data/constants.csv");
}
