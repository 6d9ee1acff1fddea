using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The sum of one lime method to one target for many soils at once.</summary>
internal interface ILimeSum
{
    /// <summary>What <see cref="ILimeKernel.PoundsPerAcre"/> gives for each of them, bit for bit; of a soil that is stopped
    /// nothing is asked.</summary>
    T PoundsPerAcre<T>(T reading, T waterPh, T going, out T remarks)
        where T : unmanaged, ILanes<T>;
}
