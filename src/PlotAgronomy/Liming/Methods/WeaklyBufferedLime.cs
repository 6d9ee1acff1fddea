using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>Lime on weakly buffered soil (sand, low CEC): a range with its cap and a careful first dressing, never one exact
/// figure.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class WeaklyBufferedLime : IWorkedResult
{
    private readonly double ph;
    private readonly LimeMethod? adamsEvans;
    private readonly double low;
    private readonly double high;
    private readonly double? byCapacity;

    private WeaklyBufferedLime(PlotSoil soil, double ph, double targetPh, ImmutableArray<LimeMethod> methods)
    {
        this.ph = ph;
        Soil = soil;
        TargetPh = targetPh;
        Methods = methods;
        adamsEvans = methods.FirstOrDefault(m => m.Formula is AdamsEvansFormula);
        var needs = ImmutableArray.CreateBuilder<LimeNeed>(methods.Length);
        foreach (var method in methods)
        {
            if (method != adamsEvans || method.Formula.ReadingOf(soil) is not null)
            {
                needs.Add(method.NeedFor(soil, targetPh));
            }
        }

        BufferNeeds = needs.DrainToImmutable();
        low = LimeSums.WeakRule(targetPh, ph, PhForATonHigh);
        high = LimeSums.WeakRule(targetPh, ph, PhForATonLow);
        byCapacity =
            adamsEvans is null || !AdamsEvans.Holds(ph, targetPh) || soil.Capacity is not { } cec ? null
            : ph < targetPh ? AdamsEvans.TonsPerAcre(cec, ph, targetPh)
            : 0;
    }

    /// <summary>Gets the soil.</summary>
    public PlotSoil Soil { get; }

    /// <summary>Gets the pH aimed at.</summary>
    public double TargetPh { get; }

    /// <summary>Gets the methods that were named.</summary>
    public ImmutableArray<LimeMethod> Methods { get; }

    /// <summary>Gets the answers of buffer methods that were laid beside the rule.</summary>
    public ImmutableArray<LimeNeed> BufferNeeds { get; }

    /// <summary>Gets the rule's lower figure before the cap: 1 ton/ac for each 0.4 pH.</summary>
    public LimeRate RuleLow => Labelled(low, LimeBasis.GroundLimestone);

    /// <summary>Gets the rule's higher figure before the cap: 1 ton/ac for each 0.3 pH.</summary>
    public LimeRate RuleHigh => Labelled(high, LimeBasis.GroundLimestone);

    /// <summary>Gets what Adams-Evans, made for such soils, gives from the CEC and pH alone (from memory); null unless it was
    /// named among
    /// the methods and covers this pH and target.</summary>
    public LimeRate? ByCapacity => byCapacity is { } tons ? Labelled(tons, LimeBasis.AdamsEvansAgLime) : null;

    /// <summary>Gets the lower end of the advice: the smaller of the rule's lower figure and <see cref="ByCapacity"/>, without it
    /// of the
    /// rule's lower figure and the first dressing.</summary>
    public LimeRate AdviceLow =>
        Labelled(LimeSums.Smallest(AdviceHighTons, low, byCapacity ?? FirstTons), LimeBasis.GroundLimestone);

    /// <summary>Gets the upper end of the advice, never above the cap.</summary>
    public LimeRate AdviceHigh => Labelled(AdviceHighTons, LimeBasis.GroundLimestone);

    /// <summary>Gets the most to put on first.</summary>
    public LimeRate FirstDressing => Labelled(LimeSums.FirstDressing(FirstTons, AdviceHighTons), LimeBasis.GroundLimestone);

    /// <summary>Gets the most to put on at once.</summary>
    public ApplicationRate MostAtOnce { get; } = ApplicationRate.FromShortTonsPerAcre(CapTons);

    /// <summary>Gets the months within which to test again.</summary>
    public int RetestWithinMonths { get; } = (int)LimingConstants.All["weak-retest-months"];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(FindingsInTurn());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. LimingFormulas
                .All["weak-lime-rule"]
                .Origin!.Sources.Concat(BufferNeeds.SelectMany(n => n.Sources))
                .Concat(ByCapacity is null ? [] : AdamsEvans.Origin.Sources)
                .Distinct(),
        ];

    /// <summary>Says whether a soil calls for the rule.</summary>
    /// <param name="soil">Soil.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <returns>True below the target, up to a target of 7, with a CEC below 7 meq/100 g, or with no CEC on sand and loamy
    /// sand.</returns>
    public static bool AppliesTo(PlotSoil soil, double targetPh)
    {
        ArgumentNullException.ThrowIfNull(soil);
        return LimeLimits.TargetPh(targetPh, nameof(targetPh)) <= LimingConstants.All["over-lime-target"]
            && soil.IsWeaklyBuffered
            && soil.PhInWater < targetPh;
    }

    /// <summary>Lays the rule for weakly buffered soil beside the methods named.</summary>
    /// <param name="soil">Soil with a water pH and a CEC below 7 meq/100 g, or without a CEC on sand or loamy sand.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 7.</param>
    /// <param name="methods">Methods to lay beside the rule. Adams-Evans, named here, answers from its buffer when the report has
    /// it, and
    /// from CEC and pH.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A target outside its range.</exception>
    /// <exception cref="ArgumentException">The soil has no water pH, or its soil is not weakly buffered.</exception>
    /// <remarks>Rule (common practice): 1 ton/ac for each 0.3 to 0.4 pH wanted, at most 2 ton/ac. Adams-Evans from CEC and pH:
    /// 0.75 x CEC x (Hs now - Hs at target) ton/ac of ag lime (from memory); beside the rule its ag lime counts pound for
    /// pound
    /// as ground limestone, whose strength the rule does not print. No lime at or above the target.</remarks>
    public static WeaklyBufferedLime For(PlotSoil soil, double targetPh, params ReadOnlySpan<LimeMethod> methods)
    {
        ArgumentNullException.ThrowIfNull(soil);
        double target = Guard.Between(targetPh, LimeLimits.LowestTargetPh, LimingConstants.All["over-lime-target"], "pH");
        if (soil.PhInWater is not { } ph || !soil.IsWeaklyBuffered)
        {
            throw new ArgumentException(
                "The rule needs a water pH and a CEC below 7 meq/100 g, or sand or loamy sand without a CEC.",
                nameof(soil)
            );
        }

        return new(soil, ph, target, [.. methods]);
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
            .. ByCapacity is null || Soil.Capacity is not { } cec || ph >= TargetPh
                ? []
                : AdamsEvans.RateLines("By CEC, ag lime counted as ground limestone", cec, ph, TargetPh),
            LimingFormulas
                .All["weak-lime-most"]
                .Line(
                    $"{Tons(AdviceHigh)} ton/ac",
                    ("most at once", LimeText.Tons(MostAtOnce.PoundsPerAcre)),
                    ("higher figure of the rule", Tons(RuleHigh)),
                    ("by CEC", ByCapacity is { } lime ? Tons(lime) : "0")
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

    private static double CapTons => LimingConstants.All["weak-cap"];

    private double AdviceHighTons => LimeSums.WeakMost(CapTons, high, byCapacity ?? 0);

    private LimeRate Labelled(double tons, LimeBasis basis) =>
        LimeRate.FromBasis(
            ApplicationRate.FromShortTonsPerAcre(tons),
            TargetPh,
            Length.FromInches(LimingConstants.All["furrow-slice"]),
            basis,
            Institution.Practice
        );

    private IEnumerable<Finding> FindingsInTurn()
    {
        yield return FindingCatalog.Create(
            LimingCodes.WeaklyBufferedRange,
            ("first", Amounts.Print(FirstTons, 1)),
            ("cap", Amounts.Print(CapTons, 1)),
            ("months", Amounts.Print(RetestWithinMonths, 0))
        );
        yield return WeakBuffering.CautionFor(Soil);
        yield return FindingCatalog.Create(LimingCodes.ExtraEffect);
        if (adamsEvans is not null)
        {
            if (byCapacity is not null)
            {
                yield return MemoryGate.FindingFor(adamsEvans.Name, adamsEvans.Origin);
            }

            if (!AdamsEvans.Holds(ph, TargetPh))
            {
                yield return AdamsEvans.Refusal(adamsEvans.Name, LimeText.Ph(ph), TargetPh);
            }
        }

        foreach (var finding in BufferNeeds.SelectMany(n => n.Findings))
        {
            yield return finding;
        }
    }

    private WorkedLine RuleLine(string end, LimeRate rate, double phForATon) =>
        LimingFormulas
            .All["weak-lime-rule"]
            .Line(
                $"{Tons(rate)} ton/ac",
                ("end", end),
                ("target", LimeText.Ph(TargetPh)),
                ("pH", LimeText.Ph(ph)),
                ("pH for a ton", Amounts.Print(phForATon, 2))
            );

    private static string Tons(LimeRate rate) => LimeText.Tons(rate.OfBasis.PoundsPerAcre);

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
