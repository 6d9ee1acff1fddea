using System.Globalization;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Weather;

/// <summary>Reads moments and intervals of ISO 8601: start/end, start/duration, duration/end; NOW stands for either
/// end.</summary>
internal static partial class IsoInterval
{
    private static readonly string[] Formats =
    [
        "yyyy-MM-dd'T'HH:mm:sszzz",
        "yyyy-MM-dd'T'HH:mmzzz",
        "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz",
        "yyyy-MM-dd'T'HH:mm:ss'Z'",
        "yyyy-MM-dd'T'HH:mm'Z'",
        "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF'Z'",
    ];

    private static double LongestDays => WeatherConstants.All["longest-interval"];

    /// <summary>A moment with its offset: a clock without one could be any hour.</summary>
    internal static bool TryMoment(string text, out DateTimeOffset moment) =>
        DateTimeOffset.TryParseExact(
            text,
            Formats,
            CultureInfo.InvariantCulture,
            text.EndsWith('Z') ? DateTimeStyles.AssumeUniversal : DateTimeStyles.None,
            out moment
        ) && IsOfWeather(moment.Year);

    /// <summary>A date as <paramref name="format"/> writes it, within the years of which there is weather.</summary>
    internal static bool TryDate(string text, string format, out DateOnly date) =>
        DateOnly.TryParseExact(text, format, CultureInfo.InvariantCulture, DateTimeStyles.None, out date)
        && IsOfWeather(date.Year);

    internal static bool IsOfWeather(int year) =>
        year >= WeatherConstants.All["earliest-year"] && year <= WeatherConstants.All["latest-year"];

    internal static bool TryRead(string text, DateTimeOffset? now, out TimeSlot slot, out string problem)
    {
        slot = default;
        problem = $"expected an interval such as 2024-02-23T12:00:00+00:00/PT6H, found '{Shortened(text)}'";
        string[] ends = text.Split('/');
        if (ends.Length != 2)
        {
            return false;
        }

        bool hasStart = TryEnd(ends[0], now, out var start);
        bool hasEnd = TryEnd(ends[1], now, out var end);
        if (!hasStart && !(hasEnd && TryMove(end, ends[0], -1, out start)))
        {
            return false;
        }

        if (!hasEnd && !TryMove(start, ends[1], 1, out end))
        {
            return false;
        }

        if (end <= start)
        {
            problem = $"the interval ends before it starts: '{Shortened(text)}'";
            return false;
        }

        if ((end - start).TotalDays > LongestDays)
        {
            problem = FormattableString.Invariant($"the interval is longer than {LongestDays} days: '{Shortened(text)}'");
            return false;
        }

        slot = new(start, end);
        problem = "";
        return true;
    }

    internal static string Shortened(string text) => text.Length <= 60 ? text : $"{text[..60]}...";

    private static bool TryEnd(string text, DateTimeOffset? now, out DateTimeOffset moment)
    {
        moment = now ?? default;
        return text == "NOW" ? now is not null : TryMoment(text, out moment);
    }

    private static bool TryMove(DateTimeOffset from, string duration, int sign, out DateTimeOffset moved)
    {
        moved = from;
        if (Duration().Match(duration) is not { Success: true } match || duration.Length < 3 || duration.EndsWith('T'))
        {
            return false;
        }

        int Part(string name) => match.Groups[name] is { Success: true, Value: var digits } ? sign * Whole(digits) : 0;
        try
        {
            moved = from.AddYears(Part("y"))
                .AddMonths(Part("mo"))
                .AddDays(Part("d"))
                .AddHours(Part("h"))
                .AddMinutes(Part("mi"))
                .AddSeconds(Part("s"));
        }
        catch (ArgumentOutOfRangeException)
        {
            return false;
        }

        return true;
    }

    private static int Whole(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        "^P(?:(?<y>[0-9]{1,4})Y)?(?:(?<mo>[0-9]{1,4})M)?(?:(?<d>[0-9]{1,5})D)?"
            + "(?:T(?:(?<h>[0-9]{1,6})H)?(?:(?<mi>[0-9]{1,6})M)?(?:(?<s>[0-9]{1,7})S)?)?$"
    )]
    private static partial Regex Duration();
}
