using System.Globalization;

namespace PlotAgronomy.Reference;

/// <summary>A day as it is typed and kept: year, month and day, such as <c>2026-09-12</c>, in every culture.</summary>
internal static class IsoDay
{
    internal static bool TryRead(string text, out DateOnly day) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}
