using BenchmarkDotNet.Attributes;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>Lime by Oregon's printed table.</summary>
[MemoryDiagnoser]
public class LimingBenchmarks
{
    private const int Rows = 500_000;
    private const int Reports = 20_000;

    private readonly ManyReports many = new(Rows, Reports);

    /// <summary>By a loop written by hand.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public void ByHand() => many.LimesByHand();

    /// <summary>As a column.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public void AsColumn() => many.Limes(0, Rows);

    /// <summary>By the typed call.</summary>
    /// <returns>The pounds of all.</returns>
    [Benchmark(OperationsPerInvoke = Reports)]
    public double Typed() => many.TypedLimes();
}
