namespace PlotAgronomy.Weather;

/// <summary>Days of the year counted as in a common year, so that the same date has the same number every year.</summary>
internal static class YearDay
{
    private const int AnyCommonYear = 2001;

    internal static int Of(DateOnly date) => Of(date.Month, date.Month == 2 && date.Day == 29 ? 28 : date.Day);

    internal static int Of(int month, int day) => new DateOnly(AnyCommonYear, month, day).DayOfYear;

    internal static (int Month, int Day) MonthDay(double dayOfYear)
    {
        int whole = (int)Math.Clamp(Math.Floor(dayOfYear), 1, 365);
        var date = new DateOnly(AnyCommonYear, 1, 1).AddDays(whole - 1);
        return (date.Month, date.Day);
    }

    internal static DateOnly In(int year, double dayOfYear)
    {
        var (month, day) = MonthDay(dayOfYear);
        return new(year, month, day);
    }
}
