using BenchmarkDotNet.Attributes;
using PlotAgronomy.Land;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>The area of a plot of eight corners.</summary>
[MemoryDiagnoser]
public class LandBenchmarks
{
    private const int Rows = 100;

    private readonly PlanePoint[][] corners = [.. Enumerable.Range(0, Rows).Select(Corners)];

    /// <summary>The shoelace alone, without the search for sides that cross.</summary>
    /// <returns>The square feet of all.</returns>
    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public double ByHand() => corners.Sum(HandSums.SquareFeet);

    /// <summary>By the typed call, which searches for them.</summary>
    /// <returns>The square feet of all.</returns>
    [Benchmark(OperationsPerInvoke = Rows)]
    public double Typed() => corners.Sum(plot => PlotOutline.FromCorners(plot).Area.SquareFeet);

    private static PlanePoint[] Corners(int plot)
    {
        double[] feet = Drawn.Between(plot, 80, 120, 8);
        return
        [
            .. feet.Select((far, i) => PlanePoint.FromFeet(far * Math.Cos(i * Math.PI / 4), far * Math.Sin(i * Math.PI / 4))),
        ];
    }
}
