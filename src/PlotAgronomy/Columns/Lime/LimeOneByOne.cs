using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Columns;

/// <summary>The sums of many rows by a kernel that sums one.</summary>
internal readonly struct LimeOneByOne<TKernel>(TKernel kernel) : ILimeSum
    where TKernel : struct, ILimeKernel
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T PoundsPerAcre<T>(T reading, T waterPh, T going, out T remarks)
        where T : unmanaged, ILanes<T>
    {
        (var pounds, remarks) = (T.Of(double.NaN), T.OfBits(0));
        var readings = Each<T, double>(ref reading);
        var phs = Each<T, double>(ref waterPh);
        var goes = Each<T, ulong>(ref going);
        var found = Each<T, double>(ref pounds);
        var noticed = Each<T, ulong>(ref remarks);
        for (int row = 0; row < T.Count; row++)
        {
            if (TKernel.IsTotal || goes[row] != 0)
            {
                found[row] = kernel.PoundsPerAcre(readings[row], phs[row], out var ofRow);
                noticed[row] = (ulong)ofRow;
            }
        }

        return pounds;
    }

    private static Span<TLane> Each<T, TLane>(ref T lanes)
        where T : unmanaged
        where TLane : unmanaged => MemoryMarshal.Cast<T, TLane>(MemoryMarshal.CreateSpan(ref lanes, 1));
}
