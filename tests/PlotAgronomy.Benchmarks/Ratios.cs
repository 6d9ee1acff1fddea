using System.Diagnostics;
using System.Globalization;

namespace PlotAgronomy.Benchmarks;

/// <summary>Ways of one sum timed by turns in one process, so that what else the machine does falls on all of them alike.</summary>
internal static class Ratios
{
    private const int Turns = 61;
    private const int WarmUps = 60;

    /// <summary>Prints the ways of 500,000 reports: ns a row, best and median, the ratio to the first way of a group, bytes a row.</summary>
    internal static void Print()
    {
        var many = new ManyReports(500_000, 20_000);
        var spreaders = new SpreaderRuns(500_000);
        var stands = new SeedStands(500_000);
        Print("lime", many.Rows, ("by hand", many.LimesByHand), ("as column", () => many.Limes(0, many.Rows)));
        Print("phosphate", many.Rows, ("by hand", many.PhosphatesByHand), ("as column", () => many.Phosphates(0, many.Rows)));
        Print("potash", many.Rows, ("by hand", many.PotashesByHand), ("as column", () => many.Potashes(0, many.Rows)));
        Print("lime + P + K", many.Rows, ("by hand", many.ByHand), ("as columns", many.AsColumns), ("in blocks", many.AsColumnsByBlocks), ("by two threads", many.AsColumnsByTwoThreads));
        Print("spreader", spreaders.Rows, ("by hand", spreaders.ByHand), ("as column", spreaders.AsColumn));
        Print("seed density", stands.Rows, ("by hand", stands.ByHand), ("as column", stands.AsColumn));
        Print("typed, lime + P + K", many.Typed, ("one thread", () => many.TypedCalls()), ("two threads", () => many.TypedCallsByTwoThreads()));
        Print("typed, a call for each", many.Typed, ("lime", () => many.TypedLimes()), ("P and K", () => many.TypedNeeds()));
    }

    private static void Print(string what, int rows, params (string Name, Action Run)[] ways)
    {
        var times = ways.Select(_ => new List<double>()).ToArray();
        for (int turn = -WarmUps; turn < Turns; turn++)
        {
            for (int way = 0; way < ways.Length; way++)
            {
                long start = Stopwatch.GetTimestamp();
                ways[way].Run();
                double nanoseconds = Stopwatch.GetElapsedTime(start).TotalNanoseconds / rows;
                if (turn >= 0)
                {
                    times[way].Add(nanoseconds);
                }
            }
        }

        for (int way = 0; way < ways.Length; way++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            ways[way].Run();
            double bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / (double)rows;
            double ratio = times[way].Zip(times[0], (own, first) => own / first).Order().ElementAt(Turns / 2);
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{what,-24}{ways[way].Name,-16}best {times[way].Min(),8:0.00} ns, median {times[way].Order().ElementAt(Turns / 2),8:0.00} ns, ratio {ratio,6:0.00}, {bytes,8:0.0} B a row"
                )
            );
        }
    }
}
