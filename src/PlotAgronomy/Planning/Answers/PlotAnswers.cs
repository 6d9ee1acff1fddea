using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;

namespace PlotAgronomy;

/// <summary>What every room makes of a plan, in numbers with their units; sentences are made when they are asked for.</summary>
/// <remarks><see cref="PlanSolver.Solve(PlotPlan)"/> gives them; a field sheet says them.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotAnswers
{
    internal PlotAnswers() { }

    /// <summary>Gets the plan that was solved.</summary>
    public required PlotPlan Plan { get; init; }

    /// <summary>Gets what the report says by itself.</summary>
    public required Answer<SoilAnswer> Soil { get; init; }

    /// <summary>Gets the nutrients the plot needs; open where the system has no figure from this report.</summary>
    public required Answer<PlotNeed> Need { get; init; }

    /// <summary>Gets the lime the plot needs, and what to order; open without a rate, none needed at a rate of zero.</summary>
    public required Answer<LimeAnswer> Lime { get; init; }

    /// <summary>Gets the fertilizer to buy and spread; open while the need is, or where none is on offer.</summary>
    public required Answer<FertilizerAnswer> Fertilizer { get; init; }

    /// <summary>Gets the seed to weigh out and buy, how crowded the stand will be and whether the kinds fit; open where a kind
    /// has no seed count, or nobody publishes a rate for this way of sowing.</summary>
    public required Answer<SeedAnswer> Seed { get; init; }

    /// <summary>Gets which kinds share the hopper, and how each pass is set; open while the seed is.</summary>
    public required Answer<SpreadingAnswer> Spreading { get; init; }

    /// <summary>Gets every question that stands open, each once, in the order of the work.</summary>
    public ImmutableArray<OpenQuestion> Questions =>
        [
            .. Soil
                .Questions.Concat(Lime.Questions)
                .Concat(Need.Questions)
                .Concat(Fertilizer.Questions)
                .Concat(Seed.Questions)
                .Concat(Spreading.Questions)
                .Distinct(),
        ];

    /// <summary>Gets the price of all that is known to be bought, in the plan's currency.</summary>
    public decimal TotalCost => Costs.Sum();

    /// <summary>Gets the sum behind <see cref="TotalCost"/>.</summary>
    public WorkedLine TotalCostLine =>
        PlanningFormulas
            .All["plan-shopping-total"]
            .Line(
                $"{string.Join(" + ", Costs.Select(c => Plan.Currency.Print(c).Split(' ')[0]))} = "
                    + Plan.Currency.Print(TotalCost)
            );

    /// <summary>Gets everything the rooms remark on, most serious first.</summary>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            PlanFindings
                .Of(Plan, Soil.Value, Need.Told, Lime.Told, Fertilizer, Seed.OrNull(), Spreading)
                .Concat(Seed.State == AnswerState.Open ? Seed.Findings : [])
        );

    /// <summary>What is done to sow, in order: each pass where seed is spread, with its kinds that the soil is still too sour
    /// for.</summary>
    internal IEnumerable<(SeedingAction Action, SowingPass? Pass, ImmutableArray<HeldKind> HeldBack)> SowingSteps
    {
        get
        {
            if (!Spreading.TryGet(out var spreading))
            {
                return [];
            }

            return spreading
                .Groups.Steps.Select(
                    (SeedingAction, SowingPass?, ImmutableArray<HeldKind>) (step) =>
                        step.Action == SeedingAction.Spread && spreading.Passes.Single(p => p.Group == step.Group) is var pass
                            ? (step.Action, pass, HeldOf(pass))
                            : (step.Action, null, [])
                )
                .Where(step => IsNeeded(step.Item1, spreading));
        }
    }

    /// <summary>The passes of which the soil is still too sour for every kind.</summary>
    internal ImmutableArray<SowingPass> PassesHeldBack => [.. (Spreading.OrNull()?.Passes ?? []).Where(IsHeldBack)];

    private bool IsHeldBack(SowingPass pass) => HeldOf(pass).Length == pass.Kinds.Length;

    private ImmutableArray<HeldKind> HeldOf(SowingPass pass) =>
        [.. pass.Kinds.Where(k => Lime.Told.HoldBack.Any(h => h.Id == k.Planned.Kind.Id)).Select(k => HeldKind.Of(k, Plan.Soil))];

    /// <summary>Nothing is covered where all large seed is held back, and nothing pressed in where there is no small
    /// seed.</summary>
    private bool IsNeeded(SeedingAction action, SpreadingAnswer spreading) =>
        action == SeedingAction.Spread
        || spreading.Passes.Any(p => p.Group.SownBeforeCovering == (action == SeedingAction.Cover) && !IsHeldBack(p));

    /// <summary>One price for each line of the shopping list.</summary>
    private IEnumerable<decimal> Costs =>
        [
            .. Lime.Told.Order.OrNull()?.Cost is { } lime ? [lime] : Enumerable.Empty<decimal>(),
            .. Fertilizer.Told.Purchase.OrNull()?.Lines.Select(l => l.Cost) ?? [],
            .. Seed.OrNull()?.Kinds.Select(k => k.Cost) ?? [],
        ];

    /// <summary>The plan and how its questions stand.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Plan}: {Plan.Currency.Print(TotalCost)}, {Amounts.Print(Questions.Length, 0)} open question(s)";
}
