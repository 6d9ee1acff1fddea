using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>The day of the test that decides before sowing: a month before, not before lime shows, not in frozen
/// ground.</summary>
internal static class TestDay
{
    /// <summary>Null where no test between lime and seed could tell anything, or no lime is known to be at work.</summary>
    internal static DateOnly? Of(PlotPlan plan, LimeOutlook? outlook)
    {
        if (outlook is not { Request: { PlantingOn: var planting, LimedOn: var limed } })
        {
            return null;
        }

        var last = plan.Method == PlantingMethod.FrostSeeded ? BeforeFrost(planting) : planting.AddDays(-Days("test-to-seed"));
        var soonest = limed.AddDays(Days("test-after-lime"));
        var wanted = outlook.TestBeforeSowingOn is { } month && month < last ? month : last;
        return soonest > last ? null
            : soonest > wanted ? soonest
            : wanted;
    }

    /// <summary>The last day before the months of frozen ground in which it is sown.</summary>
    private static DateOnly BeforeFrost(DateOnly planting)
    {
        int first = Days("frost-seeding-first-month");
        return new DateOnly(planting.Month >= first ? planting.Year : planting.Year - 1, first, 1).AddDays(-1);
    }

    private static int Days(string id) => (int)PlanningConstants.All[id];
}
