using PlotAgronomy.Reference;

namespace PlotAgronomy.Land;

/// <summary>The formulas of this room as they are printed.</summary>
internal static class LandFormulas
{
    internal static FormulaTable All { get; } = new("Land/Data/formulas.csv");
}
