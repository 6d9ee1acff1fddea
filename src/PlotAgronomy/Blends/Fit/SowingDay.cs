using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>How a sowing day stands to the published planting dates of one kind.</summary>
/// <param name="Code">Code of the caution; null on a day that some publication allows.</param>
/// <param name="Days">Days to the nearest published date; 0 on such a day.</param>
internal readonly record struct SowingDay(string? Code, int Days)
{
    /// <summary>A day soon after the last date is late and one soon before the first is early, whichever is nearer; beyond both
    /// it is out of season.</summary>
    internal static SowingDay Of(DateOnly day, ImmutableArray<PlantingWindow> windows)
    {
        if (windows.IsEmpty || windows.Any(w => w.Allows(day)))
        {
            return new(null, 0);
        }

        int late = int.MaxValue,
            early = int.MaxValue;
        foreach (var window in windows.Where(w => w.Rule != PlantingRule.NotRecommended))
        {
            for (int year = day.Year - 1; year <= day.Year + 1; year++)
            {
                late = Nearer(late, day.DayNumber - window.LastDay(year)?.DayNumber);
                early = Nearer(early, window.FirstDay(year)?.DayNumber - day.DayNumber);
            }
        }

        int days = Math.Min(late, early);
        string code =
            days > BlendConstants.All["out-of-season-days"] ? BlendCodes.OutOfSeason
            : late <= early ? BlendCodes.DateLate
            : BlendCodes.DateEarly;
        return new(code, days);
    }

    private static int Nearer(int nearest, int? days) => days > 0 ? Math.Min(nearest, days.Value) : nearest;
}
