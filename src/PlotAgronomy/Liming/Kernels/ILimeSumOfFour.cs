using System.Runtime.Intrinsics;

namespace PlotAgronomy.Liming;

/// <summary>The sum of one lime method to one target for four soils at once.</summary>
internal interface ILimeSumOfFour
{
    /// <summary>What <see cref="ILimeKernel.PoundsPerAcre"/> gives for each of the four, bit for bit; of a soil that is stopped
    /// nothing is asked.</summary>
    Vector256<double> PoundsPerAcre(
        Vector256<double> reading,
        Vector256<double> waterPh,
        Vector256<ulong> going,
        out Vector256<ulong> remarks
    );
}
