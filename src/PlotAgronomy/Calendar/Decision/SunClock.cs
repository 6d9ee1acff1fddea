using System.Globalization;
using PlotAgronomy.Land;

namespace PlotAgronomy.Calendar;

/// <summary>A clock of whole hours by longitude, without summer time.</summary>
internal static class SunClock
{
    private const double DegreesPerHour = 15;

    internal static TimeZoneInfo Of(GeoPoint? point)
    {
        if (point is not { LongitudeDegrees: var east })
        {
            return TimeZoneInfo.Utc;
        }

        int hours = (int)Math.Round(east / DegreesPerHour, MidpointRounding.AwayFromZero);
        string name = string.Create(CultureInfo.InvariantCulture, $"sun clock {hours:+0;-0;0}");
        return TimeZoneInfo.CreateCustomTimeZone(name, TimeSpan.FromHours(hours), name, name);
    }
}
