namespace PlotAgronomy.Soil;

/// <summary>Kernels of the exchange capacity.</summary>
internal static class CationMath
{
    /// <summary>Acidity from a buffer reading; zero at and above the start.</summary>
    internal static double AcidityMilliequivalents(double bufferPh, double startPh, double milliequivalentsPerPhUnit) =>
        bufferPh >= startPh ? 0 : milliequivalentsPerPhUnit * (startPh - bufferPh);
}
