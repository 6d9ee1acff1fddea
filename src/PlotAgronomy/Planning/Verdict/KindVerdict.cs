using System.Collections.Immutable;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>Whether one kind of the plan may be sown on its day, and why not.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class KindVerdict
{
    private static readonly EnumWords<KindDecision> DecisionWords = EnumWords<KindDecision>.FromNames();

    private const int MostReasons = 2;

    private readonly PlotPlan plan;
    private readonly ImmutableArray<KindObstacle> obstacles;
    private readonly Lazy<SownKind?> kept;

    internal KindVerdict(PlotPlan plan, PlannedKind planned)
    {
        this.plan = plan;
        Planned = planned;
        obstacles = Telling([.. KindJudge.Of(plan, planned.Kind, planned.Offer.Item)]);
        foreach (var obstacle in obstacles)
        {
            Decision = obstacle.Decision > Decision ? obstacle.Decision : Decision;
        }

        kept = new(() => SeedSolver.WeighAlone(plan, planned));
    }

    /// <summary>Gets the kind and its lot as planned.</summary>
    public PlannedKind Planned { get; }

    /// <summary>Gets what becomes of it.</summary>
    public KindDecision Decision { get; }

    /// <summary>Gets a value indicating whether it is sown now; only then is it weighed out, bought and given a pass.</summary>
    public bool IsSown => Decision == KindDecision.Sow;

    /// <summary>Gets the one or two reasons why it is not sown, the gravest first; none for a kind that is.</summary>
    public ImmutableArray<Finding> Reasons => [.. Stopping.Take(MostReasons)];

    /// <summary>Gets what is to be minded where it is sown all the same.</summary>
    public ImmutableArray<Finding> Cautions => [.. obstacles.Where(o => o.Decision == KindDecision.Sow).Select(o => o.Why)];

    /// <summary>Gets the pH that a new test must show before it is sown; null for kinds that do not wait for one.</summary>
    public double? TestMustShow => Decision == KindDecision.AfterTest ? Planned.Kind.LowestPhOn(plan.Soil) : null;

    /// <summary>Gets the next published day on which it may be sown; null where the season does not stand in its way, or no
    /// later day was read.</summary>
    public DateOnly? NextDay => Decision == KindDecision.NotThisSeason ? SowingSeason.NextDay(plan, Planned.Kind) : null;

    /// <summary>What would be weighed out of a kind that only waits; null where it could not be.</summary>
    internal SownKind? Kept => Decision is KindDecision.AfterTest or KindDecision.OtherSeed ? kept.Value : null;

    /// <summary>Whether its lot is treated and would lie on the surface, whatever else stops it.</summary>
    internal bool IsTreatedOnSurface => obstacles.Any(o => o.Decision == KindDecision.OtherSeed);

    /// <summary>Everything that was found, whether it stops the kind or not.</summary>
    internal IEnumerable<Finding> Findings => obstacles.Select(o => o.Why);

    private IEnumerable<Finding> Stopping =>
        obstacles.Where(o => o.Decision != KindDecision.Sow).OrderByDescending(o => o.Decision).Select(o => o.Why);

    /// <summary>No test lets in what this ground does not bear.</summary>
    private static ImmutableArray<KindObstacle> Telling(ImmutableArray<KindObstacle> all) =>
        all.Any(o => o.Decision == KindDecision.LeaveOut) ? [.. all.Where(o => o.Decision != KindDecision.AfterTest)] : all;

    /// <summary>The kind and the decision.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Planned.Kind.ShortName}: {DecisionWords[Decision]}";
}
