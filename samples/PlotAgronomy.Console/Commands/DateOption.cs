using System.Globalization;

namespace PlotAgronomy.Sample.Commands;

/// <summary>A day that an option names.</summary>
internal static class DateOption
{
    /// <summary>Reads it, or says in one line what is wrong.</summary>
    internal static bool TryRead(string? text, string option, Action<string> say, out DateOnly day)
    {
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day))
        {
            return true;
        }

        say($"{option}: expected a date, year first, as in 2026-12-31, found '{text}'");
        return false;
    }
}
