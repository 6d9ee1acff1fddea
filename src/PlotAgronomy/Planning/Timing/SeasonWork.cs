using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>A task of the season with what is spread in it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonWork
{
    internal SeasonWork() { }

    /// <summary>Gets the number in the season, from 1, in the order of the days.</summary>
    public required int Number { get; init; }

    /// <summary>Gets the task.</summary>
    public required SeasonTask Task { get; init; }

    /// <summary>Gets what is spread in it; none where nothing is, or nothing is known to be bought.</summary>
    public required ImmutableArray<SeasonMaterial> Materials { get; init; }

    /// <summary>Gets how deep lime is worked in or seed laid, from and to; null where nothing is.</summary>
    public required (Length Shallowest, Length Deepest)? Depth { get; init; }

    /// <summary>Gets the numbers of the tasks that must be done before.</summary>
    public required ImmutableArray<int> WaitsFor { get; init; }

    internal static ImmutableArray<SeasonWork> Of(PlotAnswers answers, SeasonCalendar calendar)
    {
        var spread = new SeasonMaterials(answers, calendar);
        var number = calendar.Tasks.Select((t, i) => (t.Id, Number: i + 1)).ToDictionary(t => t.Id, t => t.Number);
        return
        [
            .. calendar.Tasks.Select(task => new SeasonWork
            {
                Number = number[task.Id],
                Task = task,
                Materials = [.. spread.Of(task)],
                Depth = spread.DepthOf(task),
                WaitsFor = [.. task.WaitsFor.Select(id => number[id]).Order()],
            }),
        ];
    }

    /// <summary>The task.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Task.ToString();
}
