using BenchmarkDotNet.Attributes;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>Phosphate and potash of browsed corn by Tri-State 2020.</summary>
[MemoryDiagnoser]
public class NutrientsBenchmarks
{
    private const int Rows = 500_000;
    private const int Reports = 20_000;

    private readonly ManyReports many = new(Rows, Reports);

    /// <summary>By a loop written by hand for each nutrient.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public void ByHand()
    {
        many.PhosphatesByHand();
        many.PotashesByHand();
    }

    /// <summary>As a column for each nutrient.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public void AsColumns()
    {
        many.Phosphates(0, Rows);
        many.Potashes(0, Rows);
    }

    /// <summary>By a typed call for both.</summary>
    /// <returns>The pounds of all.</returns>
    [Benchmark(OperationsPerInvoke = Reports)]
    public double Typed() => many.TypedNeeds();
}
