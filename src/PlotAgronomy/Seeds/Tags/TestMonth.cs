using System.Globalization;

namespace PlotAgronomy.Seeds;

/// <summary>The month and year of a germination test, as a tag gives it.</summary>
/// <remarks>The default is January of the year 1.</remarks>
[JsonConverter(typeof(JsonTextConverter<TestMonth>))]
public readonly record struct TestMonth : IComparable<TestMonth>, IJsonText<TestMonth>
{
    /// <summary>Months are counted on from here, and the calendar ends with the year 9999.</summary>
    private const int LatestYear = 9990;

    private readonly int months;

    private TestMonth(int months) => this.months = months;

    internal static int EarliestYear => (int)SeedConstants.All["test-year-low"];

    /// <summary>Gets the year.</summary>
    public int Year => months / 12 + 1;

    /// <summary>Gets the month, from 1 to 12.</summary>
    public int Month => months % 12 + 1;

    /// <summary>Whether seed may have been tested in that year.</summary>
    internal static bool IsYear(int year) => year >= EarliestYear && year <= LatestYear;

    /// <summary>Names a month.</summary>
    /// <param name="year">Year; from 1900 to 9990.</param>
    /// <param name="month">Month; from 1 to 12.</param>
    /// <returns>The month.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static TestMonth FromYearAndMonth(int year, int month)
    {
        Guard.Between(year, EarliestYear, LatestYear, "(a year of four digits)", nameof(year));
        Guard.Between(month, 1, 12, "(a month)", nameof(month));
        return new((year - 1) * 12 + month - 1);
    }

    /// <summary>The last day of the month that lies so many months after this one.</summary>
    /// <param name="later">Whole months later; at least 0.</param>
    /// <returns>The day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public DateOnly LastDayOfMonthLater(int later)
    {
        var month = new TestMonth(months + Guard.AtLeast(later, 0, "months"));
        return new(month.Year, month.Month, DateTime.DaysInMonth(month.Year, month.Month));
    }

    /// <inheritdoc/>
    public int CompareTo(TestMonth other) => months.CompareTo(other.months);

    /// <summary>Compares two months.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is earlier.</returns>
    public static bool operator <(TestMonth left, TestMonth right) => left.months < right.months;

    /// <summary>Compares two months.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is later.</returns>
    public static bool operator >(TestMonth left, TestMonth right) => left.months > right.months;

    /// <summary>Compares two months.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is earlier or the same.</returns>
    public static bool operator <=(TestMonth left, TestMonth right) => left.months <= right.months;

    /// <summary>Compares two months.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is later or the same.</returns>
    public static bool operator >=(TestMonth left, TestMonth right) => left.months >= right.months;

    /// <summary>Text such as <c>2025-03</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Year:0000}-{Month:00}");

    static string IJsonText<TestMonth>.ToJsonText(TestMonth value) => value.ToString();

    static TestMonth IJsonText<TestMonth>.FromJsonText(string text)
    {
        var (year, month) = ExactText.Halves(text, "-");
        return FromYearAndMonth(Whole(year), Whole(month));
    }

    private static int Whole(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);
}
