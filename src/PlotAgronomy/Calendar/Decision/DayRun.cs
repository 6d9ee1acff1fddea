using System.Collections.Immutable;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>The days that follow each other with rain, high and low known: observed ones, then those of the forecast.</summary>
/// <param name="Days">All of them.</param>
/// <param name="First">The first that the forecast tells.</param>
internal sealed record DayRun(ImmutableArray<WeatherDay> Days, DateOnly First)
{
    /// <summary>Null where the forecast tells no whole day.</summary>
    internal static DayRun? Of(WeatherForecast forecast, WeatherHistory? observed, TimeZoneInfo zone)
    {
        var told = forecast.Days(zone).SkipWhile(d => !IsWhole(d)).TakeWhile(IsWhole).ToList();
        if (told.Count == 0)
        {
            return null;
        }

        var before = new List<WeatherDay>();
        var known = (observed?.Days ?? []).Where(IsWhole).ToDictionary(d => d.Date);
        for (var date = told[0].Date.AddDays(-1); known.TryGetValue(date, out var day); date = date.AddDays(-1))
        {
            before.Insert(0, day);
        }

        return new([.. before, .. told], told[0].Date);
    }

    private static bool IsWhole(WeatherDay day) => day is { Rain: not null, MeanCelsius: not null };
}
