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

        int[] years = [day.Year - 1, day.Year, day.Year + 1];
        var open = windows.Where(w => w.Rule != PlantingRule.NotRecommended).ToList();
        int late = Nearest(open.SelectMany(w => years.Select(w.LastDay)).Select(d => day.DayNumber - d?.DayNumber));
        int early = Nearest(open.SelectMany(w => years.Select(w.FirstDay)).Select(d => d?.DayNumber - day.DayNumber));
        int days = Math.Min(late, early);
        string code =
            days > BlendConstants.All["out-of-season-days"] ? BlendCodes.OutOfSeason
            : late <= early ? BlendCodes.DateLate
            : BlendCodes.DateEarly;
        return new(code, days);
    }

    private static int Nearest(IEnumerable<int?> days) => days.Where(d => d > 0).Min() ?? int.MaxValue;
}
