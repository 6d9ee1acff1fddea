using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads a seed lot on offer.</summary>
internal static class SeedOfferReader
{
    internal static SeedOffer? Read(PlanObject offer)
    {
        var kind = KindReader.Read(offer, "kind");
        var pure = offer.Amount<Fraction>("pureSeed", Amounts.TryReadPercent);
        var germination = offer.Amount<Fraction>("germination", Amounts.TryReadPercent);
        var hard = offer.Amount<Fraction>("hardSeed", Amounts.TryReadPercent) ?? Fraction.Zero;
        var dormant = offer.Amount<Fraction>("dormantSeed", Amounts.TryReadPercent) ?? Fraction.Zero;
        var coating = offer.Amount<Fraction>("coating", Amounts.TryReadPercent) ?? Fraction.Zero;
        var package = offer.PositiveAmount<Mass>("package", Amounts.TryReadMass, m => m.Pounds);
        if (
            kind is null
            || pure is not Fraction purity
            || germination is not Fraction germinating
            || package is not Mass mass
            || offer.Money("price") is not (>= 0 and var price)
            || offer.Date("tested") is not DateOnly tested
        )
        {
            return null;
        }

        if (
            offer.Try("pureSeed", () => SeedAnalysis.FromFractions(purity, germinating, hard, dormant, coating))
            is not { } analysis
        )
        {
            return null;
        }

        var lot = new SeedLot
        {
            Kind = kind,
            Label = offer.Text("lot") ?? kind.CommonName,
            Analysis = analysis,
            TestMonth = TestMonth.FromYearAndMonth(tested.Year, tested.Month),
            Package = mass,
            PricePerPound = SeedLot.PriceOfAPound(price, mass),
        };
        return offer.Try("germination", () => LotValue.For(lot)) is null
            ? null
            : new SeedOffer
            {
                Lot = lot,
                Package = mass,
                Price = price,
            };
    }
}
