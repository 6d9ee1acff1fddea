using System.Collections.Immutable;

namespace PlotAgronomy.Calendar;

/// <summary>What a day of waiting costs beside what going costs: the same parts for a day and the next.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class WaitingCost
{
    internal WaitingCost() { }

    /// <summary>Gets the day on which one goes or waits.</summary>
    public required DecisionDay Go { get; init; }

    /// <summary>Gets the day after.</summary>
    public required DecisionDay Wait { get; init; }

    /// <summary>Gets the kinds that drop out by waiting.</summary>
    public required ImmutableArray<CropKind> DropsOut { get; init; }

    /// <summary>Gets the kinds that sprout and dry when one goes.</summary>
    public ImmutableArray<CropKind> DriesWhenSown => Drying(Go);

    /// <summary>Gets the kinds that sprout and dry when one waits a day.</summary>
    public ImmutableArray<CropKind> DriesAfterWaiting => Drying(Wait);

    private static ImmutableArray<CropKind> Drying(DecisionDay day) =>
        [.. day.Kinds.Where(k => k.Day.Emergence.DryDaysAfterSprouting > 0).Select(k => k.Kind)];

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"enough rain {Go.Enough} on {CalendarText.Date(Go.Date)}, {Wait.Enough} on {CalendarText.Date(Wait.Date)}";
}
