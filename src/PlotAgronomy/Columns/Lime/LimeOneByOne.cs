using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Columns;

/// <summary>The sums of four rows by a kernel that sums one.</summary>
internal readonly struct LimeOneByOne<TKernel>(TKernel kernel) : ILimeSumOfFour
    where TKernel : struct, ILimeKernel
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> PoundsPerAcre(
        Vector256<double> reading,
        Vector256<double> waterPh,
        Vector256<ulong> going,
        out Vector256<ulong> remarks
    )
    {
        var pounds = Vector256.Create(
            Sum(0, reading, waterPh, going, out ulong first),
            Sum(1, reading, waterPh, going, out ulong second),
            Sum(2, reading, waterPh, going, out ulong third),
            Sum(3, reading, waterPh, going, out ulong fourth)
        );
        remarks = Vector256.Create(first, second, third, fourth);
        return pounds;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Sum(
        int row,
        Vector256<double> reading,
        Vector256<double> waterPh,
        Vector256<ulong> going,
        out ulong noticed
    )
    {
        if (!TKernel.IsTotal && going.GetElement(row) == 0)
        {
            noticed = 0;
            return double.NaN;
        }

        double pounds = kernel.PoundsPerAcre(reading.GetElement(row), waterPh.GetElement(row), out var remarks);
        noticed = (ulong)remarks;
        return pounds;
    }
}
