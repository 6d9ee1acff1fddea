using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Blends;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads what is to be grown; which lot of a kind is bought, the shelf says.</summary>
internal static class GrowingReader
{
    private static readonly string[] RateLabels = ["rateIs", "rateFor"];

    internal static ImmutableArray<PlannedKind> Read(
        PlanObject growing,
        IReadOnlyList<SeedOffer> offers,
        bool everyOfferWasRead,
        bool carriedOff,
        PlantingMethod? method
    )
    {
        var kinds = growing
            .Objects("kinds")
            .Select(row => Kind(row, offers, everyOfferWasRead, carriedOff, method))
            .OfType<PlannedKind>()
            .ToImmutableArray();
        var rows = growing.Objects("kinds").ToList();
        if (rows.Count > 0 && rows.All(r => r.Number("shareOfFullStand") is not null))
        {
            double total = rows.Sum(r => r.Number("shareOfFullStand")!.Value);
            double wanted = growing.Number("totalShare") ?? 1;
            if (Math.Abs(total - wanted) > BlendConstants.All["share-rounding"])
            {
                growing.Report(
                    "kinds",
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"the shares of a full stand sum to {total:0.###}; expected {wanted:0.###} "
                            + $"(state another total as totalShare)"
                    )
                );
            }
        }

        foreach (var twice in kinds.GroupBy(k => k.Kind.Id).Where(g => g.Count() > 1))
        {
            growing.Report("kinds", $"{twice.First().Kind.CommonName} stands twice");
        }

        return kinds;
    }

    private static PlannedKind? Kind(
        PlanObject row,
        IReadOnlyList<SeedOffer> offers,
        bool everyOfferWasRead,
        bool carriedOff,
        PlantingMethod? planted
    )
    {
        var kind = KindReader.Read(row, "kind");
        var rate = row.PositiveAmount<ApplicationRate>("rate", Amounts.TryReadRate, r => r.PoundsPerAcre);
        if (row.Has("rate"))
        {
            foreach (string label in RateLabels.Where(f => !row.Has(f)))
            {
                row.Report("rate", $"a rate needs '{label}'");
            }
        }

        if (kind is null)
        {
            return null;
        }

        if (planted is PlantingMethod way && row.Try("kind", () => kind.FullRange(PlotPlan.SowingMethodOf(way))) is null)
        {
            return null;
        }

        var choice = SeedShelf.FromLots([.. offers.Select(o => o.Lot)]).Cheapest(kind);
        if (offers.FirstOrDefault(o => o.Lot == choice.Lot) is not { } offer)
        {
            if (everyOfferWasRead)
            {
                row.Report("kind", $"no seed lot of {kind.CommonName} is on offer");
            }

            return null;
        }

        var share =
            row.Number("shareOfFullStand") is double number ? row.Try("shareOfFullStand", () => KindShare.FromShare(kind, number))
            : rate is ApplicationRate written
            && row.Choice("rateIs", PlanVocabulary.RateMeanings) is bool living
            && row.Choice("rateFor", PlanVocabulary.SowingMethods) is SowingMethod method
                ? row.Try("rate", () => KindShare.FromRate(kind, Living(written, living, method, offer)))
            : null;
        var yield = Yield(row);
        if (carriedOff && yield is null && !row.Has("yield"))
        {
            row.Report("kind", $"a crop that is cut and carried off needs the yield of {kind.CommonName}");
        }

        return share is null
            ? null
            : new PlannedKind
            {
                Share = share,
                Choice = choice,
                Offer = offer,
                Yield = yield,
            };
    }

    private static CropYield? Yield(PlanObject row) =>
        row.Object("yield") is { } yield
        && yield.Number("value") is double value
        && yield.Choice("unit", PlanVocabulary.YieldUnits) is YieldUnit unit
            ? unit == YieldUnit.Ton
                ? CropYield.FromTonsPerAcre(value)
                : CropYield.FromBushelsPerAcre(value)
            : null;

    private static PureLiveSeedRate Living(ApplicationRate rate, bool countsLivingSeed, SowingMethod method, SeedOffer offer) =>
        countsLivingSeed
            ? PureLiveSeedRate.FromRate(rate, method)
            : PureLiveSeed.Delivered(BulkSeedRate.FromRate(rate, method), offer.Lot.Analysis, ViabilityRule.For(offer.Lot.Kind));
}
