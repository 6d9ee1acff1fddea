using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using PlotAgronomy.Record.Plans;

namespace PlotAgronomy.Record.Soak;

/// <summary>Two threads solve the plans first, while no table is read yet; then one thread solves them again.</summary>
/// <remarks>An answer is told by a digest of every number, state and code in it. The heap is that after a collection.</remarks>
internal sealed class SoakRun(int plans, TextWriter log)
{
    private const int Parts = 20;
    private const int Shown = 20;

    /// <summary>What is read on demand is there after a tenth of the run; from then on the heap may not grow by more.</summary>
    private const double MostGrowthMegabytes = 1;

    private readonly List<MemorySample> samples = [];

    internal bool Run()
    {
        ulong[] together = new ulong[plans], alone = new ulong[plans];
        Solve(threads: 2, together);
        Solve(threads: 1, alone);
        var different = Enumerable.Range(0, plans).Where(i => together[i] != alone[i]).ToList();
        foreach (int i in different.Take(Shown))
        {
            Say($"plan {i + 1} is answered otherwise by two threads");
        }

        double early = samples[Parts / 10].HeapMegabytes, late = samples[^1].HeapMegabytes;
        double growth = late - early;
        int answers = together.Distinct().Count();
        Say($"{plans} plans, {answers} different answers, {different.Count} answered otherwise by two threads");
        Say($"heap {early:0.00} MB after a tenth, {late:0.00} MB at the end: {growth:+0.00;-0.00} MB");
        return different.Count == 0 && growth <= MostGrowthMegabytes;
    }

    private void Solve(int threads, ulong[] digests)
    {
        var watch = Stopwatch.StartNew();
        for (int part = 0; part < Parts; part++)
        {
            int next = (int)((long)plans * part / Parts) - 1, end = (int)((long)plans * (part + 1) / Parts);
            InThreads(threads, () =>
            {
                for (int i = Interlocked.Increment(ref next); i < end; i = Interlocked.Increment(ref next))
                {
                    digests[i] = Digest(i + 1);
                }
            });
            samples.Add(MemorySample.Take(end));
            Say($"{threads} at once  {samples[^1]}  {watch.Elapsed.TotalSeconds:0} s");
        }
    }

    private static void InThreads(int threads, Action work)
    {
        var started = Enumerable.Range(0, threads).Select(_ => Task.Factory.StartNew(
            work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)).ToArray();
        Task.WaitAll(started);
    }

    private static ulong Digest(int number)
    {
        var drawn = DrawnPlan.Accepted(number);
        var recorder = new Recorder();
        PlanAnswers.Record(recorder, "plan", drawn.Plan.Solve());
        string rows = string.Join('\n', recorder.Rows.Select(r => $"{r.Meaning}={r.Value}"));
        return BitConverter.ToUInt64(SHA256.HashData(Encoding.UTF8.GetBytes(rows)));
    }

    private void Say(FormattableString line)
    {
        log.WriteLine(line.ToString(CultureInfo.InvariantCulture));
        log.Flush();
    }
}
