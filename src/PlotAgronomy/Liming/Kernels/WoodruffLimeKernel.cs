namespace PlotAgronomy.Liming;

/// <summary>All of the neutralizable acidity, in Missouri's effective neutralizing material.</summary>
internal readonly struct WoodruffLimeKernel(double enmPerMeq) : ILimeKernel
{
    public static bool IsTotal => true;

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        remarks = LimeRemarks.None;
        return LimeMath.MissouriPoundsPerAcre(reading, enmPerMeq);
    }
}
