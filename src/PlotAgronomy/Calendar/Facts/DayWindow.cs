namespace PlotAgronomy.Calendar;

/// <summary>From a day to a day, both counted in.</summary>
internal readonly record struct DayWindow(DateOnly From, DateOnly To)
{
    internal DayWindow Moved(int low, int high) => new(From.AddDays(low), To.AddDays(high));

    /// <summary>Days of a year, January the first being day 1.</summary>
    internal static DayWindow OfYear(int year, int low, int high)
    {
        var start = new DateOnly(year, 1, 1);
        return new(start.AddDays(low - 1), start.AddDays(high - 1));
    }
}
