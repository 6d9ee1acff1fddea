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
    internal static bool IsFrostMissing(PlotPlan plan) =>
        plan.Method == PlantingMethod.FrostSeeded
        && plan.PlantingDate.Month > PlanningConstants.All["frost-seeding-last-month"]
        && plan.PlantingDate.Month < PlanningConstants.All["frost-seeding-first-month"];

    /// <summary>The first day after the plan's on which a window opens, in this year or the next; null where none does.</summary>
    internal static DateOnly? NextDay(PlotPlan plan, CropKind kind)
    {
        int[] years = [plan.PlantingDate.Year, plan.PlantingDate.Year + 1];
        var opening = Windows(plan, kind)
            .Where(w => w.Rule == PlantingRule.Window)
            .SelectMany(w => years.Select(w.FirstDay))
            .OfType<DateOnly>()
            .Where(d => d > plan.PlantingDate)
            .ToList();
        return opening.Count == 0 ? null : opening.Min();
    }
}
