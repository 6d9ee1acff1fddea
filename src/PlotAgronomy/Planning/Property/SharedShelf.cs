using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>One sort of goods that several plots take from in turn: what is counted, such as the bags in the shed, and what is
/// left in packages that were opened for the plots before.</summary>
/// <param name="nameOf">What a thing is called on the shelf.</param>
/// <param name="parts">Where offers that are parts of others are noted.</param>
internal sealed class SharedShelf<T>(Func<T, string> nameOf, OfferParts parts)
    where T : class
{
    private readonly Dictionary<ProductKey, Offer<T>> offers = [];
    private readonly Dictionary<ProductKey, double> taken = [];

    /// <summary>Everything that any plot may have, each once; of one thing counted twice the smaller number.</summary>
    internal void Stock(IEnumerable<Offer<T>> all)
    {
        foreach (var offer in all)
        {
            var key = KeyOf(offer);
            if (!offers.TryGetValue(key, out var there) || offer.Available < (there.Available ?? int.MaxValue))
            {
                offers[key] = offer;
            }
        }
    }

    /// <summary>What the next plot may take: what it has on offer, as far as it is still there, and for nothing what others left
    /// and what is in the shed.</summary>
    internal ImmutableArray<Offer<T>> For(ImmutableArray<Offer<T>> own, Func<T, bool> isOfUse) =>
        [
            .. own.SelectMany(o => StillThere(offers[KeyOf(o)], o)),
            .. offers
                .Values.Where(o => isOfUse(o.Item) && own.All(mine => KeyOf(mine) != KeyOf(o)))
                .Where(o => o is { Available: not null, Price: 0 })
                .SelectMany(o => StillThere(o, o)),
            .. offers.Values.Where(o => o.Available is null && isOfUse(o.Item)).SelectMany(o => Opened(o, LeftInOpened(o))),
        ];

    /// <summary>Notes what a plot takes.</summary>
    internal void Take(IEnumerable<PlotProduct> products)
    {
        foreach (var product in products.Where(p => offers.ContainsKey(p.Key)))
        {
            taken[product.Key] = taken.GetValueOrDefault(product.Key) + product.Pounds;
        }
    }

    private ProductKey KeyOf(Offer<T> offer) => ProductKey.Of(nameOf(offer.Item), offer);

    /// <summary>Of what is counted the whole packages that are left, and the open one.</summary>
    private IEnumerable<Offer<T>> StillThere(Offer<T> counted, Offer<T> own)
    {
        double used = taken.GetValueOrDefault(KeyOf(counted));
        if (counted.Available is not { } packages || used <= 0)
        {
            return [own];
        }

        double left = Math.Max(0, (packages * counted.Package.Pounds) - used);
        int whole = (int)Tolerance.Floor(left / counted.Package.Pounds);
        var rest = own with { Available = whole };
        parts.Add(rest, WholeOf(counted));
        return [rest, .. Opened(counted, left - (whole * counted.Package.Pounds))];
    }

    private double LeftInOpened(Offer<T> bought)
    {
        double used = taken.GetValueOrDefault(KeyOf(bought));
        return bought.Package.CountFor(Mass.FromPounds(used)) is { } packages ? (packages * bought.Package.Pounds) - used : 0;
    }

    private IEnumerable<Offer<T>> Opened(Offer<T> of, double pounds)
    {
        if (pounds > PlanningConstants.All["left-in-bag"])
        {
            var open = Offer.InBags(of.Item, Mass.FromPounds(pounds), 0) with { Available = 1 };
            parts.Add(open, WholeOf(of));
            yield return open;
        }
    }

    private PlotProduct WholeOf(Offer<T> offer) => new(KeyOf(offer), offer.Package, 0, offer.Available);
}
