using System.Diagnostics;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Why a kind stands in a recipe, and why a lot does not, in words.</summary>
internal static class RecipeReasons
{
    internal static string For(BlendPart part, SeasonCoverage coverage, RecipeRequest request)
    {
        var seasons = coverage.Seasons.Where(s => s.Kinds.Any(k => k.Id == part.Kind.Id)).ToArray();
        var needed = seasons
            .Where(s =>
                s.IsCovered
                && Tolerance.IsBelow(s.Share - part.ShareOfFullStand.Chosen, s.ShareWanted)
                && request.Seasons.Contains(s.Season)
            )
            .ToArray();
        string share = $"{part.Kind.ShortName}, {Amounts.Print(part.ShareOfFullStand.Chosen, 2)} of a full stand";
        return needed.Length > 0 ? $"{share}: without it {InWords(" and ", needed)} would not be covered."
            : seasons.Length > 0
                ? $"{share}: brings the stand to its total and its kinds at the least cost, and feeds in "
                    + $"{InWords(", ", seasons)}."
            : $"{share}: brings the stand to its total and its kinds at the least cost.";
    }

    internal static string Against(SeedLot lot, Exclusion why, RecipeRequest request, SeedLot? taken) =>
        why switch
        {
            Exclusion.NothingAlive => "nothing in it counts as alive",
            Exclusion.NoSeedCount => "no seed count is known",
            Exclusion.NoFullRate => "no full rate is published for this way of sowing",
            Exclusion.PhOutside => $"{lot.Kind.ShortName} stands pH {Stands(lot.Kind.Ph!)}, the plot has "
                + Amounts.Print(request.Soil!.WaterPh!.Value, 1),
            Exclusion.DrainageOutside => $"{lot.Kind.ShortName} does not stand the plot's drainage",
            Exclusion.DearerThanAnother => $"a living pound costs more than of {taken!.Label}",
            _ => throw new UnreachableException(),
        };

    private static string Stands(PhTolerance ph) => $"{Amounts.Print(ph.MinimumPh, 1)}-{Amounts.Print(ph.MaximumPh, 1)}";

    private static string InWords(string separator, SeasonShare[] seasons) =>
        string.Join(separator, seasons.Select(s => SeasonalUse.SeasonWords[s.Season]));
}
