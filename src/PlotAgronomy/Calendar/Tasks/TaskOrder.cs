using System.Collections.Immutable;

namespace PlotAgronomy.Calendar;

/// <summary>Holds drafts against what they wait for, and puts the tasks in order.</summary>
internal static class TaskOrder
{
    /// <summary>From here on in the order of the work the seed is in the ground.</summary>
    private const int AfterSeed = 70;

    /// <summary>A draft stands after those it waits for, as its table does.</summary>
    /// <param name="drafts">Drafts.</param>
    /// <param name="known">The day of the sample: what follows from a report is not done before it; null where none was
    /// taken.</param>
    /// <param name="sown">The day of sowing; null while it is not set.</param>
    internal static ImmutableArray<SeasonTask> Of(IEnumerable<TaskDraft> drafts, DateOnly? known, DateOnly? sown)
    {
        var done = new List<Done>();
        foreach (var draft in drafts.OrderBy(d => d.Order))
        {
            var before = done.Where(d => IsWaitedFor(d.Draft, d.Task, draft)).Select(d => d.Task).ToList();
            done.Add(new(draft, TaskOf(draft, before, known, sown)));
        }

        return Sorted([.. done.Select(d => d.Task)]);
    }

    /// <summary>By the days; what has none stands before the first that comes later in the order of the work.</summary>
    private static ImmutableArray<SeasonTask> Sorted(ImmutableArray<SeasonTask> tasks)
    {
        var sorted = tasks
            .Where(t => t.Latest is not null)
            .OrderBy(t => t.Latest)
            .ThenBy(t => t.Order)
            .ThenBy(t => t.Part ?? 0)
            .ToList();
        foreach (var task in tasks.Where(t => t.Latest is null).OrderBy(t => t.Order).ThenBy(t => t.Part ?? 0))
        {
            int at = sorted.FindIndex(t => t.Order > task.Order);
            sorted.Insert(at < 0 ? sorted.Count : at, task);
        }

        return [.. sorted];
    }

    /// <summary>Nothing of this year waits for days that are past by now and come in the next one; and what stands today's soil
    /// is sown without the test that others wait for, where that comes too late.</summary>
    private static bool IsWaitedFor(TaskDraft before, SeasonTask task, TaskDraft draft)
    {
        bool mayPass = draft.Row.Anchor == TaskAnchor.ThisYear || before.Row.Anchor == TaskAnchor.Retest;
        return draft.Row.WaitsFor.Contains(before.Row.Id) && !(mayPass && task.Earliest > draft.Days?.To);
    }

    private static SeasonTask TaskOf(TaskDraft draft, List<SeasonTask> before, DateOnly? known, DateOnly? sown)
    {
        DateOnly? from = draft.Days?.From;
        if (known > from && !IsDoneOnItsDay(draft))
        {
            from = known;
        }

        foreach (var task in before)
        {
            var free = task.Earliest?.AddDays(draft.Row.AfterDays);
            from = free > from ? free : from;
        }

        int missing =
            from is { } earliest && draft.Days is { To: var to } && earliest > to ? earliest.DayNumber - to.DayNumber : 0;
        var latest = draft.Days?.To.AddDays(missing);
        return new()
        {
            Id = draft.Id,
            Title = draft.Row.Title.Filled(draft.Places),
            Reason = draft.Row.Reason.Filled(draft.Places),
            Earliest = from,
            Latest = latest,
            When = from is { } first && latest is { } last ? CalendarText.Days(first, last) : draft.Words,
            Wear = draft.Row.Wear,
            WaitsFor = [.. before.Select(t => t.Id)],
            DaysShort = missing,
            Origin = draft.Origin,
            Pass = draft.Row.IsSowing ? draft.Part : null,
            Spreads = draft.Row.Spreads,
            Part = draft.Part,
            Order = draft.Order,
            IsAfterSowing = from is { } start && sown is { } seed ? start > seed : draft.Order >= AfterSeed,
        };
    }

    private sealed record Done(TaskDraft Draft, SeasonTask Task);

    /// <summary>A date that the owner stated may lie before the sample.</summary>
    private static bool IsDoneOnItsDay(TaskDraft draft) =>
        draft.Row.Anchor is TaskAnchor.Lime or TaskAnchor.StandLime or TaskAnchor.Stated or TaskAnchor.Smother
        && draft.Days is var (from, to)
        && from == to;
}
