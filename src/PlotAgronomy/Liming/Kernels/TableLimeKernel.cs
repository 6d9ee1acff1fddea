namespace PlotAgronomy.Liming;

/// <summary>A printed table to one target, read by the reading alone.</summary>
internal readonly struct TableLimeKernel(LimeTableColumn column) : ILimeKernel
{
    public static bool IsTotal => true;

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks) =>
        column.PoundsPerAcre(reading, out remarks);
}
