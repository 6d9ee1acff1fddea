using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Several plots that are bought for together.</summary>
/// <remarks>Each plot is solved by itself; what they buy of the same product is then put together, so that the rest of one plot's
/// bag goes to another. Which product each plot takes is not chosen anew.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PropertyPlan
{
    private PropertyPlan(ImmutableArray<PlotAnswers> plots)
    {
        Plots = plots;
        Purchases =
        [
            .. plots
                .SelectMany(p => PlotNeeds.Of(p).Select(n => (Need: n, p.Plan.Plot)))
                .GroupBy(n => n.Need.Key)
                .Select(g => new SharedPurchase
                {
                    Name = g.Key.Name,
                    Package = g.First().Need.Package,
                    Price = g.Key.Price,
                    Needs = [.. g.GroupBy(n => n.Plot).Select(p => (p.Key, Mass.FromPounds(p.Sum(n => n.Need.Pounds))))],
                    Available = g.Min(n => n.Need.Available),
                }),
        ];
    }

    /// <summary>Gets the answers of each plot, in the order of the plans.</summary>
    public ImmutableArray<PlotAnswers> Plots { get; }

    /// <summary>Gets what is bought, each product once.</summary>
    public ImmutableArray<SharedPurchase> Purchases { get; }

    /// <summary>Each plot with what it takes of the shared packages.</summary>
    internal ImmutableArray<(PlotAnswers Plot, ImmutableArray<(string Name, Mass Mass)> Takes)> Shares =>
        [
            .. Plots.Select(a =>
                (
                    a,
                    Purchases
                        .SelectMany(p => p.Needs.Where(n => n.Plot == a.Plan.Plot).Select(n => (p.Name, n.Mass)))
                        .ToImmutableArray()
                )
            ),
        ];

    /// <summary>Gets the one currency of all prices.</summary>
    public Currency Currency => Plots[0].Plan.Currency;

    /// <summary>Gets the cost of everything when the plots share.</summary>
    public decimal Cost => Purchases.Sum(p => p.Cost);

    /// <summary>Gets what sharing saves.</summary>
    public decimal Saved => Purchases.Sum(p => p.Saved);

    /// <summary>Gets the walks of all plots by day, on each day lime before fertilizer before seed; days that are not set
    /// last.</summary>
    public ImmutableArray<(DateOnly? Day, Plot Plot, PlannedWalk Walk)> Work =>
        [
            .. Plots
                .SelectMany(a => a.Field.Walks.Select(w => (Day: DayOf(a.Plan, w), a.Plan.Plot, Walk: w)))
                .OrderBy(w => w.Day ?? DateOnly.MaxValue)
                .ThenBy(w =>
                    w.Walk.Seed is not null ? 2
                    : w.Walk.Lime is not null ? 0
                    : 1
                ),
        ];

    /// <summary>Leaves out plots until the rest costs no more than a budget: first the one that costs most for what it feeds, an
    /// acre and a season. The last plot stays.</summary>
    /// <param name="budget">Most that may be spent, in the currency of the plans.</param>
    /// <returns>What remains, and the plots that were left out in turn, each with what that saves.</returns>
    public (PropertyPlan Kept, ImmutableArray<(PlotAnswers Plot, decimal Saves)> Cut) Within(decimal budget)
    {
        var kept = this;
        var cut = ImmutableArray.CreateBuilder<(PlotAnswers, decimal)>();
        while (kept.Cost > budget && kept.Plots.Length > 1)
        {
            var before = kept;
            var dearest = kept.Plots.MaxBy(p => PlotFeeding.CostOfFeeding(p, before.Cost - before.Without(p).Cost))!;
            kept = kept.Without(dearest);
            cut.Add((dearest, before.Cost - kept.Cost));
        }

        return (kept, cut.ToImmutable());
    }

    private PropertyPlan Without(PlotAnswers plot) => new([.. Plots.Where(p => p != plot)]);

    private static DateOnly? DayOf(PlotPlan plan, PlannedWalk walk) => walk.Lime is null ? plan.PlantingDate : plan.LimeDate;

    /// <summary>Puts plans together.</summary>
    /// <param name="plans">Plans, one a plot.</param>
    /// <returns>The property.</returns>
    /// <exception cref="ArgumentException">No plan, two of one plot, or prices in different currencies.</exception>
    public static PropertyPlan Of(params IReadOnlyList<PlotPlan> plans)
    {
        Guard.NotEmpty(plans);
        if (plans.GroupBy(p => p.Plot.Name).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"Two plans are of the plot '{twice.Key}'.", nameof(plans));
        }

        return plans.Select(p => p.Currency.Code).Distinct().Count() == 1
            ? new([.. plans.Select(p => p.Solve())])
            : throw new ArgumentException(
                $"The plans have prices in {string.Join(" and ", plans.Select(p => p.Currency.Code).Distinct())}.",
                nameof(plans)
            );
    }

    /// <summary>How many plots and what they cost.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Plots.Length, 0)} plots: {Currency.Print(Cost)}";
}
