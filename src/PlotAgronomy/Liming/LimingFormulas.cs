using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The printed formulas of this room, by id.</summary>
internal static class LimingFormulas
{
    internal static FormulaTable All { get; } = new("Liming/Data/formulas.csv");
}
