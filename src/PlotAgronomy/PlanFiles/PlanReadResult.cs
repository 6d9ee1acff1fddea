using System.Collections.Immutable;

namespace PlotAgronomy.PlanFiles;

/// <summary>What came of reading a plan file: the plan, or all its mistakes.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlanReadResult
{
    /// <summary>Gets the plan, or null when the file holds any mistake.</summary>
    public PlotPlan? Plan { get; init; }

    /// <summary>Gets every mistake, in the order of the file.</summary>
    public ImmutableArray<PlanProblem> Problems
    {
        get;
        init => field = Guard.Listed(value, nameof(Problems));
    } = [];

    /// <summary>Gets how that was taken which may be typed in more than one way, such as a month where a day is held, or rates in
    /// bushels; none of it is a mistake.</summary>
    public ImmutableArray<PlanProblem> Taken
    {
        get;
        init => field = Guard.Listed(value, nameof(Taken));
    } = [];

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Plan is null ? Amounts.PrintCount(Problems.Length, "mistake") : "a plan without mistakes";
}
