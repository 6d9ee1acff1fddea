using System.Diagnostics;
using System.Globalization;

namespace PlotAgronomy.Benchmarks;

/// <summary>Cost as a function of size: each thing at doubled sizes, and the power of the size that its cost grows by.</summary>
internal static class Growth
{
    private static readonly TimeSpan Enough = TimeSpan.FromSeconds(1);

    /// <summary>Prints the growth of the things whose names hold one of the words, or of all.</summary>
    internal static void Print(string[] words)
    {
        foreach (var thing in GrowingThings.All.Where(t => words.Length == 0 || words.Any(w => t.Name.Contains(w, StringComparison.Ordinal))))
        {
            double before = double.NaN;
            for (int i = 0; i < thing.Sizes.Length; i++)
            {
                int size = thing.Sizes[i];
                var (milliseconds, bytes) = Best(thing.Make(size));
                double power = i == 0 ? double.NaN : Math.Log(milliseconds / before) / Math.Log(size / (double)thing.Sizes[i - 1]);
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{thing.Name,-34}{size,8} {milliseconds,10:0.000} ms {bytes,14:#,##0} B   power {power:0.00}"));
                before = milliseconds;
            }
        }
    }

    /// <summary>The quickest run of a second's worth, the first ones left out where there is time for more.</summary>
    private static (double Milliseconds, long Bytes) Best(Action run)
    {
        double best = double.MaxValue;
        long bytes = 0;
        long start = Stopwatch.GetTimestamp();
        do
        {
            long had = GC.GetAllocatedBytesForCurrentThread();
            long began = Stopwatch.GetTimestamp();
            run();
            best = Math.Min(best, Stopwatch.GetElapsedTime(began).TotalMilliseconds);
            bytes = GC.GetAllocatedBytesForCurrentThread() - had;
        }
        while (Stopwatch.GetElapsedTime(start) < Enough);
        return (best, bytes);
    }
}
