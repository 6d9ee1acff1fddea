using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>The published planting dates of a kind where the plot lies.</summary>
internal static class SowingSeason
{
    /// <summary>None while the region is not known, or where none were read for it.</summary>
    internal static ImmutableArray<PlantingWindow> Windows(PlotPlan plan, CropKind kind) =>
        plan.Plot.PlantingRegion is { } region ? PlantingWindow.Published(kind, region) : [];

    /// <summary>Whether seed is to be spread on frozen ground in a month that has none, wherever the plot lies.</summary>
    internal static bool IsFrostMissing(PlantingMethod? method, DateOnly planting) =>
        method == PlantingMethod.FrostSeeded
        && planting.Month > PlanningConstants.All["frost-seeding-last-month"]
        && planting.Month < PlanningConstants.All["frost-seeding-first-month"];

    /// <summary>The published dates of a kind that hold the day of the plan; none while day or region is not known.</summary>
    internal static ImmutableArray<PlantingWindow> WindowsOnDay(PlotPlan plan, CropKind kind) =>
        plan.PlantingDate is { } day ? [.. Windows(plan, kind).Where(w => w.Allows(day))] : [];

    /// <summary>The first day after the plan's on which a window opens, in this year or the next; null where none does.</summary>
    internal static DateOnly? NextDay(PlotPlan plan, CropKind kind)
    {
        if (plan.PlantingDate is not { } planned)
        {
            return null;
        }

        int[] years = [planned.Year, planned.Year + 1];
        var opening = Windows(plan, kind)
            .Where(w => w.Rule == PlantingRule.Window)
            .SelectMany(w => years.Select(w.FirstDay))
            .OfType<DateOnly>()
            .Where(d => d > planned)
            .ToList();
        return opening.Count == 0 ? null : opening.Min();
    }
}
