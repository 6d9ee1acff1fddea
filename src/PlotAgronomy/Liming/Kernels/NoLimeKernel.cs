namespace PlotAgronomy.Liming;

/// <summary>Where a method has no sum at all: a target it does not offer, a texture without a column.</summary>
internal readonly struct NoLimeKernel : ILimeKernel
{
    public static bool IsTotal => true;

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        remarks = LimeRemarks.None;
        return double.NaN;
    }
}
