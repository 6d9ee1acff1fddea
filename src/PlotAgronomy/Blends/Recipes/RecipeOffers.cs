using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Which lots a recipe may use, and why the others not.</summary>
internal static class RecipeOffers
{
    internal static (ImmutableArray<BlendComponent> Offers, ImmutableArray<ExcludedLot> Excluded) Sort(
        RecipeRequest request,
        IReadOnlyList<Offer<SeedLot>> lots
    )
    {
        var excluded = ImmutableArray.CreateBuilder<ExcludedLot>();
        var fit = new List<BlendComponent>();
        foreach (var offer in lots)
        {
            ArgumentNullException.ThrowIfNull(offer, nameof(lots));
            if (ReasonAgainst(offer.Item, request) is { } reason)
            {
                excluded.Add(new ExcludedLot(offer.Item, request, reason));
            }
            else
            {
                fit.Add(BlendComponent.FromOffer(offer, request.Method, request.Rule));
            }
        }

        var offers = ImmutableArray.CreateBuilder<BlendComponent>();
        foreach (var kind in fit.GroupBy(c => c.Kind.Id).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var byLabel = kind.Select(c => c.Offer!).OrderBy(o => o.Item.Label, StringComparer.Ordinal).ToList();
            var choice = SeedShelf.FromOffers(byLabel).Cheapest(byLabel[0].Item.Kind, request.Rule);
            offers.Add(kind.First(c => c.Offer == choice.Offer));
            excluded.AddRange(
                choice.Ranked.Skip(1).Select(v => new ExcludedLot(v.Lot, request, Exclusion.DearerThanAnother, choice.Lot))
            );
        }

        return (offers.ToImmutable(), excluded.ToImmutable());
    }

    private static Exclusion? ReasonAgainst(SeedLot lot, RecipeRequest request)
    {
        var kind = lot.Kind;
        return lot.PureLiveSeedPart(request.Rule).Value <= 0 ? Exclusion.NothingAlive
            : lot.SeedCount is null ? Exclusion.NoSeedCount
            : kind.Rates?.For(request.Method) is null ? Exclusion.NoFullRate
            : request.Soil?.WaterPh is { } ph
            && kind.Ph is { } stands
            && (ph.Value < stands.MinimumPh || ph.Value > stands.MaximumPh)
                ? Exclusion.PhOutside
            : request.Soil?.Drainage is { } drainage && kind.Drainage is { } soils && !soils.Stands(drainage)
                ? Exclusion.DrainageOutside
            : null;
    }
}
