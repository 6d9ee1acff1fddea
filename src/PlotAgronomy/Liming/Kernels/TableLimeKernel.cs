using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A printed table to one target, read by the reading alone.</summary>
internal readonly struct TableLimeKernel(LimeTableColumn column) : ILimeKernel, ILimeSum
{
    public static bool IsTotal => true;

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks) =>
        column.PoundsPerAcre(reading, out remarks);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T PoundsPerAcre<T>(T reading, T waterPh, T going, out T remarks)
        where T : unmanaged, ILanes<T> => column.PoundsPerAcre(reading, out remarks);
}
