using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Calendar;

/// <summary>A task as its table holds it.</summary>
internal sealed class TaskRow
{
    private static readonly Table<TaskRow> Table = new("Calendar/Data/tasks.csv", row => new(row));

    private TaskRow(CsvRow row)
    {
        Id = row.Text("id");
        Order = row.Integer("order");
        Applies = row.Choices<SeasonCondition>("applies");
        Title = new(row.Text("title"));
        Reason = new(row.Text("reason"));
        Spreads = row.Choice<SeasonSpread>("spreads");
        Anchor = row.Choice<TaskAnchor>("anchor");
        LowDays = row.Integer("low_days");
        HighDays = row.Integer("high_days");
        WaitsFor = row.List("waits_for");
        AfterDays = row.Integer("after_days");
        Wear = row.TextOrNull("wear");
        Origin = row.Origin();
    }

    /// <summary>Every task, in the order of the work.</summary>
    internal static ImmutableArray<TaskRow> All => Table.Rows;

    internal string Id { get; }

    internal int Order { get; }

    /// <summary>A task that is one for each pass of seed.</summary>
    internal bool IsSowing => Id is "sow" or "sow-frozen" or "drill";

    /// <summary>All of these must be so.</summary>
    internal ImmutableArray<SeasonCondition> Applies { get; }

    internal TextWithPlaces Title { get; }

    internal TextWithPlaces Reason { get; }

    internal SeasonSpread Spreads { get; }

    internal TaskAnchor Anchor { get; }

    internal int LowDays { get; }

    internal int HighDays { get; }

    internal ImmutableArray<string> WaitsFor { get; }

    /// <summary>Days that must lie between the tasks waited for and this one.</summary>
    internal int AfterDays { get; }

    /// <summary>What is worn for it; null where nothing is needed.</summary>
    internal string? Wear { get; }

    internal Origin Origin { get; }
}
