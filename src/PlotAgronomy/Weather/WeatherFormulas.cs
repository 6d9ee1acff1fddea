using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>The formulas of this room as their publications print them.</summary>
internal static class WeatherFormulas
{
    internal static FormulaTable All { get; } = new("Weather/Data/formulas.csv");
}
