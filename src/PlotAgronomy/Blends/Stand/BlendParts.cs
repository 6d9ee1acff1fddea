using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>States live rates of kinds every way at once.</summary>
internal static class BlendParts
{
    internal static ImmutableArray<BlendPart> Of(IEnumerable<(BlendComponent Component, double LivePoundsPerAcre)> kinds)
    {
        var all = kinds.ToArray();
        if (all.Length == 0)
        {
            throw new ArgumentException("A blend needs at least one kind.", nameof(kinds));
        }

        if (all.GroupBy(k => k.Component.Kind.Id).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new ArgumentException(
                $"{twice.First().Component.Kind.ShortName} stands twice: join its lots first.",
                nameof(kinds)
            );
        }

        double[] live = [.. all.Select(k => k.LivePoundsPerAcre)];
        double[] bulk = [.. all.Select(k => SeedMath.BulkPoundsPerAcre(k.LivePoundsPerAcre, k.Component.PureLiveFraction))];
        double[] seeds = [.. all.Select(k => SeedMath.SeedsPerSquareFoot(k.LivePoundsPerAcre, k.Component.SeedsPerPound))];
        double[] stand =
        [
            .. all.Select(k => BlendMath.ShareOfFullStand(k.LivePoundsPerAcre, k.Component.FullRate.PoundsPerAcre)),
        ];
        double[] liveShares = BlendMath.Shares(live),
            bulkShares = BlendMath.Shares(bulk),
            seedShares = BlendMath.Shares(seeds),
            standShares = BlendMath.Shares(stand);
        return
        [
            .. all.Select(
                (k, i) =>
                    new BlendPart
                    {
                        Component = k.Component,
                        LiveRate = PureLiveSeedRate.Of(ApplicationRate.FromPoundsPerAcre(live[i]), k.Component.Method),
                        BulkRate = BulkSeedRate.Of(ApplicationRate.FromPoundsPerAcre(bulk[i]), k.Component.Method),
                        ShareOfFullStand = StandTotal.Of(
                            BlendMath.ShareOfFullStand(live[i], k.Component.FullRange.High.PoundsPerAcre),
                            stand[i],
                            BlendMath.ShareOfFullStand(live[i], k.Component.FullRange.Low.PoundsPerAcre)
                        ),
                        LiveSeedsPerSquareFoot = seeds[i],
                        ShareOfBulkWeight = Fraction.FromValue(bulkShares[i]),
                        ShareOfLiveWeight = Fraction.FromValue(liveShares[i]),
                        ShareOfLiveSeeds = Fraction.FromValue(seedShares[i]),
                        ShareOfStand = Fraction.FromValue(standShares[i]),
                        PureSeedOnTag = Fraction.FromValue(bulkShares[i] * k.Component.PureFraction),
                    }
            ),
        ];
    }
}
