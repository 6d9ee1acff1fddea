using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Several plots that are bought for together.</summary>
/// <remarks>The plots are solved in turn: each takes first what is in the shed of any of them, and what is left in bags that were
/// opened for those before it. What they buy of the same product is put together. Where that comes dearer than each plot by
/// itself with its bags shared, this is taken.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PropertyPlan
{
    private readonly OfferParts parts;
    private readonly ImmutableHashSet<(string Plot, CutSort Part)> leftOut;

    private PropertyPlan(
        ImmutableArray<PlotAnswers> plots,
        OfferParts parts,
        ImmutableHashSet<(string Plot, CutSort Part)> leftOut
    )
    {
        this.parts = parts;
        this.leftOut = leftOut;
        Plots = plots;
        Purchases =
        [
            .. plots
                .SelectMany(p => new PlotNeeds(p, leftOut, parts).All.Select(n => (Need: n, p.Plan.Plot)))
                .GroupBy(n => n.Need.Key)
                .Select(g => new SharedPurchase
                {
                    Name = g.Key.Name,
                    Package = g.First().Need.Package,
                    Price = g.Key.Price,
                    Needs = [.. g.GroupBy(n => n.Plot).Select(p => (p.Key, Mass.FromPounds(p.Sum(n => n.Need.Pounds))))],
                    Available = g.Max(n => n.Need.Available),
                }),
        ];
    }

    /// <summary>Gets the answers of each plot, in the order of the plans.</summary>
    public ImmutableArray<PlotAnswers> Plots { get; }

    /// <summary>Gets what is bought, each product once.</summary>
    public ImmutableArray<SharedPurchase> Purchases { get; }

    /// <summary>Each plot with what it takes of the shared packages.</summary>
    internal ImmutableArray<(PlotAnswers Plot, decimal Alone, ImmutableArray<(string Name, Mass Mass)> Takes)> Shares =>
        [
            .. Plots.Select(a =>
                (
                    a,
                    AloneCost(a),
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
                .SelectMany(a =>
                    a.Field.Walks.Where(w => IsWalked(a.Plan, w)).Select(w => (Day: DayOf(a.Plan, w), a.Plan.Plot, Walk: w))
                )
                .OrderBy(w => w.Day ?? DateOnly.MaxValue)
                .ThenBy(w =>
                    w.Walk.Seed is not null ? 2
                    : w.Walk.Lime is not null ? 0
                    : 1
                ),
        ];

    /// <summary>The work with the loads of one product on one plot and day together, lime of the shed too.</summary>
    internal ImmutableArray<(DateOnly? Day, Plot Plot, string What, Mass Load)> Loads =>
        [
            .. Work.GroupBy(w => (w.Day, w.Plot, w.Walk.What, IsLime: w.Walk.Lime is not null))
                .Select(g =>
                    (
                        g.Key.Day,
                        g.Key.Plot,
                        g.Key.What,
                        Mass.FromPounds(
                            g.Sum(w => w.Walk.Pass.Load.Pounds) + (g.Key.IsLime ? FromShed(g.Key.Plot, g.Key.What) : 0)
                        )
                    )
                ),
        ];

    /// <summary>Lime that is there for nothing and goes on with what is bought.</summary>
    private double FromShed(Plot plot, string material) =>
        (Plots.First(p => p.Plan.Plot == plot).Lime.Told.Offers?.FromStock ?? [])
            .Where(s => s.Offer.Item.Name == material)
            .Sum(s => s.Offer.Available!.Value * s.Offer.Package.Pounds);

    /// <summary>Gets what was left out for a budget; none where nothing was.</summary>
    internal ImmutableArray<BudgetCut> Cuts { get; private init; } = [];

    /// <summary>Leaves out what harms least until the rest costs no more than a budget: nitrogen for the stand, lime where every
    /// kind bears the pH of today, kinds without which no season is bare, fertilizer for the sowing, whole plots. Of each sort
    /// goes first what saves most, of plots the one that costs most for what it feeds. The last plot stays.</summary>
    /// <param name="budget">Most that may be spent, in the currency of the plans.</param>
    /// <returns>What remains, and what was left out, the mildest cut first, each with what it saves and what it costs.</returns>
    public (PropertyPlan Kept, ImmutableArray<BudgetCut> Cut) Within(decimal budget)
    {
        var (kept, cut) = new BudgetCutter<PropertyPlan>(p => p.Cost, p => p.Plots, (p, c) => p.Without(c)).Within(this, budget);
        return (new(kept.Plots, parts, kept.leftOut) { Cuts = cut }, cut);
    }

    /// <summary>What a plot pays by itself, without what is left out.</summary>
    internal decimal AloneCost(PlotAnswers plot) => new PropertyPlan([plot], parts, leftOut).Cost;

    internal PropertyPlan Without(BudgetCut cut)
    {
        string name = cut.Plot.Plan.Plot.Name;
        return cut.Sort switch
        {
            CutSort.DearKind => new([.. Plots.Select(p => IsOf(p, name) ? WithoutKind(p, cut.Kind!) : p)], parts, leftOut),
            CutSort.WholePlot => new([.. Plots.Where(p => !IsOf(p, name))], parts, leftOut),
            _ => new(Plots, parts, leftOut.Add((name, cut.Sort))),
        };
    }

    private static bool IsOf(PlotAnswers plot, string name) => plot.Plan.Plot.Name == name;

    /// <summary>The others keep their rates.</summary>
    private static PlotAnswers WithoutKind(PlotAnswers plot, CropKind kind) =>
        (plot.Plan with { Kinds = [.. plot.Plan.Kinds.Where(k => k.Kind.Id != kind.Id)] }).Solve();

    /// <summary>Whether a walk is done: what is left out is not walked with.</summary>
    private bool IsWalked(PlotPlan plan, PlannedWalk walk) =>
        walk.Seed is not null || !leftOut.Contains((plan.Plot.Name, walk.Lime is null ? CutSort.Fertilizer : CutSort.Lime));

    private int Missing => Purchases.Sum(p => p.Missing);

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

        OneCurrency.Of(plans, nameof(plans));
        return Cheapest(plans);
    }

    private static PropertyPlan Cheapest(IReadOnlyList<PlotPlan> plans)
    {
        var apart = new PropertyPlan([.. plans.Select(p => p.Solve())], new(), []);
        var (plots, parts) = SharedShed.Solve(plans);
        var inTurn = new PropertyPlan(plots, parts, []);
        return (inTurn.Missing, inTurn.Cost).CompareTo((apart.Missing, apart.Cost)) <= 0 ? inTurn : apart;
    }

    /// <summary>How many plots and what they cost.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Plots.Length, 0)} plots: {Currency.Print(Cost)}";
}
