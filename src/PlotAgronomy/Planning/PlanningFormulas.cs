using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The formulas that are this room's own; all others stand in the rooms that answer.</summary>
internal static class PlanningFormulas
{
    internal static FormulaTable All { get; } = new("Planning/Data/formulas.csv");
}
