using System.Diagnostics;

namespace PlotAgronomy.Benchmarks;

/// <summary>What one way of a sum took: ns and bytes a call, and the median of its ratios to the first way within a turn.</summary>
internal sealed record WayTimes(double Best, double Median, double ToTheFirst, double Bytes);

/// <summary>Ways of one sum timed by turns in one process, so that what else the machine does falls on all of them alike.</summary>
internal static class Turns
{
    private const int Counted = 61;
    private const int WarmUps = 60;

    /// <summary>As long at least the runtime is given to compile the ways anew.</summary>
    private static readonly TimeSpan WarmingUp = TimeSpan.FromSeconds(2);

    /// <summary>Runs are repeated until one measurement takes this long.</summary>
    private static readonly TimeSpan LeastTime = TimeSpan.FromMilliseconds(1);

    /// <summary>The times of each way.</summary>
    /// <param name="ways">What is run, and the calls in a run.</param>
    internal static WayTimes[] Of(params (Action Run, int Calls)[] ways)
    {
        int[] runs = new int[ways.Length];
        double[][] times = Array.ConvertAll(ways, _ => new double[Counted]);
        long start = Stopwatch.GetTimestamp();
        for (int turn = 0; turn < WarmUps || Stopwatch.GetElapsedTime(start) < WarmingUp; turn++)
        {
            for (int way = 0; way < ways.Length; way++)
            {
                runs[way] = RunsWithin(ways[way].Run);
                Time(ways[way].Run, runs[way]);
            }
        }

        for (int turn = 0; turn < Counted; turn++)
        {
            for (int way = 0; way < ways.Length; way++)
            {
                times[way][turn] = Time(ways[way].Run, runs[way]).TotalNanoseconds / ((double)runs[way] * ways[way].Calls);
            }
        }

        return
        [
            .. ways.Select((way, i) =>
                new WayTimes(
                    times[i].Min(),
                    Median(times[i]),
                    Median(times[i].Zip(times[0], (own, first) => own / first)),
                    BytesOf(way))),
        ];
    }

    private static int RunsWithin(Action run) => 1 + (int)Math.Min(10_000, LeastTime / Time(run, 1));

    private static TimeSpan Time(Action run, int runs)
    {
        long start = Stopwatch.GetTimestamp();
        for (int i = 0; i < runs; i++)
        {
            run();
        }

        return Stopwatch.GetElapsedTime(start);
    }

    private static double BytesOf((Action Run, int Calls) way)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        way.Run();
        return (GC.GetAllocatedBytesForCurrentThread() - before) / (double)way.Calls;
    }

    private static double Median(IEnumerable<double> values) => values.Order().ElementAt(Counted / 2);
}
