using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>What one plot takes of each product that it buys or has.</summary>
/// <param name="answers">Answers of the plot.</param>
/// <param name="leftOut">What it does without.</param>
/// <param name="parts">Offers that are part of another one, such as what is left in a bag another plot opened.</param>
internal sealed class PlotNeeds(PlotAnswers answers, ImmutableHashSet<(string Plot, CutSort Part)> leftOut, OfferParts parts)
{
    internal IEnumerable<PlotProduct> All =>
        [
            .. Has(CutSort.Lime) ? Lime() : [],
            .. Has(CutSort.Fertilizer) ? Fertilizer() : [],
            .. Has(CutSort.Dressing) ? Dressing() : [],
            .. Seed(),
        ];

    private bool Has(CutSort part) => !leftOut.Contains((answers.Plan.Plot.Name, part));

    private IEnumerable<PlotProduct> Lime()
    {
        if (!answers.Lime.TryGetPart(out var lime))
        {
            yield break;
        }

        foreach (var there in lime.Offers?.FromStock ?? [])
        {
            yield return Product(there.Offer.Item.Name, there.Offer, there.Offer.Available!.Value * there.Offer.Package.Weight);
        }

        if (lime.Offer is { } offer && lime.Order.OrNull()?.Product is { Pounds: > 0 } mass)
        {
            yield return Product(offer.Item.Name, offer, mass);
        }
    }

    private IEnumerable<PlotProduct> Fertilizer() =>
        answers.Fertilizer.TryGetPart(out var bought)
            ? bought.AtSowing.Select(l => Product(l.Product.Name, l.Offer, l.Spread))
            : [];

    /// <summary>What is given to the stand out of a bag that was opened for the sowing is of that offer.</summary>
    private IEnumerable<PlotProduct> Dressing() =>
        answers.Fertilizer.TryGetPart(out var bought)
            ? bought.Later.Select(l =>
                Product(
                    l.Product.Name,
                    bought.AtSowing.FirstOrDefault(sown => sown.Product == l.Product)?.Offer ?? l.Offer,
                    l.Spread
                )
            )
            : [];

    private IEnumerable<PlotProduct> Seed() => answers.Seed.TryGet(out var seed) ? seed.Kinds.SelectMany(Lots) : [];

    private IEnumerable<PlotProduct> Lots(SownKind kind)
    {
        if (kind.PoundsOfPlannedLot > 0)
        {
            var planned = kind.Planned.Offer;
            yield return Product(planned.Item.ToString(), planned, Mass.FromPounds(kind.PoundsOfPlannedLot));
        }

        foreach (var lot in kind.FromOthers)
        {
            yield return Product(lot.Offer.Item.ToString(), lot.Offer, lot.Weight);
        }
    }

    private PlotProduct Product<T>(string name, Offer<T> offer, Mass mass)
        where T : class =>
        parts.Find(offer) is { } whole
            ? whole with
            {
                Pounds = mass.Pounds,
            }
            : new(ProductKey.Of(name, offer), offer.Package, mass.Pounds, offer.Available);
}
