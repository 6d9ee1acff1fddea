using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>A lime rate as the laboratory printed it: with all four labels it is a rate, else the questions to ask.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PrintedLimeRate : IWorkedResult
{
    private PrintedLimeRate(
        ApplicationRate ofBasis,
        double? targetPh,
        Length? depth,
        LimeBasis? basis,
        Institution? institution,
        ApplicationRate? upTo
    )
    {
        UpTo = upTo;
        OfBasis = ofBasis;
        TargetPh = targetPh;
        Depth = depth;
        Basis = basis;
        Institution = institution;
        Rate =
            targetPh is { } target && depth is { } treated && basis is not null && institution is not null
                ? LimeRate.FromBasis(ofBasis, target, treated, basis, institution)
                : null;
    }

    /// <summary>Gets the rate as printed, of the lime it is counted in; of a printed range its lower end.</summary>
    public ApplicationRate OfBasis { get; }

    /// <summary>Gets the upper end where a range was printed; else null.</summary>
    public ApplicationRate? UpTo { get; }

    /// <summary>Gets the pH aimed at, or null.</summary>
    public double? TargetPh { get; }

    /// <summary>Gets the depth treated, or null.</summary>
    public Length? Depth { get; }

    /// <summary>Gets the lime it is counted in, or null.</summary>
    public LimeBasis? Basis { get; }

    /// <summary>Gets the institution, or null.</summary>
    public Institution? Institution { get; }

    /// <summary>Gets the rate; null when a label is missing (the findings say what to ask).</summary>
    public LimeRate? Rate { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Rate is { } rate ? Cautions(rate) : Missing());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => Rate?.Basis.Origin.Sources ?? [];

    /// <summary>Takes a printed rate with the labels the report gives. What it does not print is null.</summary>
    /// <param name="rate">Rate as printed, with its unit.</param>
    /// <param name="targetPh">pH aimed at.</param>
    /// <param name="depth">Depth treated.</param>
    /// <param name="basis">Lime it is counted in.</param>
    /// <param name="institution">Institution.</param>
    /// <param name="upTo">Upper end where a range was printed, above <paramref name="rate"/>; else null.</param>
    /// <returns>The rate, or what to ask the laboratory.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A label outside its range, or an upper end that is not above the
    /// lower.</exception>
    public static PrintedLimeRate Read(
        ApplicationRate rate,
        double? targetPh,
        Length? depth,
        LimeBasis? basis,
        Institution? institution,
        ApplicationRate? upTo = null
    ) =>
        upTo is { } high && high <= rate
            ? throw new ArgumentOutOfRangeException(nameof(upTo), high, $"Must be above the lower end, {rate}.")
            : new(rate, targetPh, depth, basis, institution, upTo);

    /// <summary>The labels that the report does not print.</summary>
    internal LimeLabels Silent =>
        (TargetPh is null ? LimeLabels.Target : LimeLabels.None)
        | (Depth is null ? LimeLabels.Depth : LimeLabels.None)
        | (Basis is null ? LimeLabels.Basis : LimeLabels.None);

    /// <summary>The rate as it stands, whatever label is missing but the lime it is counted in; null without that. A depth that
    /// is not printed is that of the ground worked, so that nothing is scaled by it.</summary>
    /// <param name="worked">Depth to which the ground is worked.</param>
    /// <param name="wantedPh">pH the plan aims at, for a target that is not printed.</param>
    internal LimeRate? AsItStands(Length worked, double wantedPh) =>
        Rate
        ?? (
            Basis is { } basis
                ? LimeRate
                    .FromBasis(
                        OfBasis,
                        TargetPh ?? wantedPh,
                        Depth ?? worked,
                        basis,
                        Institution ?? PlotAgronomy.Institution.Practice
                    )
                    .SilentOn(Silent)
                : null
        );

    /// <summary>The same with another label.</summary>
    internal PrintedLimeRate With(LimeBasis? basis = null, Length? depth = null, double? targetPh = null) =>
        new(OfBasis, targetPh ?? TargetPh, depth ?? Depth, basis ?? Basis, Institution, UpTo);

    /// <summary>The same with one rate where a range was printed.</summary>
    internal PrintedLimeRate At(ApplicationRate meant) => new(meant, TargetPh, Depth, Basis, Institution, null);

    /// <summary>Both ends of a printed range; none where one rate was printed.</summary>
    internal ImmutableArray<ApplicationRate> Ends => UpTo is { } high ? [OfBasis, high] : [];

    /// <summary>The rate with the labels that are printed, such as <c>2 ton/ac of lime</c>.</summary>
    internal string InPrint
    {
        get
        {
            string lime = Basis is { } basis ? basis.Name : "lime";
            string target = TargetPh is { } ph ? $" to pH {LimeText.Ph(ph)}" : "";
            string deep = Depth is { } depth ? $", {LimeText.Inches(depth)} in deep" : "";
            return $"{InAmount} of {lime}{target}{deep}";
        }
    }

    /// <summary>The rate as it stands, in tons unless it is counted in pounds of an index.</summary>
    internal string InAmount => UpTo is { } high ? $"{Number(OfBasis)} to {AmountOf(high)}" : AmountOf(OfBasis);

    /// <summary>One end of a printed range, or the rate, with its unit.</summary>
    internal string AmountOf(ApplicationRate rate) => $"{Number(rate)} {Unit}";

    /// <summary>What is not printed, in words; empty where all is.</summary>
    internal string MissingInWords
    {
        get
        {
            string[] missing =
            [
                .. Basis is null ? ["of which lime"] : Array.Empty<string>(),
                .. TargetPh is null ? ["to which pH"] : Array.Empty<string>(),
                .. Depth is null ? ["for how deep a soil"] : Array.Empty<string>(),
            ];
            return SentenceList.And(missing);
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            Rate is null
                ? LimingFormulas.All["lime-as-labelled"].Line(InPrint, ("what", "Printed rate"))
                : LimingFormulas.All["lime-as-labelled"].Line(Rate.ToString(), ("what", "Printed rate")).From(Rate.Basis.Origin),
        ];

    private bool IsInPounds => Basis is { IsInPounds: true };

    private string Unit => IsInPounds ? "lb/ac" : "ton/ac";

    private string Number(ApplicationRate rate) =>
        IsInPounds ? Amounts.Print(rate.PoundsPerAcre, 0) : LimeText.Tons(rate.PoundsPerAcre);

    private IEnumerable<Finding> Missing()
    {
        if (Basis is null)
        {
            yield return FindingCatalog.Create(LimingCodes.BasisUnknown);
            yield break;
        }

        if (TargetPh is null)
        {
            yield return MissingLabel("target pH");
        }

        if (Depth is null)
        {
            yield return MissingLabel("depth");
        }
    }

    private static Finding MissingLabel(string label) => FindingCatalog.Create(LimingCodes.LabelMissing, ("label", label));

    private static IEnumerable<Finding> Cautions(LimeRate rate)
    {
        if (rate.OfBasis.PoundsPerAcre > LimePlacementRule.HighestAtOnce.PoundsPerAcre)
        {
            yield return FindingCatalog.Create(LimingCodes.RateHigh, ("rate", LimeText.Tons(rate.OfBasis.PoundsPerAcre)));
        }

        var basis = rate.Basis;
        if (basis.Status == DataStatus.Memory)
        {
            yield return MemoryGate.FindingFor($"the lime '{basis.Name}'", basis.Origin);
        }

        if (rate.TargetPh > LimingConstants.All["over-lime-target"])
        {
            yield return FindingCatalog.Create(LimingCodes.OverTarget);
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
