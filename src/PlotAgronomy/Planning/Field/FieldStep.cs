using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>A step of the work with what is to be minded in it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class FieldStep
{
    internal FieldStep() { }

    /// <summary>Gets the task, its days and what is spread in it.</summary>
    public required SeasonWork Work { get; init; }

    /// <summary>Gets a value indicating whether it comes after the day of sowing.</summary>
    public required bool IsAfterSowing { get; init; }

    /// <summary>Gets the warnings and cautions that stand at this step, most serious first.</summary>
    public required ImmutableArray<Finding> Minded { get; init; }

    /// <summary>Gets what must be known before it is done.</summary>
    public required ImmutableArray<OpenQuestion> Asked { get; init; }

    /// <summary>Gets the walks with the spreader in it.</summary>
    public required ImmutableArray<PlannedWalk> Walks { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Work.Task.ToString();
}
