namespace PlotAgronomy.Tests.Support;

/// <summary>What a call takes from the heap.</summary>
internal static class Allocations
{
    private const int Calls = 200;

    /// <summary>Bytes that the call takes at the least, of three. When the heap is collected in between, the thread is charged for what it
    /// had left of its share, whatever it does; what a call takes itself it takes each time.</summary>
    internal static long LeastOf(Action call)
    {
        call();
        long least = long.MaxValue;
        for (int round = 0; round < 3; round++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            call();
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        return least;
    }

    /// <summary>Bytes a call, on average, once everything it reads is read.</summary>
    internal static long BytesOf(Func<object?> call)
    {
        for (int i = 0; i < Calls; i++)
        {
            call();
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < Calls; i++)
        {
            call();
        }

        return (GC.GetAllocatedBytesForCurrentThread() - before) / Calls;
    }
}
