using System.Globalization;

namespace PlotAgronomy.Weather;

/// <summary>Dates and counts as findings and working print them.</summary>
internal static class DateText
{
    internal static string Of(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    internal static string Of(DateTimeOffset moment) => moment.ToString("yyyy-MM-dd HH:mm zzz", CultureInfo.InvariantCulture);

    internal static string Of(int count) => count.ToString(CultureInfo.InvariantCulture);
}
