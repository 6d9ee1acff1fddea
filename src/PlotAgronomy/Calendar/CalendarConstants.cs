using PlotAgronomy.Reference;

namespace PlotAgronomy.Calendar;

/// <summary>The published and customary intervals of this room that are no task, by id.</summary>
internal static class CalendarConstants
{
    internal static ConstantTable All { get; } = new("Calendar/Data/constants.csv");

    internal static int Days(string id) => (int)All[id];
}
