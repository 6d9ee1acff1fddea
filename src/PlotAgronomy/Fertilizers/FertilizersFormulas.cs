using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>The printed formulas of the room, by id.</summary>
internal static class FertilizersFormulas
{
    internal static FormulaTable All { get; } = new("Fertilizers/Data/formulas.csv");

    /// <summary>The source of sums that are everyday arithmetic on labels and scales.</summary>
    internal static string Practice => All["whole-packages"].Origin!.SourceId;
}
