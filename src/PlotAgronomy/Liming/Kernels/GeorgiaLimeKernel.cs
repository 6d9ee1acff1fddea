namespace PlotAgronomy.Liming;

/// <summary>The soil's own capacity for lime, straight from the lowest to the highest pH.</summary>
internal readonly struct GeorgiaLimeKernel : ILimeKernel
{
    public static bool IsTotal => true;

    internal required double TargetPh { get; init; }

    internal required double SoilMillionPounds { get; init; }

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        remarks = LimeRemarks.None;
        return LimeMath.GeorgiaPoundsPerAcre(reading, waterPh, TargetPh, SoilMillionPounds);
    }
}
