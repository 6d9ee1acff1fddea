using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>The dry time of a day: from the hour work begins until rain is as likely as not.</summary>
internal static class DryHours
{
    /// <summary>Null where the forecast tells no such rain from then on.</summary>
    internal static int? On(DateOnly date, WeatherForecast forecast, TimeZoneInfo zone)
    {
        var begins = TimeSlot.StartOf(date, new TimeOnly(CalendarConstants.Days("work-begins"), 0), zone);
        double likely = WeatherConstants.All["enough-rain-chance"] / 100;
        var wet = forecast.Blocks.Where(b => b.Slot.End > begins && b.Chance >= likely).Select(b => b.Slot.Start).ToList();
        return wet.Count == 0 ? null : (int)Math.Max(0, (wet.Min() - begins).TotalHours);
    }
}
