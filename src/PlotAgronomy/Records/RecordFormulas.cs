using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>The formulas of this room as their publications print them.</summary>
internal static class RecordFormulas
{
    internal static FormulaTable All { get; } = new("Records/Data/formulas.csv");
}
