using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>The dry time of a day: from the hour work begins until rain is as likely as not.</summary>
internal static class DryHours
{
    /// <summary>Null where the forecast tells no rain as likely as not from then on.</summary>
    internal static int? On(DateOnly date, WeatherForecast forecast, TimeZoneInfo zone) =>
        Until(WeatherConstants.All["enough-rain-chance"], date, forecast, zone);

    /// <summary>Whether there is time to work the ground before a chance of rain that wets it.</summary>
    internal static bool AreEnough(DateOnly date, WeatherForecast forecast, TimeZoneInfo zone) =>
        !(Until(CalendarConstants.All["wetting-chance"], date, forecast, zone) < CalendarConstants.All["dry-work-hours"]);

    private static int? Until(double percent, DateOnly date, WeatherForecast forecast, TimeZoneInfo zone)
    {
        var begins = TimeSlot.StartOf(date, new TimeOnly(CalendarConstants.Days("work-begins"), 0), zone);
        double likely = percent / 100;
        var wet = forecast.Blocks.Where(b => b.Slot.End > begins && b.Chance >= likely).Select(b => b.Slot.Start).ToList();
        return wet.Count == 0 ? null : (int)Math.Max(0, (wet.Min() - begins).TotalHours);
    }
}
