namespace PlotAgronomy.Weather;

/// <summary>Days of the year counted as in a common year, so that the same date has the same number every year.</summary>
internal static class YearDay
{
    private const int AnyCommonYear = 2001;

    internal static int Of(DateOnly date) => Of(date.Month, date.Month == 2 && date.Day == 29 ? 28 : date.Day);

    internal static int Of(int month, int day) => new DateOnly(AnyCommonYear, month, day).DayOfYear;

    internal const int Days = 365;

    internal static int Checked(int year) =>
        (int)
            Guard.Between(
                year,
                WeatherConstants.All["earliest-year"],
                WeatherConstants.All["latest-year"],
                "(a year)",
                nameof(year)
            );

    /// <summary>The date of a day from 1 to 365, a part of a day left out.</summary>
    internal static DateOnly In(int year, double dayOfYear)
    {
        var date = new DateOnly(AnyCommonYear, 1, 1).AddDays((int)dayOfYear - 1);
        return new(year, date.Month, date.Day);
    }
}
