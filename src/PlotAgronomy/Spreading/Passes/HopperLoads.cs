using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Parts the seed of a plot into fillings of the hopper.</summary>
internal static class HopperLoads
{
    /// <summary>Equal fillings, as few as the hopper allows.</summary>
    internal static ImmutableArray<HopperLoad> Of(
        double lapPounds,
        ImmutableArray<SpreaderPass> passes,
        double byHandPounds,
        FieldPassesRequest request
    )
    {
        double[] used = [lapPounds, .. passes.Select(p => p.Seed.Pounds), byHandPounds];
        double totalPounds = used.Sum();
        int count = request.HopperPounds is { } hopper ? Package.RoundUp(totalPounds / hopper) : 1;
        var loads = ImmutableArray.CreateBuilder<HopperLoad>(count);
        double before = 0;
        for (int i = 1; i <= count; i++)
        {
            // The last filling takes the remainder, so that the loads sum to the whole.
            double pounds = i < count ? totalPounds / count : totalPounds - before;
            before += pounds;
            var mass = Mass.FromPounds(pounds);
            loads.Add(
                new HopperLoad
                {
                    Number = i,
                    Mass = mass,
                    Buckets = request.Bucket?.Count(mass),
                    RunsOutInPass = i == count ? passes.Length : Math.Min(passes.Length, PassAt(used, before)),
                }
            );
        }

        return loads.ToImmutable();
    }

    /// <summary>The pass on which so many pounds in all are used up; 0 is the lap, and what is sown by hand comes last.</summary>
    private static int PassAt(double[] used, double pounds)
    {
        double sum = 0;
        for (int pass = 0; pass < used.Length; pass++)
        {
            sum += used[pass];
            if (!Tolerance.IsBelow(sum, pounds))
            {
                return pass;
            }
        }

        return used.Length - 1;
    }
}
