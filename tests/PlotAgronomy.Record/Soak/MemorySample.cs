using System.Globalization;

namespace PlotAgronomy.Record.Soak;

/// <summary>What the process holds after a full collection.</summary>
internal readonly record struct MemorySample(int Plans, double HeapMegabytes, double WorkingMegabytes)
{
    private const double BytesPerMegabyte = 1024 * 1024;

    internal static MemorySample Take(int plans)
    {
        GC.Collect(GC.MaxGeneration, GCCollectionMode.Forced, blocking: true, compacting: true);
        GC.WaitForPendingFinalizers();
        GC.Collect(GC.MaxGeneration, GCCollectionMode.Forced, blocking: true, compacting: true);
        double heap = GC.GetTotalMemory(forceFullCollection: true);
        return new(plans, heap / BytesPerMegabyte, Environment.WorkingSet / BytesPerMegabyte);
    }

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Plans,7} plans  heap {HeapMegabytes:0.00} MB  working set {WorkingMegabytes:0} MB");
}
