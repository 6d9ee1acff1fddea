using System.Collections.Immutable;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>May it be sown: one verdict for the plot and one for each kind, each with its reasons and what would change
/// it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotVerdict
{
    private static readonly EnumWords<PlotDecision> DecisionWords = EnumWords<PlotDecision>.FromNames();

    private readonly PlotPlan plan;
    private readonly Func<ImmutableArray<Finding>> together;
    private readonly Lazy<ImmutableArray<SubstituteKind>> substitutes;

    internal PlotVerdict(PlotPlan plan, ImmutableArray<KindVerdict> kinds, Func<ImmutableArray<Finding>> together)
    {
        this.plan = plan;
        this.together = together;
        Kinds = kinds;
        substitutes = new(() => SubstituteSearch.For(plan, Held, Expected));
    }

    /// <summary>Gets what is to be done with the plot.</summary>
    public PlotDecision Decision =>
        Kinds.IsEmpty ? PlotDecision.Upkeep
        : Held.IsEmpty ? PlotDecision.Sow
        : !Sown.IsEmpty ? PlotDecision.SowWithout
        : Held.Any(v => v.Decision == KindDecision.AfterTest) ? PlotDecision.LimeAndWait
        : PlotDecision.NothingThisSeason;

    /// <summary>Gets the verdict on each kind, in the order of the plan; none where the plan sows nothing.</summary>
    public ImmutableArray<KindVerdict> Kinds { get; }

    /// <summary>Gets the kinds that are sown.</summary>
    public ImmutableArray<KindVerdict> Sown => [.. Kinds.Where(v => v.IsSown)];

    /// <summary>Gets the kinds that are not sown now.</summary>
    public ImmutableArray<KindVerdict> Held => [.. Kinds.Where(v => !v.IsSown)];

    /// <summary>Gets the shares of a full stand of the kinds that are not sown; the rates of the others are not raised to fill
    /// them.</summary>
    public double ShareMissing => Held.Sum(v => v.Planned.Share.ShareOfFullStand);

    /// <summary>The same in percent.</summary>
    internal double PercentMissing => ShareMissing * 100;

    /// <summary>Gets the pH to expect on the day of sowing; null where no lime is ordered for a known day.</summary>
    public LimeOutlook? Expected { get; init; }

    /// <summary>The day of the test that decides before sowing; null where none can tell anything by then.</summary>
    internal DateOnly? TestOn => TestDay.Of(plan, Expected);

    /// <summary>Gets the kinds that wait for a test which the lime may bring to their pH by the day of sowing.</summary>
    public ImmutableArray<KindVerdict> WithinReach => [.. Waiting.Where(v => !IsOutOfReach(v))];

    /// <summary>Gets the kinds that wait for a test, and whose pH is not to be expected by the day of sowing.</summary>
    public ImmutableArray<KindVerdict> OutOfReach => [.. Waiting.Where(IsOutOfReach)];

    /// <summary>Gets what is to be minded of the kinds beside one another: seasons, companions, dates in common.</summary>
    public ImmutableArray<Finding> Together => together();

    /// <summary>Gets at most three kinds that would stand where others drop out.</summary>
    public ImmutableArray<SubstituteKind> Substitutes => substitutes.Value;

    /// <summary>Gets every reason and caution, most serious first.</summary>
    public ImmutableArray<Finding> Findings => Finding.InOrder([.. Kinds.SelectMany(v => v.Findings), .. Together]);

    /// <summary>The reasons and cautions that a verdict is said with; a third reason is not among them.</summary>
    internal IEnumerable<Finding> Said => Kinds.SelectMany(v => v.IsSown ? v.Cautions : v.Reasons).Concat(Together);

    /// <summary>The kinds of which there is more to say than that they are sown.</summary>
    internal IEnumerable<KindVerdict> Spoken => Kinds.Where(v => !v.IsSown || !v.Cautions.IsEmpty);

    /// <summary>What is done to keep up a stand; null where something is to be sown.</summary>
    internal StandUpkeep? Upkeep => StandUpkeep.Of(plan);

    private IEnumerable<KindVerdict> Waiting => Held.Where(v => v.Decision == KindDecision.AfterTest);

    /// <summary>Without a forecast, or a test in time, nothing is to be expected.</summary>
    private bool IsOutOfReach(KindVerdict kind) =>
        Expected is null || TestOn is null || Tolerance.IsBelow(Expected.ExpectedPhHigh, kind.TestMustShow!.Value);

    /// <summary>The decision and the kinds.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{DecisionWords[Decision]}: {string.Join("; ", Kinds)}";
}
