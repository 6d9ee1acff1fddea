using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>Lime on weakly buffered soil (sand, low CEC): a range with its cap and a careful first dressing, never one exact
/// figure.</summary>
public sealed class WeaklyBufferedLime : IWorkedResult
{
    private readonly double ph;
    private readonly double target;
    private readonly double? capacity;

    private WeaklyBufferedLime(double ph, double target, double? capacity)
    {
        this.ph = ph;
        this.target = target;
        this.capacity = capacity;
    }

    /// <summary>Gets the answers of buffer methods that were laid beside the rule.</summary>
    public required ImmutableArray<LimeNeed> BufferNeeds { get; init; }

    /// <summary>Gets the rule's lower figure before the cap: 1 ton/ac for each 0.4 pH.</summary>
    public required LimeRate RuleLow { get; init; }

    /// <summary>Gets the rule's higher figure before the cap: 1 ton/ac for each 0.3 pH.</summary>
    public required LimeRate RuleHigh { get; init; }

    /// <summary>Gets what Adams-Evans, made for such soils, gives from the CEC and pH alone (from memory); null unless it was
    /// named among
    /// the methods and covers this pH and target.</summary>
    public LimeRate? ByCapacity { get; private init; }

    /// <summary>Gets the lower end of the advice: the smaller of the rule's lower figure and <see cref="ByCapacity"/>, without it
    /// of the
    /// rule's lower figure and the first dressing.</summary>
    public required LimeRate AdviceLow { get; init; }

    /// <summary>Gets the upper end of the advice, never above the cap.</summary>
    public required LimeRate AdviceHigh { get; init; }

    /// <summary>Gets the most to put on first.</summary>
    public required LimeRate FirstDressing { get; init; }

    /// <summary>Gets the most to put on at once.</summary>
    public required ApplicationRate MostAtOnce { get; init; }

    /// <summary>Gets the months within which to test again.</summary>
    public required int RetestWithinMonths { get; init; }

    /// <inheritdoc/>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds =>
        [
            .. BufferNeeds
                .SelectMany(n => n.SourceIds)
                .Concat(ByCapacity is null ? [] : [AdamsEvans.Origin.SourceId])
                .Prepend(LimingFormulas.All["weak-lime-rule"].Origin!.SourceId)
                .Distinct(),
        ];

    /// <summary>Says whether a sample calls for the rule.</summary>
    /// <param name="sample">Sample.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <returns>True below the target, up to a target of 7, with a CEC below 7 meq/100 g, or with no CEC on sand and loamy
    /// sand.</returns>
    public static bool AppliesTo(LimeSample sample, double targetPh)
    {
        ArgumentNullException.ThrowIfNull(sample);
        return Guard.Between(targetPh, 4, 9, "pH") <= LimingConstants.All["over-lime-target"]
            && sample.IsWeaklyBuffered
            && sample.WaterPh < targetPh;
    }

