using System.Text.Json.Nodes;
using BenchmarkDotNet.Attributes;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>The demo plan, read and written.</summary>
[MemoryDiagnoser]
public class PlanFilesBenchmarks
{
    private readonly PlotPlan plan = Demo.Plan;

    /// <summary>Its JSON alone.</summary>
    /// <returns>The nodes.</returns>
    [Benchmark(Baseline = true)]
    public object? Nodes() => JsonNode.Parse(Demo.Text);

    /// <summary>Reads the plan.</summary>
    /// <returns>The plan and its problems.</returns>
    [Benchmark]
    public object Read() => PlanFile.Read(Demo.Text);

    /// <summary>Writes the plan.</summary>
    /// <returns>The text.</returns>
    [Benchmark]
    public string Write() => PlanFile.Write(plan);
}
