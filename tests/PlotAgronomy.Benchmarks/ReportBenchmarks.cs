using BenchmarkDotNet.Attributes;

namespace PlotAgronomy.Benchmarks;

/// <summary>Lime, phosphate and potash of 500,000 reports; the typed calls of 20,000 of them.</summary>
[MemoryDiagnoser]
public class ReportBenchmarks
{
    private readonly ManyReports many = new(500_000, 20_000);

    /// <summary>By a loop for each sum.</summary>
    [Benchmark(Baseline = true)]
    public void ByHand() => many.ByHand();

    /// <summary>As columns, on one core.</summary>
    [Benchmark]
    public void AsColumns() => many.AsColumns();

    /// <summary>As columns, by two threads.</summary>
    [Benchmark]
    public void AsColumnsByTwoThreads() => many.AsColumnsByTwoThreads();

    /// <summary>A typed call for lime and one for both nutrients.</summary>
    /// <returns>The pounds of all.</returns>
    [Benchmark]
    public double TypedCalls() => many.TypedCalls();

    /// <summary>The same by two threads.</summary>
    /// <returns>The pounds of all.</returns>
    [Benchmark]
    public double TypedCallsByTwoThreads() => many.TypedCallsByTwoThreads();
}
