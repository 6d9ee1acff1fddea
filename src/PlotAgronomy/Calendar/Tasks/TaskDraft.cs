namespace PlotAgronomy.Calendar;

/// <summary>A task before it is held against what it waits for.</summary>
/// <param name="Row">Its row; several drafts may share one.</param>
/// <param name="Part">What tells it from others of its row, such as a pass; null where it is alone.</param>
/// <param name="Days">Its days; null where they are not known.</param>
/// <param name="Places">What fills the places of its texts.</param>
/// <param name="Origin">Where its interval stands.</param>
internal sealed record TaskDraft(TaskRow Row, int? Part, DayWindow? Days, (string Place, string Value)[] Places, Origin Origin)
{
    /// <summary>The order of the work; seed that is pressed in goes on once the other is covered.</summary>
    internal int Order { get; init; } = Row.Order;

    /// <summary>What its days hang on, in words.</summary>
    internal string Words { get; init; } = "";

    internal string Id => Part is { } part ? $"{Row.Id}-{CalendarText.Count(part)}" : Row.Id;
}
