using System.Collections.Immutable;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>A plan's soil through every lime method that accepts its reading, on one common basis.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeMethodsForPlan
{
    internal LimeMethodsForPlan() { }

    /// <summary>Gets the plan.</summary>
    public required PlotPlan Plan { get; init; }

    /// <summary>Gets the target that the plan's kinds ask for; null without kinds.</summary>
    public required LimeTarget? Target { get; init; }

    /// <summary>Gets the pH that was asked for; null where the plan's own was taken.</summary>
    public required double? AskedPh { get; init; }

    /// <summary>Gets what each method answers.</summary>
    public required LimeMethodComparison Comparison { get; init; }

    /// <summary>Gets the methods that were not asked, because their numbers are from memory and they were not named.</summary>
    public required ImmutableArray<LimeMethod> KeptBack { get; init; }

    /// <summary>Gets the answers that hold a rate.</summary>
    public ImmutableArray<LimeMethodAnswer> Answering => [.. Comparison.Answers.Where(a => a.Need.Rate is not null)];

    /// <summary>Gets the answers that read the soil and give no rate.</summary>
    public ImmutableArray<LimeMethodAnswer> Silent => [.. Comparison.Answers.Where(a => a.Need.Rate is null)];

    /// <summary>Gets the findings, most serious first.</summary>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(Comparison.Findings.Concat(AskedPh is null ? Target?.Findings ?? [] : []));

    /// <summary>How far apart the methods are that aim at the same pH; null where fewer than two can be compared.</summary>
    internal LimeSpread? SpreadForTarget => LimeSpread.Of(Answering.Where(a => a.TargetPh == Comparison.TargetPh));

    /// <summary>How far apart all are; null where all aim at the same pH, or fewer than two can be compared.</summary>
    internal LimeSpread? SpreadOfAll => Answering.Any(a => a.TargetPh != Comparison.TargetPh) ? LimeSpread.Of(Answering) : null;

    /// <summary>Those of the methods themselves: each need's own, and why a rate stands without a common figure.</summary>
    internal IEnumerable<Finding> FindingsOfMethods =>
        Comparison
            .Answers.SelectMany(a => a.Need.Findings)
            .Concat(Comparison.Findings.Where(f => f.Code == LimingCodes.NotComparable));

    /// <summary>Whether any rate rests on numbers from memory.</summary>
    internal bool RestsOnMemory => Answering.Any(a => a.Method.Status == DataStatus.Memory);

    /// <summary>What the methods answer.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Comparison.ToString();
}
