using BenchmarkDotNet.Attributes;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>The field sheet of the demo plan in two forms.</summary>
[MemoryDiagnoser]
public class SheetsBenchmarks
{
    private readonly PlotPlan plan = Demo.Plan;

    /// <summary>The answers alone.</summary>
    /// <returns>The answers.</returns>
    [Benchmark(Baseline = true)]
    public object Solve() => plan.Solve();

    /// <summary>The whole sheet as text.</summary>
    /// <returns>The text.</returns>
    [Benchmark]
    public string Text() => FieldSheet.Of(plan.Solve()).ToText();

    /// <summary>The whole sheet as a page.</summary>
    /// <returns>The page.</returns>
    [Benchmark]
    public string Page() => FieldSheet.Of(plan.Solve()).ToHtml();
}
