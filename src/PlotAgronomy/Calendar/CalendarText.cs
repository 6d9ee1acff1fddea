using System.Globalization;

namespace PlotAgronomy.Calendar;

/// <summary>Dates, counts and names as tasks and findings print them.</summary>
internal static class CalendarText
{
    internal static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>From a day to a day; one day is said once.</summary>
    internal static string Days(DateOnly from, DateOnly to) => from == to ? Date(from) : $"{Date(from)} to {Date(to)}";

    internal static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>Names in a sentence: <c>oats, rye and clover</c>.</summary>
    internal static string Names(IEnumerable<CropKind> kinds)
    {
        var names = kinds.Select(k => k.ShortName).ToList();
        return names.Count <= 1 ? string.Concat(names) : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";
    }
}
