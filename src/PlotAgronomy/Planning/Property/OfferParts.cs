namespace PlotAgronomy.Planning;

/// <summary>Offers that one plot has because another did not use all of a package, each with what it is a part of.</summary>
internal sealed class OfferParts
{
    private readonly Dictionary<object, PlotProduct> wholes = new(ReferenceEqualityComparer.Instance);

    internal void Add<T>(Offer<T> part, PlotProduct whole)
        where T : class => wholes[part] = whole;

    /// <summary>What it is a part of; null where it is none.</summary>
    internal PlotProduct? Find<T>(Offer<T> offer)
        where T : class => wholes.GetValueOrDefault(offer);
}
