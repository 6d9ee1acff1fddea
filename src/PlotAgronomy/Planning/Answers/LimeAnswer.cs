using System.Collections.Immutable;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>What the plot needs in lime and the cheapest way on offer to bring it.</summary>
internal sealed class LimeAnswer
{
    internal required PlanContent Plan { get; init; }

    internal required LimeTarget Target { get; init; }

    internal required double TargetPh { get; init; }

    internal string TargetReason => LimeRemarks.TargetReason(Plan, Target, TargetPh);

    /// <summary>The laboratory's own printed rate, used first.</summary>
    internal PrintedLimeRate? Printed { get; init; }

    /// <summary>The printed rate held against our own sum for the same pH; null when nothing was printed.</summary>
    internal PrintedLimeCheck? Check { get; init; }

    /// <summary>Our own sum, beside it or alone.</summary>
    internal required LimeNeed Computed { get; init; }

    /// <summary>Buffer answer and rule side by side, on a soil where a single figure would deceive.</summary>
    internal WeaklyBufferedLime? WeaklyBuffered { get; init; }

    internal LimeRate? Used { get; init; }

    /// <summary>The liming materials on offer held against the rate; null when no lime is needed or none is on offer.</summary>
    internal LimingMaterialComparison? Offers { get; init; }

    internal LimeOffer? Offer => Offers?.CheapestForPlot?.Offer;

    internal LimeOrder? Order => Offers?.CheapestForPlot?.Order;

    /// <summary>What the lime will have done by planting day; null when the day of liming is not known.</summary>
    internal LimeOutlook? Outlook { get; init; }

    internal ImmutableArray<Finding> Findings => [.. LimeRemarks.Findings(Plan, Used, Offer)];
}
