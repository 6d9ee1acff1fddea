using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Planning;

/// <summary>Which kinds share the hopper, and how each pass is set.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SpreadingAnswer
{
    private readonly PlotPlan plan;
    private readonly PlannedSpreader spreader;

    internal SpreadingAnswer(PlotPlan plan, PlannedSpreader spreader)
    {
        this.plan = plan;
        this.spreader = spreader;
    }

    /// <summary>Gets the kinds sorted by the size of their seed.</summary>
    public required SizeGrouping Groups { get; init; }

    /// <summary>Gets the passes, in the order of the work.</summary>
    public required ImmutableArray<SowingPass> Passes { get; init; }

    /// <summary>Gets what one hopper with all kinds mixed would do, as two bounds: why there are several passes. Not needed for
    /// one kind; open until a timed run of every kind at one gate is known.</summary>
    public Answer<MixedHopper> AllInOneHopper =>
        SpreadingParts.AllInOneHopper(plan, spreader, [.. Passes.SelectMany(p => p.Kinds)]);

    /// <summary>What stands open here.</summary>
    internal IEnumerable<OpenQuestion> Questions =>
        [
            .. Passes.SelectMany(p => p.Setting.Questions),
            .. plan.Spreader is { IsHopperOpen: true, HopperWeight: { } weight }
                ? [SpreadingQuestions.Hopper(weight)]
                : Array.Empty<OpenQuestion>(),
            .. Passes.SelectMany(p => p.Laid.Questions).Distinct(),
        ];

    /// <summary>The results that no section of the sheet tells.</summary>
    internal IEnumerable<IWorkedResult?> WithoutSection => [.. Passes.Select(p => p.Setup), AllInOneHopper.OrNull()];

    /// <summary>The passes.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Passes.IsEmpty ? "no passes" : string.Join("; ", Passes);
}
