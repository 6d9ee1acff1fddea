using PlotAgronomy.Weather;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Weather as it was told.</summary>
/// <param name="Plan">The plan, with the place that was told.</param>
/// <param name="Forecast">Forecast.</param>
/// <param name="Zone">Zone whose days are counted.</param>
/// <param name="Observed">Observed days, or null.</param>
internal sealed record ToldWeather(PlotPlan Plan, WeatherForecast Forecast, TimeZoneInfo Zone, WeatherHistory? Observed);
