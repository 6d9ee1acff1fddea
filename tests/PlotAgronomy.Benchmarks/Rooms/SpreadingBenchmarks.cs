using BenchmarkDotNet.Attributes;
using PlotAgronomy.Columns;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>The rate that a spreader lays by flow, speed and swath.</summary>
[MemoryDiagnoser]
public class SpreadingBenchmarks
{
    private const int Rows = 20_000;

    private readonly double[] flow = Drawn.Between(1, 1, 20, Rows);
    private readonly double[] pace = Drawn.Between(2, 2, 6, Rows);
    private readonly double[] swath = Drawn.Between(3, 8, 40, Rows);
    private readonly AnswerColumns answers = new(Rows);

    /// <summary>By a loop written by hand.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public void ByHand() => HandLoops.Spreader(flow, pace, swath, answers.Numbers, answers.Status, answers.Flags);

    /// <summary>As a column.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public void AsColumn() => SpreaderColumn.Rates(flow, pace, swath, answers.Numbers, answers.Status, answers.Flags);

    /// <summary>By the typed call.</summary>
    /// <returns>The pounds of all.</returns>
    [Benchmark(OperationsPerInvoke = Rows)]
    public double Typed()
    {
        double pounds = 0;
        for (int row = 0; row < Rows; row++)
        {
            var (minute, speed) = (MassFlow.FromPoundsPerMinute(flow[row]), Speed.FromMilesPerHour(pace[row]));
            pounds += SpreaderSetting.FromFlow(minute, speed, Length.FromFeet(swath[row])).Rate.PoundsPerAcre;
        }

        return pounds;
    }
}
