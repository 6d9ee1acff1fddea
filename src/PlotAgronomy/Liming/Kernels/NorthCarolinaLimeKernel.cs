namespace PlotAgronomy.Liming;

/// <summary>ton/ac = Ac x (target - pH) / (end - pH), Ac from the Mehlich buffer pH.</summary>
internal readonly struct NorthCarolinaLimeKernel : ILimeKernel
{
    public static bool IsTotal => true;

    internal required double TargetPh { get; init; }

    internal required double EndPh { get; init; }

    internal required double AcidityPerPh { get; init; }

    internal double Acidity(double bufferPh) => LimeMath.NorthCarolinaAcidity(bufferPh, EndPh, AcidityPerPh);

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        remarks = LimeRemarks.None;
        return ExactUnits.PoundsPerShortTon
            * LimeMath.NorthCarolinaTonsPerAcre(Acidity(reading), waterPh, TargetPh, EndPh);
    }
}
