namespace PlotAgronomy.Weather;

/// <summary>A stretch of time from its start up to, not including, its end.</summary>
internal readonly record struct TimeSlot(DateTimeOffset Start, DateTimeOffset End)
{
    internal double Hours => (End - Start).TotalHours;

    internal DateTimeOffset Middle => Start + ((End - Start) / 2);

    /// <summary>Hours that this and another stretch share.</summary>
    internal double HoursShared(TimeSlot other)
    {
        var from = Start > other.Start ? Start : other.Start;
        var to = End < other.End ? End : other.End;
        return to > from ? (to - from).TotalHours : 0;
    }

    /// <summary>A local date from midnight to midnight: 23 or 25 hours long where the clock changes.</summary>
    internal static TimeSlot OfDate(DateOnly date, TimeZoneInfo zone) =>
        new(StartOf(date, TimeOnly.MinValue, zone), StartOf(date.AddDays(1), TimeOnly.MinValue, zone));

    /// <summary>The moment a local clock shows a time. Where the clock leaps over it, the moment of the leap; where it shows it
    /// twice, the first.</summary>
    internal static DateTimeOffset StartOf(DateOnly date, TimeOnly time, TimeZoneInfo zone)
    {
        var clock = date.ToDateTime(time, DateTimeKind.Unspecified);
        while (zone.IsInvalidTime(clock))
        {
            clock = clock.AddMinutes(1);
        }

        var offset = zone.IsAmbiguousTime(clock) ? zone.GetAmbiguousTimeOffsets(clock).Max() : zone.GetUtcOffset(clock);
        return new DateTimeOffset(clock, offset);
    }

    internal static DateOnly DateAt(DateTimeOffset moment, TimeZoneInfo zone) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(moment, zone).DateTime);
}
