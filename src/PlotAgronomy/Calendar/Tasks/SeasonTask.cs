using System.Collections.Immutable;

namespace PlotAgronomy.Calendar;

/// <summary>One task of the season: what, why, from when to when, and what must be done before.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonTask
{
    internal SeasonTask() { }

    /// <summary>Gets the id, its own in the season and the same every time: <c>lime-worked-in</c>, <c>sow-2</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Gets what is to be done, as a sentence.</summary>
    public required string Title { get; init; }

    /// <summary>Gets why, or why then.</summary>
    public required string Reason { get; init; }

    /// <summary>Gets the earliest day; null where the date it hangs on is not known.</summary>
    public required DateOnly? Earliest { get; init; }

    /// <summary>Gets the latest day, never before the earliest; null where the date it hangs on is not known.</summary>
    public required DateOnly? Latest { get; init; }

    /// <summary>Gets the days in words; where they are not known what they hang on, such as <c>5 to 7 weeks before sowing</c>,
    /// and empty where it is done as it comes.</summary>
    public required string When { get; init; }

    /// <summary>Gets what is worn for it; null where nothing is needed.</summary>
    public required string? Wear { get; init; }

    /// <summary>Gets the tasks that must be done before, by their ids.</summary>
    public required ImmutableArray<string> WaitsFor { get; init; }

    /// <summary>Gets the days that are missing: the earliest day lies so much after the day it is due; 0 where none is.</summary>
    public required int DaysShort { get; init; }

    /// <summary>Gets where the interval stands, and how well that is known.</summary>
    public required Origin Origin { get; init; }

    /// <summary>Gets the number of the pass that is sown, from 1; null for another task.</summary>
    public int? Pass { get; init; }

    /// <summary>Gets what is spread in it.</summary>
    public required SeasonSpread Spreads { get; init; }

    /// <summary>Whether seed is inoculated in it.</summary>
    internal bool IsInoculation => Id == "inoculate";

    /// <summary>Whether it is written down in it what was done.</summary>
    internal bool IsWritingDown => Id.StartsWith("write-down", StringComparison.Ordinal);

    /// <summary>The number of its pass, dose or dressing; null where it is alone.</summary>
    internal int? Part { get; init; }

    /// <summary>The order of the work among tasks of one day.</summary>
    internal int Order { get; init; }

    /// <summary>Whether it comes after the seed, on whatever day.</summary>
    internal bool IsAfterSowing { get; init; }

    /// <summary>The days and the task.</summary>
    /// <returns>Text such as <c>2026-03-01 to 2026-06-01: Spread the lime and work it in.</c></returns>
    public override string ToString() => When.Length > 0 ? $"{When}: {Title}" : Title;
}
