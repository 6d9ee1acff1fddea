using System.Collections.Immutable;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>What the plot needs in lime and the cheapest way on offer to bring it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeAnswer
{
    private readonly PlotPlan plan;

    internal LimeAnswer(PlotPlan plan) => this.plan = plan;

    /// <summary>Gets the pH that the kinds ask for.</summary>
    public required LimeTarget Target { get; init; }

    /// <summary>Gets the pH that is aimed at: of those the method has, the one closest to what is wanted.</summary>
    public required double TargetPh { get; init; }

    /// <summary>Gets why that pH is aimed at, in words.</summary>
    public string TargetReason => LimeRemarks.TargetReason(plan, Target, TargetPh);

    /// <summary>Gets the laboratory's own printed rate, which is used first; null when nothing was printed.</summary>
    public PrintedLimeRate? Printed { get; init; }

    /// <summary>Gets the printed rate held against our own sum for the same pH; null when nothing was printed.</summary>
    public PrintedLimeCheck? Check { get; init; }

    /// <summary>Gets our own sum, beside the printed rate or alone.</summary>
    public required LimeNeed Computed { get; init; }

    /// <summary>Gets buffer answer and rule side by side, on a soil where a single figure would deceive; or null.</summary>
    public WeaklyBufferedLime? WeaklyBuffered { get; init; }

    /// <summary>Gets the rate that is ordered for; null when there is no answer.</summary>
    public LimeRate? Used { get; init; }

    /// <summary>Gets the liming materials on offer held against the rate; null when no lime is needed or none is on
    /// offer.</summary>
    public LimingMaterialComparison? Offers { get; init; }

    /// <summary>Gets the cheapest offer that can be counted; null when no lime is needed or none can be counted.</summary>
    public Offer<LimingMaterial>? Offer => Offers?.CheapestForPlot?.Offer;

    /// <summary>Gets what to buy and spread of the offer; null without one.</summary>
    public LimeOrder? Order => Offers?.CheapestForPlot?.Order;

    /// <summary>Gets what the lime will have done by planting day; null when the day of liming is not known.</summary>
    public LimeOutlook? Outlook { get; init; }

    /// <summary>Gets what the figures on lime rest on: the target, and the rate that was used.</summary>
    public ImmutableArray<IWorkedResult> RestsOn => [Target, Printed is { } printed ? printed : Computed];

    /// <summary>Gets what is to be remarked on offers and dates.</summary>
    public ImmutableArray<Finding> Findings => [.. LimeRemarks.Findings(plan, Used, Offer)];
}
