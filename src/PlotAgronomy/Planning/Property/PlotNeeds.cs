using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>What one plot takes of each product that it buys.</summary>
internal static class PlotNeeds
{
    internal static IEnumerable<PlotProduct> Of(PlotAnswers answers) =>
        [.. Lime(answers), .. Fertilizer(answers), .. Seed(answers)];

    private static IEnumerable<PlotProduct> Lime(PlotAnswers answers) =>
        answers.Lime.TryGetPart(out var lime) && lime.Offer is { } offer && Order(lime) is { Pounds: > 0 } mass
            ? [Product(offer.Item.Name, offer, mass)]
            : [];

    private static Mass? Order(LimeAnswer lime) => lime.Order.TryGet(out var order) ? order.Product : null;

    /// <summary>What is given to the stand out of a bag that was opened for the sowing is of that offer.</summary>
    private static IEnumerable<PlotProduct> Fertilizer(PlotAnswers answers) =>
        answers.Fertilizer.TryGetPart(out var bought)
            ?
            [
                .. bought.AtSowing.Select(l => Product(l.Product.Name, l.Offer, l.Spread)),
                .. bought.Later.Select(l =>
                    Product(
                        l.Product.Name,
                        bought.AtSowing.FirstOrDefault(sown => sown.Product == l.Product)?.Offer ?? l.Offer,
                        l.Spread
                    )
                ),
            ]
            : [];

    private static IEnumerable<PlotProduct> Seed(PlotAnswers answers) =>
        answers.Seed.TryGet(out var seed) ? seed.Kinds.SelectMany(Lots) : [];

    private static IEnumerable<PlotProduct> Lots(SownKind kind)
    {
        yield return Product(
            $"{kind.Planned.Kind.ShortName}, lot {kind.Planned.Offer.Item.Label}",
            kind.Planned.Offer,
            Mass.FromPounds(kind.PoundsOfPlannedLot)
        );
        foreach (var lot in kind.FromOthers)
        {
            yield return Product($"{kind.Planned.Kind.ShortName}, lot {lot.Offer.Item.Label}", lot.Offer, lot.Weight);
        }
    }

    private static PlotProduct Product<T>(string name, Offer<T> offer, Mass mass)
        where T : class
    {
        double package = offer.Package.Pounds;
        return new(new(name, package, offer.Package.IsWhole, offer.Price), offer.Package, mass.Pounds, offer.Available);
    }
}
