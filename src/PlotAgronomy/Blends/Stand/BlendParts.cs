using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>States live rates of kinds every way at once.</summary>
internal static class BlendParts
{
    internal static ImmutableArray<BlendPart> Of(IEnumerable<(BlendComponent Component, double LivePoundsPerAcre)> kinds)
    {
        ReadOnlySpan<(BlendComponent Component, double LivePoundsPerAcre)> all = [.. kinds];
        CheckKinds(all, nameof(kinds));
        double liveSum = 0,
            bulkSum = 0,
            seedSum = 0,
            standSum = 0;
        foreach (var (component, live) in all)
        {
            liveSum += live;
            bulkSum += Bulk(component, live);
            seedSum += Seeds(component, live);
            standSum += Stand(component, live);
        }

        var parts = ImmutableArray.CreateBuilder<BlendPart>(all.Length);
        foreach (var (component, live) in all)
        {
            double bulk = Bulk(component, live),
                seeds = Seeds(component, live),
                stand = Stand(component, live),
                shareOfBulk = BlendMath.ShareOfWhole(bulk, bulkSum);
            parts.Add(
                new BlendPart
                {
                    Component = component,
                    LiveRate = PureLiveSeedRate.FromRate(ApplicationRate.FromPoundsPerAcre(live), component.Method),
                    BulkRate = BulkSeedRate.FromRate(ApplicationRate.FromPoundsPerAcre(bulk), component.Method),
                    ShareOfFullStand = StandTotal.Of(
                        BlendMath.ShareOfFullStand(live, component.FullRange.High.PoundsPerAcre),
                        stand,
                        BlendMath.ShareOfFullStand(live, component.FullRange.Low.PoundsPerAcre)
                    ),
                    LiveSeedsPerSquareFoot = seeds,
                    ShareOfBulkWeight = Fraction.FromValue(shareOfBulk),
                    ShareOfLiveWeight = Fraction.FromValue(BlendMath.ShareOfWhole(live, liveSum)),
                    ShareOfLiveSeeds = Fraction.FromValue(BlendMath.ShareOfWhole(seeds, seedSum)),
                    ShareOfStand = Fraction.FromValue(BlendMath.ShareOfWhole(stand, standSum)),
                    PureSeedOnTag = Fraction.FromValue(shareOfBulk * component.PureFraction),
                }
            );
        }

        return parts.MoveToImmutable();
    }

    private static double Bulk(BlendComponent component, double live) =>
        SeedMath.BulkPoundsPerAcre(live, component.PureLiveFraction);

    private static double Seeds(BlendComponent component, double live) =>
        SeedMath.SeedsPerSquareFoot(live, component.SeedsPerPound);

    private static double Stand(BlendComponent component, double live) =>
        BlendMath.ShareOfFullStand(live, component.FullRate.PoundsPerAcre);

    private static void CheckKinds(ReadOnlySpan<(BlendComponent Component, double LivePoundsPerAcre)> all, string name)
    {
        if (all.IsEmpty)
        {
            throw new ArgumentException("A blend needs at least one kind.", name);
        }

        for (int i = 1; i < all.Length; i++)
        {
            for (int before = 0; before < i; before++)
            {
                if (all[before].Component.Kind.Id == all[i].Component.Kind.Id)
                {
                    throw new ArgumentException(
                        $"{all[before].Component.Kind.ShortName} stands twice: join its lots first.",
                        name
                    );
                }
            }
        }
    }
}
