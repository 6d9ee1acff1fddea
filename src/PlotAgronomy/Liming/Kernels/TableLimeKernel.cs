using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace PlotAgronomy.Liming;

/// <summary>A printed table to one target, read by the reading alone.</summary>
internal readonly struct TableLimeKernel(LimeTableColumn column) : ILimeKernel, ILimeSumOfFour
{
    public static bool IsTotal => true;

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks) =>
        column.PoundsPerAcre(reading, out remarks);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> PoundsPerAcre(
        Vector256<double> reading,
        Vector256<double> waterPh,
        Vector256<ulong> going,
        out Vector256<ulong> remarks
    ) => column.PoundsPerAcre(reading, out remarks);
}
