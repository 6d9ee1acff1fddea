using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace PlotAgronomy.PlanFiles;

/// <summary>What a typed date may mean: a day, or a whole month.</summary>
/// <param name="First">The day, or the first day of the month.</param>
/// <param name="IsMonth">Whether it is a whole month.</param>
internal readonly partial record struct TypedDate(DateOnly First, bool IsMonth)
{
    private static readonly string[] Months = CultureInfo.InvariantCulture.DateTimeFormat.AbbreviatedMonthNames[..12];

    internal DateOnly Last => IsMonth ? First.AddMonths(1).AddDays(-1) : First;

    /// <summary>All that a text may mean; none when it is no date with a year.</summary>
    /// <param name="text">Text of a person.</param>
    /// <param name="mayLackYear">Whether it may also be a day and month without a year.</param>
    internal static ImmutableArray<TypedDate> In(string text, out bool mayLackYear)
    {
        mayLackYear = false;
        if (WithYearFirst().Match(text) is { Success: true } iso)
        {
            return Of(iso.Groups["y"].Value, iso.Groups["m"].Value, iso.Groups["d"].Value);
        }

        if (WithName().Match(text) is { Success: true } named)
        {
            int month = Array.FindIndex(Months, m => m.Equals(named.Groups["m"].Value, StringComparison.OrdinalIgnoreCase)) + 1;
            mayLackYear = !named.Groups["d"].Success && IsDayWithoutYear(named.Groups["y"].Value);
            return Of(named.Groups["y"].Value, Text(month), named.Groups["d"].Value);
        }

        if (InNumbers().Match(text) is not { Success: true } numbers)
        {
            return [];
        }

        string one = numbers.Groups["one"].Value,
            two = numbers.Groups["two"].Value,
            year = numbers.Groups["y"].Value;
        if (two.Length > 0)
        {
            return [.. Of(year, one, two).Concat(Of(year, two, one)).Distinct()];
        }

        mayLackYear = IsDayWithoutYear(year);
        return Of(year, one, "");
    }

    private static bool IsDayWithoutYear(string year) =>
        year.Length == 2 && int.Parse(year, CultureInfo.InvariantCulture) is >= 1 and <= 31;

    private static ImmutableArray<TypedDate> Of(string year, string month, string day)
    {
        const int Century = 2000;
        int y = int.Parse(year, CultureInfo.InvariantCulture) + (year.Length == 2 ? Century : 0),
            m = int.Parse(month, CultureInfo.InvariantCulture),
            d = day.Length == 0 ? 1 : int.Parse(day, CultureInfo.InvariantCulture);
        return y >= 1 && m is >= 1 and <= 12 && d >= 1 && d <= DateTime.DaysInMonth(y, m)
            ? [new(new DateOnly(y, m, d), day.Length == 0)]
            : [];
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Text such as <c>2027-06-27</c> or <c>2027-06</c>.</summary>
    public override string ToString() => First.ToString(IsMonth ? "yyyy-MM" : "yyyy-MM-dd", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\s*(?<y>[0-9]{4})-(?<m>[0-9]{1,2})(?:-(?<d>[0-9]{1,2}))?\s*$")]
    private static partial Regex WithYearFirst();

    [GeneratedRegex(
        @"^\s*(?:(?<d>[0-9]{1,2})\.?\s+)?(?<m>jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.?"
            + @"(?:\s+(?<d>[0-9]{1,2})(?:st|nd|rd|th)?\s*,)?"
            + @"(?:\s+(?<d>[0-9]{1,2})(?:st|nd|rd|th)?(?=\s+[0-9]{4}))?,?\s*(?<y>[0-9]{4}|[0-9]{2})\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex WithName();

    [GeneratedRegex(@"^\s*(?<one>[0-9]{1,2})[/.-](?:(?<two>[0-9]{1,2})[/.-])?(?<y>[0-9]{4}|[0-9]{2})\s*$")]
    private static partial Regex InNumbers();
}
