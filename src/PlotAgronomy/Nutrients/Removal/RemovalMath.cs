namespace PlotAgronomy.Nutrients;

/// <summary>Kernel of crop removal.</summary>
internal static class RemovalMath
{
    internal static double PoundsPerAcre(double yieldPerAcre, double poundsPerUnit, double partCarriedOff, double shareKept) =>
        yieldPerAcre * poundsPerUnit * partCarriedOff * shareKept;
}
