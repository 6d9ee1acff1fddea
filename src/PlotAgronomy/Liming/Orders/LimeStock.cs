using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Lime that is there already and costs nothing: it goes on first, and the rest of the need is bought.</summary>
internal sealed class LimeStock
{
    private LimeStock(LimeOrderRequest rest, ImmutableArray<LimeFromStock> taken) => (Rest, Taken) = (rest, taken);

    /// <summary>What is left to buy for.</summary>
    internal LimeOrderRequest Rest { get; }

    /// <summary>What is taken, in the order of the offers.</summary>
    internal ImmutableArray<LimeFromStock> Taken { get; }

    /// <summary>Takes what is there for nothing and is not enough by itself; what is enough is an order like any other.</summary>
    internal static LimeStock For(LimeOrderRequest request, IReadOnlyList<Offer<LimingMaterial>> offers)
    {
        var taken = ImmutableArray.CreateBuilder<LimeFromStock>();
        double left = 1;
        foreach (var offer in offers.Where(o => o is { Available: > 0, Price: 0 }))
        {
            if (
                new LimeOfferCost(request, offer).Order is { Bags: { } bags } order
                && !offer.IsEnough(bags)
                && offer.Available!.Value * offer.Package.Pounds / order.Product.Pounds is var part
                && part < left
            )
            {
                left -= part;
                taken.Add(new LimeFromStock(offer, part));
            }
        }

        var used = request.Rate;
        return new(
            taken.Count == 0
                ? request
                : request.For(used.With(ApplicationRate.FromPoundsPerAcre(used.OfBasis.PoundsPerAcre * left))),
            taken.ToImmutable()
        );
    }
}

/// <summary>Lime that is there, all of which goes on.</summary>
/// <param name="Offer">What is there.</param>
/// <param name="PartOfNeed">How much of the need it meets, a part of one.</param>
internal sealed record LimeFromStock(Offer<LimingMaterial> Offer, double PartOfNeed)
{
    internal Finding Finding =>
        FindingCatalog.Create(
            LimingCodes.FromStock,
            ("packages", Amounts.Print(Offer.Available!.Value, 0)),
            ("package", Offer.Package.ToString()),
            ("material", Offer.Item.Name),
            ("percent", $"{Amounts.Print(100 * PartOfNeed, 0)} %")
        );
}
