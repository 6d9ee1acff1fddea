namespace PlotAgronomy.Calendar;

/// <summary>Turns the anchor of a task into its days.</summary>
internal sealed class TaskDates(SeasonRequest request, SmotherDates? smother)
{
    private static int FullEffect => CalendarConstants.Days("lime-full");

    private DayWindow? SowOn => Day(request.SowOn);

    /// <summary>The days; null where the date they hang on is not known.</summary>
    internal DayWindow? Of(TaskAnchor anchor, int low, int high) =>
        anchor switch
        {
            TaskAnchor.Sowing => SowOn?.Moved(low, high),
            TaskAnchor.Sample => SowOn?.Moved(low, high) is { } days
                ? days with
                {
                    To = request.Chosen.SampleBy ?? days.To,
                }
                : null,
            TaskAnchor.Sown => request.SowingDays == SowOn ? SowOn?.Moved(low, high) : null,
            TaskAnchor.SowingDay => request.SowingDays,
            TaskAnchor.Lime => Day(request.LimeOn) ?? SowOn?.Moved(low, high),
            TaskAnchor.Label => request.Weeds?.LabelDays is { } label ? SowOn?.Moved(low - label, high - label) : null,
            TaskAnchor.Smother => smother?.Sow,
            TaskAnchor.Kill => smother?.Kill,
            TaskAnchor.ThisYear => Coming(low, high),
            TaskAnchor.AfterSowing => Coming(low, high),
            TaskAnchor.NextYear => request.SowOn is { } sown ? DayWindow.OfYear(sown.Year + 1, low, high) : null,
            TaskAnchor.Frost => Day(request.KillingFrost)?.Moved(low, high),
            TaskAnchor.NextSample => Day(request.NextSampleOn)?.Moved(low, high) ?? request.Chosen.NextSample,
            TaskAnchor.Retest => Day(request.Chosen.TestOn) ?? SowOn?.Moved(low, high),
            TaskAnchor.LateTest => Day(request.Chosen.LateTestOn ?? request.LimeOn?.AddDays(FullEffect))?.Moved(low, high),
            TaskAnchor.StandLime => Day(request.LimeOn) ?? Coming(low, high),
            _ => null,
        };

    /// <summary>Where nothing is sown there is still the day that was meant for it.</summary>
    private string Sowing => request.IsSowing ? "sowing" : "the planting day";

    /// <summary>What the days hang on, in words.</summary>
    internal string Words(TaskAnchor anchor, int low, int high) =>
        anchor switch
        {
            TaskAnchor.Sowing or TaskAnchor.Sample or TaskAnchor.Sown or TaskAnchor.Lime or TaskAnchor.Retest => DaysInWords.From(
                low,
                high,
                Sowing
            ),
            TaskAnchor.SowingDay => DaysInWords.From(0, 0, "sowing"),
            TaskAnchor.Label => request.Weeds?.LabelDays is { } days
                ? DaysInWords.From(low - days, high - days, "sowing")
                : "so many days before sowing as the label asks for",
            TaskAnchor.Smother => "counted back from the day it is killed",
            TaskAnchor.Kill => DaysInWords.From(-CalendarConstants.Days("kill-before-seed"), 0, "sowing"),
            TaskAnchor.ThisYear or TaskAnchor.AfterSowing or TaskAnchor.StandLime => DaysInWords.OfYear(low, high),
            TaskAnchor.NextYear => $"{DaysInWords.OfYear(low, high)} of the next year",
            TaskAnchor.Frost => DaysInWords.From(low, high, "the first killing frost"),
            TaskAnchor.LateTest => DaysInWords.From(FullEffect + low, FullEffect + high, "liming"),
            _ => "",
        };

    private static DayWindow? Day(DateOnly? day) => day is { } known ? new(known, known) : null;

    /// <summary>What is left of these days of the year, or those of the next one where they are past.</summary>
    private DayWindow? Coming(int low, int high)
    {
        if (request.SowOn is not { } asked)
        {
            return null;
        }

        var days = DayWindow.OfYear(asked.Year, low, high);
        return days.To < asked ? DayWindow.OfYear(asked.Year + 1, low, high)
            : days.From < asked ? days with { From = asked }
            : days;
    }
}
