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
                excluded.Add(new ExcludedLot { Lot = lot, Reason = reason });
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
                byPrice
                    .Skip(1)
                    .Select(c => new ExcludedLot
                    {
                        Lot = c.Lot!,
                        Reason = $"a living pound costs more than of {byPrice[0].Lot!.Label}",
                    })
            );
        }

        return (offers.ToImmutable(), excluded.ToImmutable());
    }

    internal static string ReasonFor(BlendPart part, SeasonCoverage coverage, RecipeGoals goals)
    {
        var seasons = coverage.Seasons.Where(s => s.Kinds.Any(k => k.Id == part.Kind.Id)).ToArray();
        var needed = seasons
            .Where(s =>
                s.IsCovered
                && Tolerance.IsBelow(s.Share - part.ShareOfFullStand.Chosen, s.ShareWanted)
                && goals.Seasons.Contains(s.Season)
            )
            .ToArray();
        string share = $"{part.Kind.ShortName}, {Amounts.Print(part.ShareOfFullStand.Chosen, 2)} of a full stand";
        return needed.Length > 0 ? $"{share}: without it {InWords(" and ", needed)} would not be covered."
            : seasons.Length > 0
                ? $"{share}: brings the stand to its total and its kinds at the least cost, and feeds in "
                    + $"{InWords(", ", seasons)}."
            : $"{share}: brings the stand to its total and its kinds at the least cost.";
    }

    private static string InWords(string separator, SeasonShare[] seasons) =>
        string.Join(separator, seasons.Select(s => SeasonalUse.SeasonWords[s.Season]));

    private static string? ReasonAgainst(SeedLot lot, RecipeGoals goals)
    {
        var kind = lot.Kind;
        return lot.PricePerPound is null ? "no price is known"
            : lot.PureLiveSeedPart(goals.Rule).Value <= 0 ? "nothing in it counts as alive"
            : lot.SeedCount is null ? "no seed count is known"
            : kind.Rates?.For(goals.Method) is null ? "no full rate is published for this way of sowing"
            : goals.Ph is { } ph && kind.Ph is { } stands && (ph.Value < stands.MinimumPh || ph.Value > stands.MaximumPh)
                ? $"{kind.ShortName} stands pH {Amounts.Print(stands.MinimumPh, 1)}-{Amounts.Print(stands.MaximumPh, 1)}, the "
                    + $"plot has {Amounts.Print(ph.Value, 1)}"
            : goals.Drainage is { } drainage && kind.Drainage is { } soils && !soils.Stands(drainage)
                ? $"{kind.ShortName} does not stand the plot's drainage"
            : null;
    }
}
