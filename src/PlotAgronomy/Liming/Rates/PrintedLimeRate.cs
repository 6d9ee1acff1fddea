using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>A lime rate as the laboratory printed it: with all four labels it is a rate, else the questions to ask.</summary>
public sealed class PrintedLimeRate : IWorkedResult
{
    private PrintedLimeRate(LimeRate? rate, ImmutableArray<Finding> findings)
    {
        Rate = rate;
        Findings = findings;
    }

    /// <summary>Gets the rate; null when a label is missing (the findings say what to ask).</summary>
    public LimeRate? Rate { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => Rate is null ? [] : [Rate.Basis.SourceId];

    /// <summary>Takes a printed rate with the labels the report gives. What it does not print is null.</summary>
    /// <param name="rate">Rate as printed, with its unit.</param>
    /// <param name="targetPh">pH aimed at.</param>
    /// <param name="depth">Depth treated.</param>
    /// <param name="basis">Lime it is counted in.</param>
    /// <param name="institution">Institution.</param>
    /// <returns>The rate, or what to ask the laboratory.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A label outside its range.</exception>
    public static PrintedLimeRate Read(
        ApplicationRate rate,
        double? targetPh,
        Length? depth,
        LimeBasis? basis,
        Institution? institution
    )
    {
        var findings = new List<Finding>();
        if (basis is null)
        {
            findings.Add(FindingCatalog.Create(LimingCodes.BasisUnknown));
        }

        AddMissing("target pH", targetPh is null);
        AddMissing("depth", depth is null);
        AddMissing("institution", institution is null);
        if (targetPh is not { } target || depth is not { } treated || basis is null || institution is null)
        {
            return new(null, Finding.InOrder(findings));
        }

        if (rate.PoundsPerAcre > LimePlacementRule.HighestAtOnce.PoundsPerAcre)
        {
            findings.Add(FindingCatalog.Create(LimingCodes.RateHigh, ("rate", LimeText.Tons(rate.PoundsPerAcre))));
        }

        if (basis.Status == DataStatus.Memory)
        {
            findings.Add(MemoryGate.FindingFor($"the lime '{basis.Name}'", basis.SourceId));
        }

        if (target > LimingConstants.All["over-lime-target"])
        {
            findings.Add(FindingCatalog.Create(LimingCodes.OverTarget));
        }

        return new(LimeRate.Of(rate, target, treated, basis, institution), Finding.InOrder(findings));

        void AddMissing(string label, bool missing)
        {
            if (missing)
            {
                findings.Add(FindingCatalog.Create(LimingCodes.LabelMissing, ("label", label)));
            }
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        Rate is null
            ? []
            : [LimingFormulas.All["lime-as-labelled"].Line(Rate.ToString(), ("what", "Printed rate")).From(Rate.Basis.Origin)];
}
