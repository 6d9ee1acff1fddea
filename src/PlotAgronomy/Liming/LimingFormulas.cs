using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The printed formulas of this room, by id.</summary>
internal static class LimingFormulas
{
    internal static FormulaTable All { get; } = new("Liming/Data/formulas.csv");

    /// <summary>The line with the publication its numbers stand in, where the formula itself has none.</summary>
    internal static WorkedLine From(this WorkedLine line, Origin origin) =>
        line with
        {
            SourceId = origin.SourceId,
            Locator = origin.Locator,
            Status = origin.Status,
        };
}
