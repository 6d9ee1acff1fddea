using PlotAgronomy.Columns;

namespace PlotAgronomy.Benchmarks;

/// <summary>Runs of a spreader, one in forty without its flow.</summary>
internal sealed class SpreaderRuns
{
    private readonly double[] flow;
    private readonly double[] pace;
    private readonly double[] swath;
    private readonly double[] rates;
    private readonly RowStatus[] status;
    private readonly ulong[] flags;

    internal SpreaderRuns(int rows)
    {
        var random = new Random(2);
        (flow, pace, swath) = (new double[rows], new double[rows], new double[rows]);
        (rates, status, flags) = (new double[rows], new RowStatus[rows], new ulong[rows]);
        for (int i = 0; i < rows; i++)
        {
            flow[i] = random.Next(40) == 0 ? double.NaN : 60 + (39 * random.NextDouble());
            pace[i] = 1 + (19 * random.NextDouble());
            swath[i] = 1 + (19 * random.NextDouble());
        }
    }

    internal int Rows => flow.Length;

    internal void ByHand() => HandLoops.Spreader(flow, pace, swath, rates, status, flags);

    internal void AsColumn() => SpreaderColumn.Rates(flow, pace, swath, rates, status, flags);
}
