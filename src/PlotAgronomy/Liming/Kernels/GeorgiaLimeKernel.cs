namespace PlotAgronomy.Liming;

/// <summary>The soil's own capacity for lime, straight from the lowest to the highest pH.</summary>
internal readonly struct GeorgiaLimeKernel : ILimeKernel
{
    internal required double TargetPh { get; init; }

    internal required double SoilMillionPounds { get; init; }

    internal required double LowestPh { get; init; }

    internal required double HighestPh { get; init; }

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        remarks = LimeRemarks.None;
        return LimeMath.GeorgiaPoundsPerAcre(reading, waterPh, TargetPh, SoilMillionPounds);
    }

    public bool Holds(double reading, double waterPh) => waterPh >= LowestPh && TargetPh <= HighestPh;
}
