namespace PlotAgronomy.Weather;

/// <summary>Wind, lowest humidity and roughness that the greatest coefficient takes; what is not known is the standard
/// climate's.</summary>
internal static class SeedbedClimate
{
    internal static (double Wind, double LowestHumidity, double Height) Of(WeatherDay day) =>
        (
            WindOfDay.AtTwoMeters(day) ?? WeatherConstants.All["wind-standard"],
            day.LowestHumidity is { Percent: var humidity } ? humidity : WeatherConstants.All["humidity-standard"],
            WeatherConstants.All["bare-soil-height"]
        );
}
