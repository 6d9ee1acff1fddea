using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>What one offer costs for a need.</summary>
public sealed class LimeOfferCost
{
    private readonly LimeRate rate;

    internal LimeOfferCost(LimeRate rate, Area area, LimeOffer offer)
    {
        this.rate = rate;
        Offer = offer;
        if (!offer.Material.Neutralizes || rate.Basis.Figure is not { } basis)
        {
            return;
        }

        Figure = offer.Material.FindFigure(basis.Index);
        if (Figure is not { Value: > 0 } figure)
        {
            return;
        }

        CostPerEffectiveTon = LimeSums.CostOfEffect(offer.PricePerPound, figure.ShareOfWhole);
        Order = LimeOrder.For(
            new LimeOrderRequest
            {
                Rate = rate,
                Material = offer.Material,
                Area = area,
                Bag = offer.Bag,
                PricePerBag = offer.Bag is null ? null : offer.Price,
                PricePerTon = offer.Bag is null ? offer.Price : null,
            }
        );
    }

    /// <summary>Gets the offer.</summary>
    public LimeOffer Offer { get; }

    /// <summary>Gets the material's figure in the index of the rate; null when it is not known or the basis has none.</summary>
    public LimeFigure? Figure { get; }

    /// <summary>Gets the cost of as much effect as a ton of pure carbonate powder has in that index; null when the offer cannot
    /// be judged.</summary>
    public decimal? CostPerEffectiveTon { get; }

    /// <summary>Gets the order for the plot; null when the offer cannot be judged.</summary>
    public LimeOrder? Order { get; }

    /// <summary>Gets why the offer cannot be judged, or null.</summary>
    public string? WhyNot =>
        Order is not null ? null
        : !Offer.Material.Neutralizes ? "it neutralizes nothing"
        : rate.Basis.Figure is not { } basis ? "the strength of the rate's lime is not printed"
        : Offer.Material.TryFigureIn(basis.Index, out _, out string problem) ? "it has no effect in this index"
        : problem;
}
