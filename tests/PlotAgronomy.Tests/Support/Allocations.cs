namespace PlotAgronomy.Tests.Support;

/// <summary>What a call takes from the heap.</summary>
internal static class Allocations
{
    private const int Calls = 200;

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
