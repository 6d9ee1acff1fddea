using System.Collections.Immutable;

namespace PlotAgronomy.Calendar;

/// <summary>Holds drafts against what they wait for, and puts the tasks in order.</summary>
internal static class TaskOrder
{
    /// <summary>A draft stands after those it waits for, as its table does.</summary>
    /// <param name="drafts">Drafts.</param>
    /// <param name="known">The day of the sample: what follows from a report is not done before it; null where none was
    /// taken.</param>
    internal static ImmutableArray<SeasonTask> Of(IEnumerable<TaskDraft> drafts, DateOnly? known)
    {
        var done = new List<(TaskDraft Draft, SeasonTask Task)>();
        foreach (var draft in drafts.OrderBy(d => d.Order))
        {
            var before = done.Where(d => draft.Row.WaitsFor.Contains(d.Draft.Row.Id)).Select(d => d.Task).ToList();
            done.Add((draft, TaskOf(draft, before, known)));
        }

        return
        [
            .. done.Select(d => d.Task).OrderBy(t => t.Latest ?? DateOnly.MaxValue).ThenBy(t => t.Order).ThenBy(t => t.Part ?? 0),
        ];
    }

    private static SeasonTask TaskOf(TaskDraft draft, List<SeasonTask> before, DateOnly? known)
    {
        var waited = before.Select(t => t.Earliest?.AddDays(draft.Row.AfterDays)).OfType<DateOnly>();
        DateOnly? from = draft.Days is { From: var own }
            ? waited.Concat(known is { } day && !IsDoneOnItsDay(draft) ? [day] : []).Append(own).Max()
            : null;
        int missing =
            from is { } earliest && draft.Days is { To: var to } && earliest > to ? earliest.DayNumber - to.DayNumber : 0;
        return new()
        {
            Id = draft.Id,
            Title = draft.Row.Title.Filled(draft.Places),
            Reason = draft.Row.Reason.Filled(draft.Places),
            Earliest = from,
            Latest = draft.Days?.To.AddDays(missing),
            WaitsFor = [.. before.Select(t => t.Id)],
            DaysShort = missing,
            Origin = draft.Origin,
            Pass = draft.Row.IsSowing ? draft.Part : null,
            Spreads = draft.Row.Spreads,
            Part = draft.Part,
            Order = draft.Order,
        };
    }

    /// <summary>A date that the owner stated may lie before the sample.</summary>
    private static bool IsDoneOnItsDay(TaskDraft draft) =>
        draft.Row.Anchor is TaskAnchor.Lime or TaskAnchor.Stated or TaskAnchor.Smother
        && draft.Days is var (from, to)
        && from == to;
}
