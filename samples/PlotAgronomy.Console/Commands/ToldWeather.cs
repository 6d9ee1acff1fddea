using PlotAgronomy.Weather;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Weather as it was told.</summary>
/// <param name="Forecast">Forecast.</param>
/// <param name="Zone">Zone whose days are counted.</param>
/// <param name="Observed">Observed days, or null.</param>
internal sealed record ToldWeather(WeatherForecast Forecast, TimeZoneInfo Zone, WeatherHistory? Observed);
