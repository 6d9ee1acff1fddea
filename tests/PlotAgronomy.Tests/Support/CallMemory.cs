namespace PlotAgronomy.Tests.Support;

/// <summary>Bytes that a call takes from the heap once everything is loaded.</summary>
internal static class CallMemory
{
    internal static double BytesPerCall(Func<object> call, int calls = 1000)
    {
        object? last = null;
        for (int i = 0; i < 50; i++)
        {
            last = call();
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < calls; i++)
        {
            last = call();
        }

        double bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / (double)calls;
        GC.KeepAlive(last);
        return bytes;
    }
}
