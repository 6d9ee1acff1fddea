using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The printed formulas of the room, by id, and how their values are written.</summary>
internal static class NutrientFormulas
{
    internal static FormulaTable All { get; } = new("Nutrients/Data/formulas.csv");

    /// <summary>A value of a place.</summary>
    internal static string Number(double value) => Amounts.Print(value, 4);

    /// <summary>A rate to a tenth, such as <c>35.0 lb/ac</c>.</summary>
    internal static string PerAcre(double pounds) => string.Create(CultureInfo.InvariantCulture, $"{pounds:0.0} lb/ac");

    /// <summary>The line of a figure that stands in a table.</summary>
    internal static WorkedLine AsPrinted(string what, string answer, Origin origin) =>
        All["rate-as-printed"].Line(answer, ("what", what)).From(origin);
}