    /// <summary>Lays the rule for weakly buffered soil beside the methods named.</summary>
    /// <param name="sample">Sample with a water pH and a CEC below 7 meq/100 g, or without a CEC on sand or loamy sand.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 7.</param>
    /// <param name="methods">Methods to lay beside the rule. Adams-Evans, named here, answers from its buffer when the report has
    /// it, and
    /// from CEC and pH.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A target outside its range.</exception>
    /// <exception cref="ArgumentException">The sample has no water pH, or its soil is not weakly buffered.</exception>
    /// <remarks>Rule (common practice): 1 ton/ac for each 0.3 to 0.4 pH wanted, at most 2 ton/ac. Adams-Evans from CEC and pH:
    /// 0.75 x CEC x (Hs now - Hs at target) ton/ac of ag lime (from memory); beside the rule its ag lime counts pound for
    /// pound
    /// as ground limestone, whose strength the rule does not print. No lime at or above the target.</remarks>
    public static WeaklyBufferedLime For(LimeSample sample, double targetPh, params ReadOnlySpan<LimeMethod> methods)
    {
        ArgumentNullException.ThrowIfNull(sample);
        double target = Guard.Between(targetPh, 4, 7, "pH");
        if (sample.WaterPh is not { } ph || !sample.IsWeaklyBuffered)
        {
            throw new ArgumentException(
                "The rule needs a water pH and a CEC below 7 meq/100 g, or sand or loamy sand without a CEC.",
                nameof(sample)
            );
        }

        var adamsEvans = methods.ToImmutableArray().FirstOrDefault(m => m.Formula is AdamsEvansFormula);
        ImmutableArray<LimeNeed> needs =
        [
            .. methods
                .ToImmutableArray()
                .Where(m => m != adamsEvans || m.Formula.ReadingOf(sample) is not null)
                .Select(m => m.NeedFor(sample, target)),
        ];
        var refusal = adamsEvans is null ? null : AdamsEvans.Refusal(adamsEvans.Name, ph, target);
        double? byCapacity =
            adamsEvans is null || refusal is not null || sample.Capacity is not { } cec ? null
            : ph < target ? AdamsEvans.TonsPerAcre(cec, ph, target)
            : 0;
        double cap = LimingConstants.All["weak-cap"];
        double first = FirstTons;
        double low = LimeSums.WeakRule(target, ph, PhForATonHigh);
        double high = LimeSums.WeakRule(target, ph, PhForATonLow);
        double adviceHigh = LimeSums.WeakMost(cap, high, byCapacity ?? 0);
        int months = (int)LimingConstants.All["weak-retest-months"];
        return new(ph, target, sample.Capacity)
        {
            BufferNeeds = needs,
            RuleLow = Rate(low),
            RuleHigh = Rate(high),
            ByCapacity = byCapacity is { } tons ? Rate(tons, LimeBasis.AdamsEvansAgLime) : null,
            AdviceLow = Rate(LimeSums.Smallest(adviceHigh, low, byCapacity ?? first)),
            AdviceHigh = Rate(adviceHigh),
            FirstDressing = Rate(LimeSums.FirstDressing(first, adviceHigh)),
            MostAtOnce = ApplicationRate.FromShortTonsPerAcre(cap),
            RetestWithinMonths = months,
            Findings = Finding.InOrder([
                FindingCatalog.Create(
                    LimingCodes.WeaklyBufferedRange,
                    ("first", Amounts.Print(first, 1)),
                    ("cap", Amounts.Print(cap, 1)),
                    ("months", Amounts.Print(months, 0))
                ),
                WeakBuffering.CautionFor(sample),
                FindingCatalog.Create(LimingCodes.ExtraEffect),
                .. byCapacity is null ? Array.Empty<Finding>() : [MemoryGate.FindingFor(adamsEvans!.Name, adamsEvans.SourceId)],
                .. refusal is null ? Array.Empty<Finding>() : [refusal],
                .. needs.SelectMany(n => n.Findings),
            ]),
        };

        LimeRate Rate(double tons, LimeBasis? basis = null) =>
            LimeRate.Of(
                ApplicationRate.FromShortTonsPerAcre(tons),
                target,
                Length.FromInches(LimingConstants.All["furrow-slice"]),
                basis ?? LimeBasis.GroundLimestone,
                Institution.Practice
            );
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. BufferNeeds
                .Where(n => n.Rate is not null)
                .Select(n =>
                    LimingFormulas
                        .All["lime-as-labelled"]
                        .Line(n.Rate!.ToString(), ("what", $"By buffer, {n.Method.Name}"))
                        .From(n.Method.Origin)
                ),
            RuleLine("lower figure", RuleLow, PhForATonHigh),
            RuleLine("higher figure", RuleHigh, PhForATonLow),
            .. ByCapacity is null || capacity is not { } cec || ph >= target
                ? []
                : AdamsEvans.RateLines("By CEC, ag lime counted as ground limestone", cec, ph, target),
            LimingFormulas
                .All["weak-lime-most"]
                .Line(
                    $"{Tons(AdviceHigh)} ton/ac",
                    ("most at once", LimeText.Tons(MostAtOnce.PoundsPerAcre)),
                    ("higher figure of the rule", Tons(RuleHigh)),
                    ("by CEC", ByCapacity is { } byCapacity ? Tons(byCapacity) : "0")
                ),
            LimingFormulas
                .All["weak-lime-least"]
                .Line(
                    $"{Tons(AdviceLow)} ton/ac",
                    ("upper end", Tons(AdviceHigh)),
                    ("lower figure of the rule", Tons(RuleLow)),
                    ("other figure", ByCapacity is { } other ? Tons(other) : Amounts.Print(FirstTons, 2))
                ),
            LimingFormulas
                .All["weak-lime-first"]
                .Line(
                    $"{Tons(FirstDressing)} ton/ac; test again within {Amounts.Print(RetestWithinMonths, 0)} months",
                    ("first dressing", Amounts.Print(FirstTons, 2)),
                    ("upper end", Tons(AdviceHigh))
                ),
        ];

    private static double PhForATonLow => LimingConstants.All["weak-ph-per-ton-low"];

    private static double PhForATonHigh => LimingConstants.All["weak-ph-per-ton-high"];

    private static double FirstTons => LimingConstants.All["weak-first-dressing"];

    private WorkedLine RuleLine(string end, LimeRate rate, double phForATon) =>
        LimingFormulas
            .All["weak-lime-rule"]
            .Line(
                $"{Tons(rate)} ton/ac",
                ("end", end),
                ("target", LimeText.Ph(target)),
                ("pH", LimeText.Ph(ph)),
                ("pH for a ton", Amounts.Print(phForATon, 2))
            );

    private static string Tons(LimeRate rate) => LimeText.Tons(rate.OfBasis.PoundsPerAcre);
}
