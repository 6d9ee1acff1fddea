using System.Collections.Immutable;
using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>One change from last year's plan to the next, with its reason and the entries of the book it rests on.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlanChange
{
    internal PlanChange() { }

    /// <summary>Gets what is changed, such as <c>rate of crimson clover</c>.</summary>
    public required string What { get; init; }

    /// <summary>Gets how it stood, in words.</summary>
    public required string From { get; init; }

    /// <summary>Gets what it becomes, in words; where nothing can be done without the owner, what he has to decide.</summary>
    public required string To { get; init; }

    /// <summary>Gets why, in words.</summary>
    public required string Reason { get; init; }

    /// <summary>Gets the entries of the book it rests on; none where it rests on the calendar alone.</summary>
    public required ImmutableArray<BookEntry> Entries { get; init; }

    /// <summary>Gets a value indicating whether the plan is changed; else it is only told, for the owner to decide.</summary>
    public bool IsMade => Apply is not null;

    /// <summary>Gets a value indicating whether it may be left out: a plan without it would be as good a plan.</summary>
    public bool IsChoice { get; init; }

    internal Func<PlotPlan, PlotPlan>? Apply { get; init; }

    /// <summary>What is changed and how.</summary>
    /// <returns>Text such as <c>day of planting: 2026-09-12 becomes 2027-09-12</c>.</returns>
    public override string ToString() => IsMade ? $"{What}: {From} becomes {To}" : $"{What}: {To}";
}
