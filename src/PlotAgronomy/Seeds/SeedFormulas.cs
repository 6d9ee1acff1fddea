using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>The formulas of this room as they are printed.</summary>
internal static class SeedFormulas
{
    internal static FormulaTable All { get; } = new("Seeds/Data/formulas.csv");
}
