namespace PlotAgronomy.Weather;

/// <summary>One autumn: the date of its first freeze, or none by the end of the year.</summary>
internal readonly record struct FrostSeason(int Year, DateOnly? First)
{
    private static int FirstDay => (int)WeatherConstants.All["autumn-from"];

    private static int MostMissing => (int)WeatherConstants.All["autumn-most-missing"];

    /// <summary>The autumns of a history; one with too many days missing before its freeze is left out.</summary>
    internal static IEnumerable<FrostSeason> Of(WeatherHistory history, double celsius)
    {
        foreach (var year in history.Days.Where(d => d.LowCelsius is not null).GroupBy(d => d.Date.Year))
        {
            var start = YearDay.In(year.Key, FirstDay);
            var autumn = year.Where(d => d.Date >= start).ToList();
            var freeze = autumn.FirstOrDefault(d => d.LowCelsius <= celsius);
            var end = freeze?.Date ?? new DateOnly(year.Key, 12, 31);
            int known = autumn.Count(d => d.Date <= end);
            if (end.DayNumber - start.DayNumber + 1 - known <= MostMissing)
            {
                yield return new(year.Key, freeze?.Date);
            }
        }
    }
}
