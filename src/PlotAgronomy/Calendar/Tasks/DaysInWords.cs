using System.Globalization;

namespace PlotAgronomy.Calendar;

/// <summary>Days that hang on a date which is not known, as a person says them.</summary>
internal static class DaysInWords
{
    private const int Week = 7;
    private const double Month = 30.4;
    private const int Year = 365;

    /// <summary>Such as <c>5 to 7 weeks before sowing</c>.</summary>
    /// <param name="low">Days from the event; before it where negative.</param>
    /// <param name="high">Days from the event, not less.</param>
    /// <param name="what">The event.</param>
    internal static string From(int low, int high, string what) =>
        (low, high) switch
        {
            (0, 0) => $"on the day of {what}",
            (_, 0) => $"in the last {Stretch(-low)} before {what}",
            (0, _) => $"in the first {Stretch(high)} after {what}",
            ( < 0, < 0) => $"{Between(-high, -low)} before {what}",
            ( > 0, > 0) => $"{Between(low, high)} after {what}",
            _ => $"from {Between(-low, -low)} before to {Between(high, high)} after {what}",
        };

    /// <summary>Such as <c>late May to late June</c>.</summary>
    internal static string OfYear(int low, int high)
    {
        var (from, to) = (Part(low), Part(high));
        return from == to ? from : $"{from} to {to}";
    }

    /// <summary>Such as <c>week</c> or <c>3 weeks</c>.</summary>
    private static string Stretch(int days) =>
        Between(days, days) is var told && told.StartsWith("1 ", StringComparison.Ordinal) ? told[2..] : told;

    private static string Part(int dayOfYear)
    {
        var day = new DateOnly(2025, 1, 1).AddDays(dayOfYear - 1);
        string part =
            day.Day <= 10 ? "early"
            : day.Day <= 20 ? "mid"
            : "late";
        return string.Create(CultureInfo.InvariantCulture, $"{part} {day:MMMM}");
    }

    private static string Between(int low, int high) =>
        low >= 2 * Year ? Counted(low, high, Year, "year")
        : low >= 2 * Month ? Counted(low, high, Month, "month")
        : low >= Week ? Counted(low, high, Week, "week")
        : Counted(low, high, 1, "day");

    private static string Counted(int low, int high, double length, string unit)
    {
        int from = (int)Math.Round(low / length, MidpointRounding.AwayFromZero);
        int to = (int)Math.Round(high / length, MidpointRounding.AwayFromZero);
        string many = to == 1 ? unit : $"{unit}s";
        return from == to
            ? $"{CalendarText.Count(from)} {many}"
            : $"{CalendarText.Count(from)} to {CalendarText.Count(to)} {many}";
    }
}
