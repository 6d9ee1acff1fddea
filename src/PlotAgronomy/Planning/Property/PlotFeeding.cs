using System.Collections.Immutable;
using PlotAgronomy.Blends;

namespace PlotAgronomy.Planning;

/// <summary>What a plot feeds, and what that costs.</summary>
internal static class PlotFeeding
{
    /// <summary>Cost of an acre that feeds through a season; without end where it feeds in none.</summary>
    internal static double CostOfFeeding(PlotAnswers plot, decimal cost)
    {
        double acres = plot.Plan.Plot.Area.Acres;
        double seasons = plot.Seed.TryGet(out var seed) ? seed.Seasons.Seasons.Sum(s => Math.Min(1, s.Share / s.ShareWanted)) : 0;
        return seasons > 0 ? (double)cost / (acres * seasons) : double.PositiveInfinity;
    }

    /// <summary>The seasons of a stand with and without one of its kinds; the others keep their rates.</summary>
    internal static ImmutableArray<SeasonLoss> SeasonsWithout(SeedAnswer seed, CropKind kind)
    {
        var rest = SeasonCoverage.For(seed.Seasons.Stand.Where(s => s.Kind.Id != kind.Id), seed.Seasons.ShareWanted);
        return
        [
            .. seed.Seasons.Seasons.Zip(rest.Seasons, (before, after) =>
                new SeasonLoss(before.Season, before.Share, after.Share, before.ShareWanted)
            ),
        ];
    }
}
