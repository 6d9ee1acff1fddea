namespace PlotAgronomy.Liming;

/// <summary>Vermont's steps by soil pH and reactive aluminum.</summary>
internal readonly struct VermontLimeKernel(VermontStep[] steps) : ILimeKernel
{
    public static bool IsTotal => false;

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        remarks = LimeRemarks.None;
        return StepOf(reading, waterPh).PoundsPerAcre;
    }

    /// <summary>The printed pH classes (5.6-6.1, 6.2-6.7, over 6.7) are taken by the pH rounded to one decimal.</summary>
    internal VermontStep StepOf(double aluminumPpm, double waterPh)
    {
        double printedPh = Math.Round(waterPh, 1, MidpointRounding.AwayFromZero);
        foreach (var step in steps)
        {
            if (step.Holds(printedPh, aluminumPpm))
            {
                return step;
            }
        }

        throw new InvalidOperationException("The table has a gap: every pH and aluminum must have its step.");
    }
}
