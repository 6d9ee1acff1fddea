namespace PlotAgronomy.Liming;

/// <summary>What one offer costs for a need.</summary>
public sealed class LimeOfferCost
{
    /// <summary>Gets the offer.</summary>
    public required LimeOffer Offer { get; init; }

    /// <summary>Gets the material's figure in the index of the rate; null when it is not known or the basis has none.</summary>
    public LimeFigure? Figure { get; init; }

    /// <summary>Gets the cost of as much effect as a ton of pure carbonate powder has in that index; null when the offer cannot
    /// be judged.</summary>
    public decimal? CostPerEffectiveTon { get; init; }

    /// <summary>Gets the order for the plot; null when the offer cannot be judged.</summary>
    public LimeOrder? Order { get; init; }

    /// <summary>Gets why the offer cannot be judged, or null.</summary>
    public string? WhyNot { get; init; }
}
