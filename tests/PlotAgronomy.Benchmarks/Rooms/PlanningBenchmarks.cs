using BenchmarkDotNet.Attributes;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>All answers of the demo plan.</summary>
[MemoryDiagnoser]
public class PlanningBenchmarks
{
    private readonly PlotPlan plan = Demo.Plan;

    /// <summary>By the typed call.</summary>
    /// <returns>The answers.</returns>
    [Benchmark]
    public object Typed() => plan.Solve();
}
