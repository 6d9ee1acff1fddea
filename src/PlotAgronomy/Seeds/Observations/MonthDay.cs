using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>A day of no year in particular, written <c>09-01</c>.</summary>
internal static class MonthDay
{
    private const string Unit = "month-day";

    /// <summary>A publication that names months only; <c>08</c> begins on its first day and ends on its last.</summary>
    private const string MonthUnit = "month";

    /// <summary>A common year: the 29th of February is no day to plant by.</summary>
    private const string AnyYear = "2001-";

    internal static (int Month, int Day)? Read(CsvRow row, string column, string? text, string? unit)
    {
        if (text is null)
        {
            return null;
        }

        if (unit == MonthUnit)
        {
            return ReadMonth(row, column, text);
        }

        if (unit != Unit)
        {
            throw row.Problem("unit", $"expected '{Unit}', found '{unit}'");
        }

        return DateOnly.TryParseExact(
            AnyYear + text,
            "yyyy-MM-dd",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var date
        )
            ? (date.Month, date.Day)
            : throw row.Problem(column, "expected a day such as 09-01");
    }

    internal static bool IsMonthsOnly(string? unit) => unit == MonthUnit;

    private static (int Month, int Day) ReadMonth(CsvRow row, string column, string text) =>
        DateOnly.TryParseExact(AnyYear + text, "yyyy-MM", CultureInfo.InvariantCulture, DateTimeStyles.None, out var first)
            ? (first.Month, column == "low" ? 1 : DateTime.DaysInMonth(first.Year, first.Month))
            : throw row.Problem(column, "expected a month such as 09");
}
