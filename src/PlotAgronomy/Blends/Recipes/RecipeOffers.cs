using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Which lots a recipe may use, and why the others not.</summary>
internal static class RecipeOffers
{
    internal static (ImmutableArray<BlendComponent> Offers, ImmutableArray<ExcludedLot> Excluded) Sort(
        RecipeGoals goals,
        IReadOnlyList<SeedLot> lots
    )
    {
        var excluded = ImmutableArray.CreateBuilder<ExcludedLot>();
        var fit = new List<BlendComponent>();
        foreach (var lot in lots)
        {
            ArgumentNullException.ThrowIfNull(lot, nameof(lots));
            if (ReasonAgainst(lot, goals) is { } reason)
            {
                excluded.Add(new ExcludedLot(lot, goals, reason));
            }
            else
            {
                fit.Add(BlendComponent.Of(lot, goals.Method, goals.Rule));
            }
        }

        var offers = ImmutableArray.CreateBuilder<BlendComponent>();
        foreach (var kind in fit.GroupBy(c => c.Kind.Id).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var byPrice = kind.OrderBy(c => (double)c.Lot!.PricePerPound!.Value / c.PureLiveFraction)
                .ThenBy(c => c.Lot!.Label, StringComparer.Ordinal)
                .ToArray();
            offers.Add(byPrice[0]);
            excluded.AddRange(
                byPrice.Skip(1).Select(c => new ExcludedLot(c.Lot!, goals, Exclusion.DearerThanAnother, byPrice[0].Lot))
            );
        }

        return (offers.ToImmutable(), excluded.ToImmutable());
    }

    private static Exclusion? ReasonAgainst(SeedLot lot, RecipeGoals goals)
    {
        var kind = lot.Kind;
        return lot.PricePerPound is null ? Exclusion.NoPrice
            : lot.PureLiveSeedPart(goals.Rule).Value <= 0 ? Exclusion.NothingAlive
            : lot.SeedCount is null ? Exclusion.NoSeedCount
            : kind.Rates?.For(goals.Method) is null ? Exclusion.NoFullRate
            : goals.Ph is { } ph && kind.Ph is { } stands && (ph.Value < stands.MinimumPh || ph.Value > stands.MaximumPh)
                ? Exclusion.PhOutside
            : goals.Drainage is { } drainage && kind.Drainage is { } soils && !soils.Stands(drainage) ? Exclusion.DrainageOutside
            : null;
    }
}
