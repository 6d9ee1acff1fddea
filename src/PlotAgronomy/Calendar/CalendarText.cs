using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Calendar;

/// <summary>Dates, counts and names as tasks and findings print them.</summary>
internal static class CalendarText
{
    internal static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>From a day to a day; one day is said once.</summary>
    internal static string Days(DateOnly from, DateOnly to) => from == to ? Date(from) : $"{Date(from)} to {Date(to)}";

    internal static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>Names in a sentence: <c>oats, rye and clover</c>.</summary>
    internal static string Names(IEnumerable<CropKind> kinds) => SentenceList.And([.. kinds.Select(k => k.ShortName)]);
}
