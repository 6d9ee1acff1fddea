using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Soil;

namespace PlotAgronomy;

/// <summary>What every room makes of a plan, in numbers with their units; sentences are made when they are asked for.</summary>
/// <remarks><see cref="PlanSolver.Solve(PlotPlan)"/> gives them; a field sheet says them.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotAnswers
{
    internal PlotAnswers() { }

    /// <summary>Gets the plan that was solved.</summary>
    public required PlotPlan Plan { get; init; }

    /// <summary>Gets what is to be remarked on the report itself, most serious first.</summary>
    public ImmutableArray<Finding> ReportFindings => SoilPlausibility.Check(Plan.Report, Plan.PlantingDate);

    /// <summary>Gets the nutrients the plot needs.</summary>
    public required PlotNeed Need { get; init; }

    /// <summary>Gets the lime the plot needs, and what to order.</summary>
    public required LimeAnswer Lime { get; init; }

    /// <summary>Gets the fertilizer to buy and spread.</summary>
    public required FertilizerAnswer Fertilizer { get; init; }

    /// <summary>Gets the seed to weigh out and buy, and how crowded the stand will be.</summary>
    public required SeedAnswer Seed { get; init; }

    /// <summary>Gets which kinds share the hopper, and how each pass is set.</summary>
    public required SpreadingAnswer Spreading { get; init; }

    /// <summary>Gets the price of all that is to be bought, in the plan's currency.</summary>
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
        Finding.InOrder(PlanFindings.Of(Plan, ReportFindings, Need, Lime, Fertilizer, Seed, Spreading));

    /// <summary>One price for each line of the shopping list.</summary>
    private IEnumerable<decimal> Costs =>
        [
            .. Lime.Order?.Cost is { } lime ? [lime] : Enumerable.Empty<decimal>(),
            .. Fertilizer.Purchase?.Lines.Select(l => l.Cost) ?? [],
            .. Seed.Kinds.Select(k => k.Cost),
        ];
}
