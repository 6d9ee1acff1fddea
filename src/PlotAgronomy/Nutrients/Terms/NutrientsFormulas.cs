using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The printed formulas of the room, by id, and how their values are written.</summary>
internal static class NutrientsFormulas
{
    internal static FormulaTable All { get; } = new("Nutrients/Data/formulas.csv");

    /// <summary>A value of a place.</summary>
    internal static string Number(double value) => Amounts.Print(value, 4);

    /// <summary>A rate to a tenth, such as <c>35.0 lb/ac</c>.</summary>
    internal static string PerAcre(double pounds) => string.Create(CultureInfo.InvariantCulture, $"{pounds:0.0} lb/ac");

    /// <summary>The line of a figure that stands in a table.</summary>
    internal static WorkedLine AsPrinted(string what, string answer, string sourceId, DataStatus status) =>
        All["rate-as-printed"].Line(answer, ("what", what)).By(sourceId, status);

    /// <summary>The line with the source of the table row that it was read from, where the row's place is not kept.</summary>
    internal static WorkedLine By(this WorkedLine line, string? sourceId, DataStatus? status) =>
        line with
        {
            SourceId = sourceId,
            Locator = null,
            Status = status,
        };

    /// <summary>The line with the origin of the table row that it was read from.</summary>
    internal static WorkedLine By(this WorkedLine line, Origin origin) =>
        line with
        {
            SourceId = origin.SourceIds[0],
            Locator = origin.Locator,
            Status = origin.Status,
        };
}
