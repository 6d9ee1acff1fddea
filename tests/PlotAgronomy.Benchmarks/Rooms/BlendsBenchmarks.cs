using BenchmarkDotNet.Attributes;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>The bulk seed of a blend of six kinds, each with its share of a full stand.</summary>
[MemoryDiagnoser]
public class BlendsBenchmarks
{
    private const int Rows = 100;

    private static readonly string[] Kinds =
        ["oats-spring", "cereal-rye", "medium-red-clover", "white-dutch-clover", "daikon-radish", "purple-top-turnip"];

    private static readonly BlendComponent[] Components =
    [
        .. Kinds.Select(kind =>
            BlendComponent.FromKind(KindCatalog.Standard.Find(kind), SowingMethod.Broadcast) with
            {
                Purity = Fraction.FromPercent(97),
                Viability = Fraction.FromPercent(88),
            }),
    ];

    private static readonly double[] FullRates =
        [.. Components.Select(c => Blend.FromSharesOfFullStand((c, 1)).Parts[0].LiveRate.PoundsPerAcre)];

    private readonly double[] shares = Drawn.Between(1, 0.05, 0.4, Rows * Kinds.Length);

    /// <summary>By a loop written by hand.</summary>
    /// <returns>The pounds of all.</returns>
    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public double ByHand() => HandSums.BulkPounds(shares, FullRates, purity: 0.97, viability: 0.88);

    /// <summary>By the typed call.</summary>
    /// <returns>The pounds of all.</returns>
    [Benchmark(OperationsPerInvoke = Rows)]
    public double Typed()
    {
        double pounds = 0;
        for (int row = 0; row < Rows; row++)
        {
            var mixed = Components.Select((kind, i) => (kind, shares[(row * Components.Length) + i])).ToArray();
            pounds += Blend.FromSharesOfFullStand(mixed).Parts.Sum(part => part.BulkRate.PoundsPerAcre);
        }

        return pounds;
    }
}
