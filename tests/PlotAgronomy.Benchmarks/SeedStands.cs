using PlotAgronomy.Columns;

namespace PlotAgronomy.Benchmarks;

/// <summary>Rates of live seed, one in forty without its rate.</summary>
internal sealed class SeedStands
{
    private readonly double[] live;
    private readonly double[] seedsPerPound;
    private readonly double[] densities;
    private readonly RowStatus[] status;
    private readonly ulong[] flags;

    internal SeedStands(int rows)
    {
        var random = new Random(3);
        (live, seedsPerPound) = (new double[rows], new double[rows]);
        (densities, status, flags) = (new double[rows], new RowStatus[rows], new ulong[rows]);
        for (int i = 0; i < rows; i++)
        {
            live[i] = random.Next(40) == 0 ? double.NaN : 1 + (99 * random.NextDouble());
            seedsPerPound[i] = 2_000 + (800_000 * random.NextDouble());
        }
    }

    internal int Rows => live.Length;

    internal void ByHand() => HandLoops.SeedDensity(live, seedsPerPound, densities, status, flags);

    internal void AsColumn() => SeedDensityColumn.Densities(live, seedsPerPound, densities, status, flags);
}
