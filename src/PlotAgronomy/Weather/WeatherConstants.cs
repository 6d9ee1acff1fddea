using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>The published and customary limits and coefficients of this room, by id.</summary>
internal static class WeatherConstants
{
    internal static ConstantTable All { get; } = new("Weather/Data/constants.csv");
}
