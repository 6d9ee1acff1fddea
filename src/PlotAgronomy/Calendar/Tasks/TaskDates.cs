namespace PlotAgronomy.Calendar;

/// <summary>Turns the anchor of a task into its days.</summary>
internal sealed class TaskDates(SeasonRequest request, SmotherDates? smother)
{
    private DayWindow SowOn => new(request.SowOn, request.SowOn);

    /// <summary>The days; null where the date they hang on is not known.</summary>
    internal DayWindow? Of(TaskAnchor anchor, int low, int high) =>
        anchor switch
        {
            TaskAnchor.Sowing => SowOn.Moved(low, high),
            TaskAnchor.SowingDay => new(request.From, request.To),
            TaskAnchor.Lime => request.LimeOn is { } limed ? new(limed, limed) : SowOn.Moved(low, high),
            TaskAnchor.Label => request.Weeds?.LabelDays is { } days ? SowOn.Moved(low - days, high - days) : null,
            TaskAnchor.Smother => smother?.Sow,
            TaskAnchor.Kill => smother?.Kill,
            TaskAnchor.ThisYear => Coming(low, high),
            TaskAnchor.AfterSowing => Coming(low, high),
            TaskAnchor.NextYear => DayWindow.OfYear(request.SowOn.Year + 1, low, high),
            TaskAnchor.Frost => request.KillingFrost is { } frost ? new DayWindow(frost, frost).Moved(low, high) : null,
            TaskAnchor.NextSample => request.NextSampleOn is { } next ? new DayWindow(next, next).Moved(low, high) : null,
            _ => null,
        };

    /// <summary>These days of the year, or of the next one where they are past.</summary>
    private DayWindow Coming(int low, int high)
    {
        var days = DayWindow.OfYear(request.SowOn.Year, low, high);
        return days.To >= request.SowOn ? days : DayWindow.OfYear(request.SowOn.Year + 1, low, high);
    }
}
