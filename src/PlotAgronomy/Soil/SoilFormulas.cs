using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>The formulas of this room as they are printed.</summary>
internal static class SoilFormulas
{
    internal static FormulaTable All { get; } = new("Soil/Data/formulas.csv");
}
