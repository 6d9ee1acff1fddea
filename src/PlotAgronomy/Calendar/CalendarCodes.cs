namespace PlotAgronomy.Calendar;

/// <summary>The codes of this room's findings and questions, as its tables hold them.</summary>
internal static class CalendarCodes
{
    internal const string AskForecast = "calendar-ask-forecast";
    internal const string AskFrost = "calendar-ask-frost";
    internal const string AskLabel = "calendar-ask-label";
    internal const string AskSmother = "calendar-ask-smother";
    internal const string AskWeeds = "calendar-ask-weeds";
    internal const string AskWhere = "calendar-ask-where";
    internal const string DryThatDay = "calendar-dry-that-day";
    internal const string FrostLeft = "calendar-frost-left";
    internal const string LeadShort = "calendar-lead-short";
    internal const string LimeDays = "calendar-lime-days";
    internal const string LimeDaysShort = "calendar-lime-days-short";
    internal const string LimeLate = "calendar-lime-late";
    internal const string OutsideWindow = "calendar-outside-window";
    internal const string PlaceTaken = "calendar-place-taken";
    internal const string RainThatDay = "calendar-rain-that-day";
    internal const string SmotherLong = "calendar-smother-long";
    internal const string SmotherShort = "calendar-smother-short";
    internal const string TextureTaken = "calendar-texture-taken";
    internal const string TooSour = "calendar-too-sour";
    internal const string TooWet = "calendar-too-wet";
}
