namespace PlotAgronomy.Liming;

/// <summary>All of the neutralizable acidity, in Missouri's effective neutralizing material.</summary>
internal readonly struct WoodruffLimeKernel(double enmPerMeq) : ILimeKernel
{
    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        remarks = LimeRemarks.None;
        return LimeMath.MissouriPoundsPerAcre(reading, enmPerMeq);
    }

    public bool Holds(double reading, double waterPh) => true;
}
