using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>The printed formulas of the room, by id.</summary>
internal static class FertilizerFormulas
{
    internal static FormulaTable All { get; } = new("Fertilizers/Data/formulas.csv");
}
