using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>Four rows by a kernel that sums one.</summary>
internal static class OneByOne
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> Rates<TKernel>(TKernel kernel, Vector256<double> test, Vector256<double> capacity)
        where TKernel : struct, INeedKernel =>
        Vector256.Create(
            kernel.Rate(test.GetElement(0), capacity.GetElement(0)),
            kernel.Rate(test.GetElement(1), capacity.GetElement(1)),
            kernel.Rate(test.GetElement(2), capacity.GetElement(2)),
            kernel.Rate(test.GetElement(3), capacity.GetElement(3))
        );
}
