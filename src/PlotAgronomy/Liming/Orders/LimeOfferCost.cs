namespace PlotAgronomy.Liming;

/// <summary>What one offer costs for a need.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeOfferCost
{
    private readonly LimeOrderRequest request;
    private readonly bool isNearSeed;

    internal LimeOfferCost(LimeOrderRequest request, Offer<LimingMaterial> offer)
    {
        this.request = request;
        Offer = offer;
        var material = offer.Item;
        var basis = request.Rate.Basis.Figure;
        Figure = basis is not null && material.Neutralizes ? material.FindFigure(basis.Index) : null;
        var asked = request.ForOffer(offer);
        isNearSeed = LimeCautions.IsCausticNearSeed(asked);
        WhyNot = request.Rate.WhyNotCounted(material) ?? (isNearSeed ? "it is caustic and would lie too near to the seed" : null);
        if (WhyNot is not null)
        {
            return;
        }

        CostPerEffectiveTon = Figure is null ? null : LimeSums.CostOfEffect(offer.PricePerPound, Figure.ShareOfWhole);
        Order = LimeOrder.For(asked);
    }

    /// <summary>Gets the offer.</summary>
    public Offer<LimingMaterial> Offer { get; }

    /// <summary>Gets the material's figure in the index of the rate; null when it is not known or the basis has none.</summary>
    public LimeFigure? Figure { get; }

    /// <summary>Gets the cost of as much effect as a ton of pure carbonate powder has in that index; null when it cannot be
    /// told.</summary>
    public decimal? CostPerEffectiveTon { get; }

    /// <summary>Gets the order for the plot; null when the offer cannot be counted. Where the strength of the rate's lime is not
    /// printed, a ton of any lime counts for a ton of it, and the order says so.</summary>
    public LimeOrder? Order { get; }

    /// <summary>Gets why the offer cannot be counted, or null.</summary>
    public string? WhyNot { get; }

    /// <summary>Gets the figure to ask the dealer for, so that the offer can be counted; null when it can, or never
    /// could.</summary>
    public OpenQuestion<LimeFigure>? Question =>
        WhyNot is not null && !isNearSeed && request.Rate.Basis.Figure is { } basis && Offer.Item.Neutralizes
            ? Offer.Item.AskFigure(basis.Index)
            : null;

    /// <summary>Why caustic lime is kept back from the seed, or null.</summary>
    internal Finding? NearSeed => LimeCautions.OfSeed(request.ForOffer(Offer));

    /// <summary>What the order would be if the material had this figure.</summary>
    internal LimeOrder? OrderWith(LimeFigure figure) =>
        figure.Value > 0 ? LimeOrder.For(request.ForOffer(Offer with { Item = Offer.Item.WithFigure(figure) })) : null;

    /// <summary>The offer and its order, or why there is none.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => WhyNot is { } why ? $"{Offer}: {why}" : $"{Offer}: {Order}";
}
