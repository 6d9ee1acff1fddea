using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>Lime on weakly buffered soil (sand, low CEC): a range with its cap and a careful first dressing, never one exact figure.</summary>
public sealed class WeaklyBufferedLime : IWorkedResult
{
    private readonly double ph;
    private readonly double target;
    private readonly double capacity;

    private WeaklyBufferedLime(double ph, double target, double capacity)
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

    /// <summary>Gets what a buffer method made for such soils gives from the CEC and pH alone (Adams-Evans, from memory).</summary>
    public required LimeRate ByCapacity { get; init; }

    /// <summary>Gets the lower end of the advice.</summary>
    public required ApplicationRate AdviceLow { get; init; }

    /// <summary>Gets the upper end of the advice, never above the cap.</summary>
    public required ApplicationRate AdviceHigh { get; init; }

    /// <summary>Gets the most to put on first.</summary>
    public required ApplicationRate FirstDressing { get; init; }

    /// <summary>Gets the most to put on at once.</summary>
    public required ApplicationRate MostAtOnce { get; init; }

    /// <summary>Gets the months within which to test again.</summary>
    public required int RetestWithinMonths { get; init; }

    /// <inheritdoc/>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => ["PRACTICE", "LIME-AE1", .. BufferNeeds.SelectMany(n => n.SourceIds).Where(id => id is not ("PRACTICE" or "LIME-AE1")).Distinct()];

    /// <summary>Lays the rule for weakly buffered soil beside the buffer methods.</summary>
    /// <param name="sample">Sample with a water pH and a CEC below 7 meq/100 g.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 7.</param>
    /// <param name="bufferMethods">Buffer methods to lay beside the rule.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A target outside its range.</exception>
    /// <exception cref="ArgumentException">The sample has no water pH, no CEC, or a CEC that is not below 7 meq/100 g.</exception>
    /// <remarks>Rule (PRACTICE): 1 ton/ac for each 0.3 to 0.4 pH wanted, at most 2 ton/ac. Adams-Evans from CEC and pH:
    /// 0.75 x CEC x (Hs now - Hs at target) ton/ac of ag lime (LIME-AE1, memory). No lime at or above the target.</remarks>
    public static WeaklyBufferedLime For(LimeSample sample, double targetPh, params ReadOnlySpan<LimeMethod> bufferMethods)
    {
        ArgumentNullException.ThrowIfNull(sample);
        double target = Guard.Between(targetPh, 4, 7, "pH");
        if (sample.WaterPh is not { } ph || sample.Capacity is not { } capacity || capacity >= LimeConstants.Of("weak-cec-limit"))
        {
            throw new ArgumentException("The rule needs a water pH and a CEC below 7 meq/100 g.", nameof(sample));
        }

        var needs = ImmutableArray.CreateBuilder<LimeNeed>();
        foreach (var method in bufferMethods)
        {
            needs.Add(method.NeedFor(sample, target));
        }

        double cap = LimeConstants.Of("weak-cap");
        double first = LimeConstants.Of("weak-first-dressing");
        double wanted = Math.Max(0, target - ph);
        double low = wanted / LimeConstants.Of("weak-ph-per-ton-high");
        double high = wanted / LimeConstants.Of("weak-ph-per-ton-low");
        double byCapacity = wanted > 0 ? LimeConstants.Of("ae-ag-lime-per-meq") * capacity * (Saturation(ph) - Saturation(target)) : 0;
        double adviceHigh = Math.Min(cap, Math.Max(high, byCapacity));
        int months = (int)LimeConstants.Of("weak-retest-months");
        return new(ph, target, capacity)
        {
            BufferNeeds = needs.ToImmutable(),
            RuleLow = Rate(low, "ground-limestone"),
            RuleHigh = Rate(high, "ground-limestone"),
            ByCapacity = Rate(byCapacity, "adams-evans-ag-lime"),
            AdviceLow = ApplicationRate.FromShortTonsPerAcre(Math.Min(adviceHigh, Math.Min(low, byCapacity))),
            AdviceHigh = ApplicationRate.FromShortTonsPerAcre(adviceHigh),
            FirstDressing = ApplicationRate.FromShortTonsPerAcre(Math.Min(first, adviceHigh)),
            MostAtOnce = ApplicationRate.FromShortTonsPerAcre(cap),
            RetestWithinMonths = months,
            Findings = Finding.InOrder(
            [
                FindingCatalog.Create("lime-weakly-buffered-range", ("first", Amounts.Print(first, 1)), ("cap", Amounts.Print(cap, 1)), ("months", Amounts.Print(months, 0))),
                FindingCatalog.Create("lime-weakly-buffered", ("cec", Amounts.Print(capacity, 1))),
                FindingCatalog.Create("lime-extra-effect"),
                MemoryGate.FindingFor("Adams-Evans", "LIME-AE1"),
                .. needs.SelectMany(n => n.Findings),
            ]),
        };

        LimeRate Rate(double tons, string basis) =>
            LimeRate.Of(ApplicationRate.FromShortTonsPerAcre(tons), target, Length.FromInches(20.0 / 3), LimeBasis.Find(basis), "rule for weakly buffered soil");
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
    [
        .. BufferNeeds.Where(n => n.Rate is not null).Select(n => new WorkedLine("By buffer", n.Method.Name, n.Rate!.ToString(), n.Method.SourceId)),
        new("By the rule", "(target - pH) / 0.4 to / 0.3", $"({LimeText.Ph(target)} - {LimeText.Ph(ph)}): {LimeText.Tons(RuleLow.OfBasis.PoundsPerAcre)} to {LimeText.Tons(RuleHigh.OfBasis.PoundsPerAcre)} ton/ac, at most {LimeText.Tons(MostAtOnce.PoundsPerAcre)} at once", "PRACTICE"),
        new("By CEC", "0.75 x CEC x (acid share now - at the target)", $"CEC {Amounts.Print(capacity, 1)}: {LimeText.Tons(ByCapacity.OfBasis.PoundsPerAcre)} ton/ac", "LIME-AE1"),
        new("Advice", "from the smallest to the cap", $"{LimeText.Tons(AdviceLow.PoundsPerAcre)} to {LimeText.Tons(AdviceHigh.PoundsPerAcre)} ton/ac; first at most {LimeText.Tons(FirstDressing.PoundsPerAcre)}, test again within {Amounts.Print(RetestWithinMonths, 0)} months"),
    ];

    private static double Saturation(double ph) =>
        Math.Max(0, LimeMath.AcidSaturation(Math.Max(ph, LowestPh), LimeConstants.Of("ae-ph-constant"), LimeConstants.Of("ae-ph-linear"), LimeConstants.Of("ae-ph-square")));

    /// <summary>The pH at which the curve turns; below it the soil counts as wholly acid.</summary>
    private static double LowestPh => LimeConstants.Of("ae-ph-constant") - (LimeConstants.Of("ae-ph-linear") * LimeConstants.Of("ae-ph-linear") / (4 * LimeConstants.Of("ae-ph-square")));
}
